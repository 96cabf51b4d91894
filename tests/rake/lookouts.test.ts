import { describe, expect, test } from 'vitest';
import { problemSentence } from '../../core/problems/sentence.ts';
import type { RakeLayout } from '../../core/rake/rake-types.ts';
import { makeRake, problemOf } from './make-rake.ts';

const overHouse = (rake: RakeLayout) => rake.lookouts.filter(({ levelIn }) => levelIn < -2);
const pastWall = (rake: RakeLayout) => rake.lookouts.filter(({ levelIn }) => levelIn > 2);
const named = (members: RakeLayout['lookouts'][number]['crosses']) => members.map(({ label }) => label);

describe('a lookout let into the gable rafter', () => {
  test('runs from the barge rafter to the near face of the first rafter inside, and an inch long to trim', () => {
    // By hand: rafter 2 of 1-1/2 at 16 has its near face at 15-1/4; 12 - 1-1/2 + 15-1/4 = 25-3/4; with 1 in. 26-3/4.
    const rake = makeRake();
    const high = overHouse(rake).at(-1)!;
    expect(named(high.crosses)).toEqual(['rafter 1']);
    expect(high.meets).toMatchObject({ label: 'rafter 2', outerInsideIn: 15.25 });
    expect(high.lengthIn).toBe(25.75);
    expect(high.lengthSixteenths).toBe(26.75 * 16);
    expect(high).toMatchObject({ backspanIn: 15.25, overhangIn: 12, block: null });
    expect(rake.notch).toEqual({ depthIn: 1.5, widthIn: 3.5 });
  });

  test('past the wall crosses the tail alone and meets the next tail, which stands on the far side of its rafter', () => {
    // A-E01 right of rafter 1 takes 1-1/2 to 3; A-E02 right of rafter 2 begins at 16-3/4: 10-1/2 + 16-3/4 = 27-1/4.
    const [first] = pastWall(makeRake());
    expect(named(first!.crosses)).toEqual(['A-E01']);
    expect(first!.meets).toMatchObject({ label: 'A-E02', outerInsideIn: 16.75 });
    expect(first!.lengthIn).toBe(27.25);
    expect(first!.backspanIn).toBe(15.25);
    expect(first!.overhangIn).toBe(13.5);
  });

  test('crosses rafter and tail together as far up as the tail reaches back', () => {
    // Backspan 2 x 17.889 = 35.777 along the slope, 32 level: over -32 to 0 the tail lies beside the rafter.
    const along = makeRake().lookouts.map(({ levelIn, crosses }) => ({
      where: levelIn > 0 ? 'past the wall' : levelIn > -32 ? 'beside the tail' : 'above it',
      crossed: named(crosses).join(' and '),
    }));
    expect(new Map(along.map(({ where, crossed }) => [where, crossed]))).toEqual(
      new Map([
        ['past the wall', 'A-E01'],
        ['beside the tail', 'rafter 1 and A-E01'],
        ['above it', 'rafter 1'],
      ]),
    );
  });

  test('stops at a tail on the near side of the first rafter inside, shorter by its thickness', () => {
    const rake = makeRake({
      eave: {
        rafters: [0.75, 16, 40, 64].map((readingIn, index) => ({
          id: `r${index + 1}`,
          readingIn,
          ...(index === 1 ? { joist: 'right' as const } : {}),
        })),
      },
    });
    const beside = rake.lookouts.find(({ levelIn }) => levelIn < -2 && levelIn > -28);
    expect(beside!.meets).toMatchObject({ label: 'A-E02', outerInsideIn: 13.75 });
    expect(beside!.lengthIn).toBe(24.25);
  });

  test('goes by the distance measured at the gable where it was read', () => {
    const rake = makeRake({ survey: { firstInsideIn: 14 } });
    expect(overHouse(rake).at(-1)!.lengthIn).toBe(24.5);
  });

  test('on edge is let in by its depth, and takes less of the slope', () => {
    const rake = makeRake({ design: { lookoutLaid: 'on-edge' } });
    expect(rake.notch).toEqual({ depthIn: 3.5, widthIn: 1.5 });
    // At the ridge its whole depth clears the plumb cut, which leans in by 3-1/2 x 1/2 there.
    expect(rake.lookouts.at(-1)!.alongIn).toBeCloseTo(rake.barge[0]!.toIn - 1.75 - 0.75 - 1.5, 9);
  });

  test('asks for the first rafter inside where none was read', () => {
    const problem = problemOf({ readings: [0.75] });
    expect(problem.field).toBe('survey.rakes.0.firstInsideIn');
    expect(problemSentence(problem)).toMatch(/no rafter inside the gable/);
    expect(overHouse(makeRake({ readings: [0.75], survey: { firstInsideIn: 14.5 } })).at(-1)!.lengthIn).toBe(
      25,
    );
  });
});

