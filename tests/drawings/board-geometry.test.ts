import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { usedSixteenths } from '../../core/cutting/board-use.ts';
import type { Board, CutItem } from '../../core/cutting/cut-plan-types.ts';
import { layBoard } from '../../core/drawings/board-geometry.ts';
import { nearestSixteenth, type Sixteenths } from '../../core/units/sixteenths.ts';

const sixteenths = (whole: number): Sixteenths => whole as Sixteenths;

function boardOf(items: readonly CutItem[], offcut: number, length = 3072): Board {
  return {
    number: 1,
    itemId: 'a',
    lengthSixteenths: sixteenths(length),
    priceCents: 1000,
    onHand: false,
    items,
    offcutSixteenths: sixteenths(offcut),
  };
}

const saw = {
  kerfSixteenths: sixteenths(2),
  endTrimSixteenths: sixteenths(8),
  depthSixteenths: sixteenths(88),
};

function slantedPiece(mark: string) {
  return { mark, lengthSixteenths: sixteenths(640), slantSixteenths: sixteenths(44) };
}

describe('a board drawn with its pieces', () => {
  test('square pieces stand behind one another with a kerf between', () => {
    // By hand: trim 1/2", 48" to 48-1/2", kerf to 48-5/8", 30" to 78-5/8", kerf, left over from 78-3/4".
    const items = [
      { mark: 'A', lengthSixteenths: nearestSixteenth(48) },
      { mark: 'B', lengthSixteenths: nearestSixteenth(30) },
    ];
    const laid = layBoard(saw, boardOf(items, 3072 - 8 - 1260));
    expect(laid.pieces.map(({ from, to }) => [from.top / 16, to.top / 16])).toEqual([
      [0.5, 48.5],
      [48.625, 78.625],
    ]);
    expect(laid.leftOver?.from.top).toBe(78.75 * 16);
    expect(laid.leftOver?.to.bottom).toBe(3072 - 8);
  });

  test('plumb ends nest: long point on top at the left, at the bottom at the right, one wedge lost a board', () => {
    // By hand, 6/12 on 5-1/2": slant 2-3/4" = 44/16; a kerf of 1/8" takes 0.1398", 3/16 rounded up, along the board.
    const { pieces } = layBoard(saw, boardOf([slantedPiece('A'), slantedPiece('B')], 0));
    expect(pieces.map(({ from, to }) => [from, to])).toEqual([
      [
        { top: 8, bottom: 52 },
        { top: 604, bottom: 648 },
      ],
      [
        { top: 607, bottom: 651 },
        { top: 1203, bottom: 1247 },
      ],
    ]);
  });

  test('no two pieces touch on either edge, and together they take what the plan says', () => {
    const anyItem = fc.record({
      length: fc.integer({ min: 160, max: 1200 }),
      slant: fc.constantFrom(0, 0, 30, 44, 60),
    });
    fc.assert(
      fc.property(fc.array(anyItem, { minLength: 1, maxLength: 6 }), (raw) => {
        const items = raw
          .toSorted((a, b) => a.slant - b.slant)
          .map(({ length, slant }, index) => ({
            mark: `P${index}`,
            lengthSixteenths: sixteenths(length),
            slantSixteenths: sixteenths(slant),
          }));
        const { pieces } = layBoard(saw, boardOf(items, 0, 20_000));
        for (const [index, { from, to, item }] of pieces.entries()) {
          const before = pieces[index - 1];
          expect(from.top - (before?.to.top ?? saw.endTrimSixteenths - 2)).toBeGreaterThanOrEqual(2);
          expect(from.bottom - (before?.to.bottom ?? saw.endTrimSixteenths - 2)).toBeGreaterThanOrEqual(2);
          expect(to.bottom - from.top).toBe(item.lengthSixteenths);
        }
        const last = pieces.at(-1)?.to;
        const end = Math.max(last?.top ?? 0, last?.bottom ?? 0);
        expect(end - saw.endTrimSixteenths).toBe(usedSixteenths(saw, items));
      }),
    );
  });
});
