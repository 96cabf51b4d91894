import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dripEdgePieces } from '../../core/takeoff/drip-edge.ts';
import { panelCourses, panelGapIn, sheetsNeeded } from '../../core/takeoff/sheathing-strip.ts';
import { lineOf, smallTakeoff } from './small-job.ts';

const sheet = { widthIn: 48, lengthIn: 96 };

const boards = {
  id: 'board-1x6',
  category: 'plank',
  description: '1x6 boards',
  unit: 'LF',
  section: '1x6',
  grade: '',
};

const edgeNeed = (lengthIn: number | null) =>
  lineOf(
    smallTakeoff({
      priceList: [{ id: 'drip', category: 'edge', description: 'Drip edge', unit: 'each', lengthIn }],
    }),
    'drip-edge',
  ).need;

describe('cover of the overhang', () => {
  test('panel courses and their gaps cover the strip and no more', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 200, noNaN: true }), (widthIn) => {
        const { courseWidthsIn } = panelCourses({ widthIn, lengthIn: 100 }, sheet);
        const covered =
          courseWidthsIn.reduce((sum, course) => sum + course, 0) + panelGapIn * (courseWidthsIn.length - 1);
        expect(covered).toBeGreaterThan(widthIn - panelGapIn - 1e-5);
        expect(covered).toBeLessThan(widthIn + 1e-5);
      }),
    );
  });

  test('a strip of 34 ft takes five panels along', () => {
    // 4 x 96 + 3 x 1/8 = 384-3/8 in. is short of 408 in.
    expect(panelCourses({ widthIn: 17.9, lengthIn: 408 }, sheet).panelsAlong).toBe(5);
  });

  test('two rips of 17.89 in. come out of a 4 ft sheet, a third does not', () => {
    const courses = panelCourses({ widthIn: 17.89, lengthIn: 408 }, sheet);
    expect(sheetsNeeded([courses], sheet, 0.125)).toBe(3);
  });

  test('two rips of 24 in. do not come out of a 4 ft sheet, since the kerf takes its eighth', () => {
    const courses = panelCourses({ widthIn: 24, lengthIn: 190 }, sheet);
    expect(courses.panelsAlong).toBe(2);
    expect(sheetsNeeded([courses], sheet, 0.125)).toBe(2);
    expect(sheetsNeeded([courses], sheet, 0)).toBe(1);
  });

  test('sheets hold no less than the area of their rips', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            widthIn: fc.integer({ min: 2, max: 120 }),
            lengthIn: fc.integer({ min: 12, max: 900 }),
          }),
          {
            minLength: 1,
            maxLength: 6,
          },
        ),
        (strips) => {
          const courses = strips.map((strip) => panelCourses(strip, sheet));
          const ripped = courses.reduce(
            (sum, { courseWidthsIn, panelsAlong }) =>
              sum + panelsAlong * courseWidthsIn.reduce((width, course) => width + course, 0),
            0,
          );
          const sheets = sheetsNeeded(courses, sheet, 0.125);
          expect(sheets * sheet.widthIn).toBeGreaterThanOrEqual(ripped - 1e-6);
        },
      ),
    );
  });

  test('planks go on by whole courses of what they cover', () => {
    // (16 + 3/4) x 1.118 = 18.73 in. -> 4 courses of 5-1/2 in.; 4 x 10 ft = 40 LF, and 10 % waste -> 44 LF.
    const line = lineOf(
      smallTakeoff({
        eaveDesign: { sheathing: { kind: 'planks', itemId: 'board-1x6' } },
        priceList: [boards],
      }),
      'sheathing-board-1x6',
    );
    expect(line.quantity).toBe('40');
    expect(line.need).toMatchObject({ kind: 'planks', itemId: 'board-1x6', lengthFt: '44' });
  });

  test('planks take their nails at each bearing in each course', () => {
    const nails = lineOf(
      smallTakeoff({
        eaveDesign: { sheathing: { kind: 'planks', itemId: 'board-1x6' } },
        settings: { fastening: { sheathingNail: '8d box' } },
        priceList: [boards],
      }),
      'nails-8d-box',
    );
    expect(nails.quantity).toBe(String(5 * 4 * 2));
  });

  test('a plank item named for panels is not taken for a sheet', () => {
    const { lacks } = smallTakeoff({
      eaveDesign: { sheathing: { kind: 'panels', itemId: 'board-1x6' } },
      priceList: [boards],
    });
    expect(lacks).toMatchObject([{ detail: expect.stringContaining('"1x6 boards" is no sheet') as unknown }]);
  });

  test('without sheathing there is neither sheet nor nail nor hour for it', () => {
    const { lines, lacks } = smallTakeoff({ eaveDesign: { sheathing: { kind: 'none' } } });
    expect(lines.filter((line) => /sheathing/.test(line.id))).toEqual([]);
    expect(lines.map((line) => line.id)).not.toContain('nails-8d-box');
    expect(lacks).toEqual([]);
  });

  test('lapped pieces of drip edge reach the end of the run, and one fewer would not', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), fc.integer({ min: 24, max: 144 }), (runIn, pieceIn) => {
        const pieces = dripEdgePieces(runIn, pieceIn);
        const reach = (count: number): number => count * pieceIn - (count - 1) * 2;
        expect(reach(pieces)).toBeGreaterThanOrEqual(runIn);
        expect(pieces === 1 || reach(pieces - 1) < runIn).toBe(true);
      }),
    );
  });

  test('drip edge follows the piece length of the price list', () => {
    expect(edgeNeed(null)).toMatchObject({ pieces: 1 });
    // 120 in. run, 5 ft pieces: (120 - 2) / 58 -> 3, with two laps of 2 in.
    expect(edgeNeed(60)).toMatchObject({ pieces: 3, lengthIn: 124 });
  });
});
