import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { costStaircase, overhangPlaces, type PlaceCost } from '../../core/job/cost-staircase.ts';
import { usd } from '../../core/units/money.ts';

const place = (overhangIn: number, dollars: number | null, bound = dollars): PlaceCost => ({
  overhangIn,
  boardsUsd: dollars === null ? null : usd(dollars),
  boundUsd: bound === null ? null : usd(bound),
  proof: dollars === null || dollars !== bound ? 'none' : 'exact-bound',
  hasNoBoard: dollars === null,
});

/** Costs at every half inch. */
const everyHalf = (from: number, to: number, dollars: (overhangIn: number) => number | null) =>
  Array.from({ length: (to - from) * 2 + 1 }, (_, index) =>
    place(from + index / 2, dollars(from + index / 2)),
  );

describe('the cost staircase', () => {
  test('has one step for each cost, and tells what the nearest lower ones save', () => {
    // 40 $ up to 16 in., 55 $ to 19-1/2 in., 70 $ beyond.
    const stairs = costStaircase(
      everyHalf(12, 24, (overhang) => (overhang <= 16 ? 40 : overhang <= 19.5 ? 55 : 70)),
      21,
    );
    expect(stairs.steps).toMatchObject([
      { fromOverhangIn: 12, toOverhangIn: 16, boardsUsd: '40.00' },
      { fromOverhangIn: 16.5, toOverhangIn: 19.5, boardsUsd: '55.00' },
      { fromOverhangIn: 20, toOverhangIn: 24, boardsUsd: '70.00' },
    ]);
    expect(stairs.cheaper).toEqual([
      { overhangIn: 19.5, savesUsd: '15.00' },
      { overhangIn: 16, savesUsd: '30.00' },
    ]);
    expect(stairs.asFarAsIn).toBe(24);
  });

  test('counts no overhang as cheaper where pieces find no board', () => {
    const stairs = costStaircase(
      everyHalf(12, 24, (overhang) => (overhang <= 20 ? 40 : null)),
      23,
    );
    expect(stairs.steps.map(({ boardsUsd, hasNoBoard }) => [boardsUsd, hasNoBoard])).toEqual([
      ['40.00', false],
      [null, true],
    ]);
    expect(stairs.cheaper).toEqual([]);
  });

  test('calls a step proven only where it is proven at its near end', () => {
    const stairs = costStaircase(
      [place(12, 40, 39), place(13, 40, 40), place(14, 50, 50), place(15, 50, 50)],
      14,
    );
    expect(stairs.steps.map(({ boundUsd, proof }) => [boundUsd, proof])).toEqual([
      ['39.00', 'none'],
      ['50.00', 'exact-bound'],
    ]);
  });

  test('asks about every sixteenth of its range once, today’s overhang first', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 0, max: 200 }),
        fc.integer({ min: 0, max: 200 }),
        (from, wide, today) => {
          const asked = overhangPlaces({
            fromIn: from / 16,
            toIn: (from + wide) / 16,
            todayIn: (from + Math.min(today, wide)) / 16,
          });
          expect(asked[0]).toBe((from + Math.min(today, wide)) / 16);
          expect(asked.toSorted((a, b) => a - b)).toEqual(
            Array.from({ length: wide + 1 }, (_, index) => (from + index) / 16),
          );
        },
      ),
      { numRuns: 60 },
    );
  });
});