describe('a lookout butted to the gable rafter', () => {
  test('stops at its outer face, and a block goes on behind, rounded down to fit', () => {
    // By hand: out 12 - 1-1/2 = 10-1/2, with 1 in. to trim 11-1/2; block between 1-1/2 and 15-1/4: 13-3/4.
    const rake = makeRake({ design: { atGableRafter: 'butted' } });
    const high = overHouse(rake).at(-1)!;
    expect(high.lengthIn).toBe(10.5);
    expect(high.lengthSixteenths).toBe(11.5 * 16);
    expect(high.block).toEqual({ mark: high.mark.replace('-K', '-B'), lengthSixteenths: 13.75 * 16 });
    expect(rake.notch).toBeNull();
    // Where the tail stands on the rafter's inner face, the block begins behind both: 15-1/4 - 3.
    const beside = rake.lookouts.find(({ crosses }) => crosses.length === 2);
    expect(beside!.block!.lengthSixteenths).toBe(12.25 * 16);
  });
});

describe('a ladder', () => {
  const ladder = { kind: 'ladder', overhangIn: 9, spacingIn: 16 } as const;

  test('has rungs between rail and barge rafter: 9 in. less 1-1/2 twice and 3/4 of siding leaves 5-1/4', () => {
    const rake = makeRake({ design: ladder, survey: { finishIn: 0.75 } });
    expect(rake.lookouts.every(({ lengthSixteenths }) => lengthSixteenths === 5.25 * 16)).toBe(true);
    expect(rake.lookoutWidthIn).toBe(1.5);
    expect(rake.lookouts.every(({ crosses, meets }) => crosses.length === 0 && meets === null)).toBe(true);
  });

  test('has an inner rail cut as the barge rafter is, of its own depth', () => {
    const rake = makeRake({ design: ladder });
    expect(rake.rails).toHaveLength(1);
    expect(rake.rails[0]).toMatchObject({ mark: 'R1-R01', lowerEnd: 'plumb', upperEnd: 'plumb' });
    // 178.047 along the top edge and 3-1/2 x 1/2 of slant.
    expect(rake.rails[0]!.lengthSixteenths).toBe(Math.ceil((178.0469 + 1.75) * 16));
    expect(makeRake().rails).toEqual([]);
  });

  test('asks for more overhang where nothing is left for rungs', () => {
    const problem = problemOf({ design: { ...ladder, overhangIn: 4 } });
    expect(problem.field).toBe('design.rakes.0.overhangIn');
    expect(problemSentence(problem)).toMatch(/at least 4-1\/2"/);
  });
});

describe('panels up a rake', () => {
  test('meet end to end on lookouts: at the top of the eave sheathing, and a sheet and its gap further up', () => {
    // Eave sheathing runs in 8 in. over the wall: 17.889 + 8 = 25.889 along; then 25.889 + 1/8 + 96 + 1/16.
    const rake = makeRake({
      eaveDesign: { fascia: { stock: { section: '1x8' } }, sheathing: { tieBackIn: 8 } },
    });
    expect(rake.strip!.fromIn).toBeCloseTo(25.8885, 3);
    expect(rake.strip!.jointsIn).toHaveLength(2);
    expect(rake.strip!.jointsIn[1]).toBeCloseTo(25.8885 + 0.125 + 96 + 0.0625, 3);
    for (const joint of rake.strip!.jointsIn)
      expect(rake.lookouts.some(({ alongIn }) => Math.abs(alongIn - joint) < 1e-9)).toBe(true);
  });

  test('reach from the edge over barge and fascia in to the middle of the first rafter inside', () => {
    const { strip, alongIn } = makeRake();
    expect(strip!.outIn).toBe(12.75);
    expect(strip!.widthIn).toBe(12.75 + 16);
    expect(strip!.toIn).toBe(alongIn);
    expect(strip!.areaSqFt).toBeCloseTo((28.75 * (alongIn - strip!.fromIn)) / 144, 9);
  });

  test('start at the roof edge where the eave gets no new sheathing', () => {
    const rake = makeRake({
      eaveDesign: { fascia: { stock: { section: '1x8' } }, sheathing: { kind: 'none' } },
    });
    expect(rake.strip!.fromIn).toBeCloseTo(-0.75 * Math.sqrt(1.25), 9);
  });

  test('of planks have no end joints up the slope, and may break on two rafters by turns', () => {
    const { strip } = makeRake({
      design: { sheathing: { kind: 'planks', stripBackIn: 16, everySecondIn: 40 } },
    });
    expect(strip!.jointsIn).toEqual([]);
    expect(strip!.widthIn).toBe(12.75 + 28);
  });

  test('are none where none are wanted', () => {
    expect(makeRake({ design: { sheathing: { kind: 'none' } } }).strip).toBeNull();
  });
});
