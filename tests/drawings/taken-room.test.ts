import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { takenRoom } from '../../core/drawings/taken-room.ts';
import { boxesOverlap, type TextBox } from '../../core/drawings/text-box.ts';

const anyBox: fc.Arbitrary<TextBox> = fc
  .record({
    x: fc.double({ min: -300, max: 600, noNaN: true }),
    y: fc.double({ min: -300, max: 600, noNaN: true }),
    width: fc.double({ min: 0.5, max: 200, noNaN: true }),
    height: fc.double({ min: 0.5, max: 20, noNaN: true }),
    turn: fc.constantFrom(0, Math.PI / 2, -0.46, 1.1),
  })
  .map(({ x, y, width, height, turn }): TextBox => {
    const at = (right: number, down: number) =>
      [
        x + right * Math.cos(turn) - down * Math.sin(turn),
        y + right * Math.sin(turn) + down * Math.cos(turn),
      ] as const;
    return [at(0, 0), at(width, 0), at(width, height), at(0, height)];
  });

const looked = (count: number): number => {
  const room = takenRoom();
  for (let index = 0; index < count; index += 1) {
    const x = index * 4;
    room.take([
      [x, 0],
      [x + 6, 0],
      [x + 6, 30],
      [x, 30],
    ]);
  }
  return room.near(100, 0, 106, 30).length;
};

describe('the room that texts take', () => {
  it('is free for a box just where none of all the taken ones overlaps it', () => {
    fc.assert(
      fc.property(fc.array(anyBox, { maxLength: 60 }), anyBox, (boxes, asked) => {
        const room = takenRoom();
        for (const box of boxes) room.take(box);
        expect(room.isFree(asked)).toBe(!boxes.some((box) => boxesOverlap(box, asked)));
        expect(room.boxes).toEqual(boxes);
      }),
    );
  });

  it('near a line holds every taken box that the line could run through', () => {
    fc.assert(
      fc.property(fc.array(anyBox, { maxLength: 60 }), anyBox, (boxes, [[x1, y1], , [x2, y2]]) => {
        const room = takenRoom();
        for (const box of boxes) room.take(box);
        const near = room.near(x1, y1, x2, y2);
        const [left, right] = [Math.min(x1, x2), Math.max(x1, x2)];
        const [top, bottom] = [Math.min(y1, y2), Math.max(y1, y2)];
        const meeting = boxes.filter(
          (box) =>
            box.some(([x]) => x >= left) &&
            box.some(([x]) => x <= right) &&
            box.some(([, y]) => y >= top) &&
            box.some(([, y]) => y <= bottom),
        );
        for (const box of meeting) expect(near).toContain(box);
      }),
    );
  });

  it('looks at no more boxes for a figure on a drawing of 5000 than on one of 50', () => {
    expect(looked(50)).toBeGreaterThan(1);
    expect(looked(5000)).toBe(looked(50));
  });
});
