import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dripEdgePieces } from '../../core/takeoff/drip-edge.ts';
import { packSheets, type SheetPart } from '../../core/takeoff/pack-sheets.ts';
import { coverEave } from '../../core/takeoff/cover.ts';
import { courseWidthsIn } from '../../core/takeoff/lay-cover.ts';
import { coursesOf, panelGapIn, sheathingStrip } from '../../core/takeoff/sheathing-strip.ts';
import { eavesToTakeOff } from '../../core/takeoff/takeoff-context.ts';
import { layOut, lineOf, smallJob, smallTakeoff } from './small-job.ts';

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

const short = (lengthIn: number) => [
  { widthIn: 18, lengthIn },
  { widthIn: 18, lengthIn },
];

// A part alone in a rip is never better than sharing one, so ours needs no more sheets than that.
const alone = (all: readonly SheetPart[]): number => {
  const room: number[] = [];
  for (const { widthIn } of all.toSorted((a, b) => b.widthIn - a.widthIn)) {
    const at = room.findIndex((left) => left >= widthIn);
    if (at < 0) room.push(48 - widthIn - 0.125);
    else room[at] = (room[at] ?? 0) - widthIn - 0.125;
  }
  return room.length;
};

describe('cover of the overhang', () => {
  test('panel courses and their gaps cover the strip and no more', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 200, noNaN: true }), (widthIn) => {
        const courses = coursesOf({ widthIn, breakIn: null }, sheet.widthIn, panelGapIn);
        const covered =
          courses.reduce((sum, { lowIn, highIn }) => sum + highIn - lowIn, 0) +
          panelGapIn * (courses.length - 1);
        expect(covered).toBeGreaterThan(widthIn - panelGapIn - 1e-5);
        expect(covered).toBeLessThan(widthIn + 1e-5);
      }),
    );
  });

  test('where the pitch breaks, a course ends and another begins', () => {
    expect(coursesOf({ widthIn: 50, breakIn: 20 }, 48, 0.125)).toEqual([
      { lowIn: 0, highIn: 20 },
      { lowIn: 20.125, highIn: 50 },
    ]);
  });

  test('kicked-up tails are covered at their own slope to the break, and on from there up the roof', () => {
    // Roof 8/12, tail 4/12 raised 3 in.: break 3 / (1/3) = 9 in. inside the wall. To it (16 + 9) x 1.0541 = 26.352 in., the
    // fascia before it 0.75 x 1.0541 = 0.791. Along the roof the break lies 9 x 1.2019 = 10.817 in. inside, so a
    // tie-back of 20 goes 9.183 beyond. Worked by hand.
    const job = smallJob({
      eave: { pitchRisePer12: 8, heightAbovePlateIn: 6 },
      eaveDesign: {
        kickUpPitchRisePer12: 4,
        kickUpRaiseIn: 3,
        sheathing: { tieBackIn: 20 },
        fasciaLine: 'as-found',
      },
    });
    const [eave] = eavesToTakeOff(job, layOut(job));
    if (eave === undefined) throw new Error('no eave');
    const strip = sheathingStrip(eave);
    expect(strip.breakIn).toBeCloseTo(27.143, 3);
    expect(strip.widthIn).toBeCloseTo(27.143 + 9.183, 3);
    const covered = coverEave(eave, job).cover;
    expect(covered.kind === 'panels' ? courseWidthsIn(covered.boards).length : 0).toBe(2);
  });

  test('two rips of 17.89 in. come out of a 4 ft sheet, a third does not', () => {
    const rips = Array.from({ length: 5 }, () => ({ widthIn: 17.89, lengthIn: 96 }));
    expect(packSheets([rips], sheet, 0.125)).toEqual([3]);
  });

  test('two rips of 24 in. do not come out of a 4 ft sheet, since the kerf takes its eighth', () => {
    const rips = Array.from({ length: 2 }, () => ({ widthIn: 24, lengthIn: 96 }));
    expect(packSheets([rips], sheet, 0.125)).toEqual([2]);
    expect(packSheets([rips], sheet, 0)).toEqual([1]);
  });

  test('short panels share a rip: two of 47 in. with the kerf between them, not two of 48', () => {
    const long = [
      { widthIn: 18, lengthIn: 96 },
      { widthIn: 18, lengthIn: 96 },
    ];
    expect(packSheets([[...long, ...short(47)]], sheet, 0.125)).toEqual([2]);
    // 48 + 1/8 + 48 does not come out of one rip, but the second sheet holds two rips.
    expect(packSheets([[...long, ...short(48)]], sheet, 0.125)).toEqual([2]);
    expect(packSheets([[...long, ...short(48), ...short(48)]], sheet, 0.125)).toEqual([3]);
    expect(packSheets([[...long, ...short(47), ...short(47)]], sheet, 0.125)).toEqual([2]);
  });

  test('a later use takes what an earlier one leaves, and opens sheets only for the rest', () => {
    const strips = Array.from({ length: 3 }, () => ({ widthIn: 18, lengthIn: 96 }));
    const narrow = { widthIn: 5.5, lengthIn: 21 };
    // Sheet 1: two strips, 11.75 in. left, two rips of 5-1/2 with their kerfs; four pieces of 21 in. in each rip.
    expect(packSheets([strips, [narrow, narrow]], sheet, 0.125)).toEqual([2, 0]);
    expect(packSheets([[narrow], strips], sheet, 0.125)).toEqual([1, 1]);
  });

  const parts = fc.array(
    fc.record({ widthIn: fc.integer({ min: 2, max: 48 }), lengthIn: fc.integer({ min: 6, max: 96 }) }),
    { minLength: 1, maxLength: 12 },
  );

  test('sheets hold no less than the area of their parts, and no more than one part each', () => {
    fc.assert(
      fc.property(parts, (all) => {
        const [sheets = 0] = packSheets([all], sheet, 0.125);
        const area = all.reduce((sum, { widthIn, lengthIn }) => sum + widthIn * lengthIn, 0);
        expect(sheets * sheet.widthIn * sheet.lengthIn).toBeGreaterThanOrEqual(area);
        expect(sheets).toBeLessThanOrEqual(all.length);
      }),
    );
  });

  test('sheets do not fall short of what any order of rips needs: each part tried in a whole rip of its own', () => {
    fc.assert(
      fc.property(parts, (all) => {
        expect(packSheets([all], sheet, 0.125)[0]).toBeLessThanOrEqual(alone(all));
      }),
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
