import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { computeJob } from '../../core/job/compute-job.ts';
import {
  costStaircase,
  overhangCost,
  withOverhang,
  type CostStaircase,
  type OverhangCost,
} from '../../core/job/cost-staircase.ts';
import { usd } from '../../core/units/money.ts';
import { smallJob } from '../takeoff/small-job.ts';

/** Climbs a staircase, answering each overhang it asks about; tells how many it asked. */
function climb(
  range: Parameters<typeof costStaircase>[0],
  costAt: (overhangIn: number) => OverhangCost,
): CostStaircase & { readonly asked: number } {
  const stairs = costStaircase(range);
  let step = stairs.next();
  let asked = 0;
  while (step.done !== true) {
    asked += 1;
    step = stairs.next(costAt(step.value));
  }
  return { ...step.value, asked };
}

const flat = (dollars: number | null): OverhangCost => ({
  boardsUsd: dollars === null ? null : usd(dollars),
  totalUsd: dollars === null ? null : usd(dollars * 10),
  proof: 'exact-bound',
});

describe('the cost staircase', () => {
  test('has one step for each cost, found without asking at every sixteenth', () => {
    // 40 $ up to 16 in., 55 $ to 19-1/2 in., 70 $ beyond.
    const stairs = climb({ fromIn: 12, toIn: 24, todayIn: 18 }, (overhang) =>
      flat(overhang <= 16 ? 40 : overhang <= 19.5 ? 55 : 70),
    );
    expect(stairs.steps).toMatchObject([
      { fromOverhangIn: 12, toOverhangIn: 16, boardsUsd: '40.00' },
      { fromOverhangIn: 16.0625, toOverhangIn: 19.5, boardsUsd: '55.00' },
      { fromOverhangIn: 19.5625, toOverhangIn: 24, boardsUsd: '70.00' },
    ]);
    expect(stairs.cheaper).toEqual([{ overhangIn: 16, savesUsd: '15.00', totalUsd: '400.00' }]);
    expect(stairs.asFarAsIn).toBe(19.5);
    expect(stairs.asked).toBeLessThan(30);
  });

  test('of any costs that rise is what asking at every sixteenth gives', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 12 * 16, max: 30 * 16 - 1 }), { maxLength: 8 }),
        fc.integer({ min: 12 * 16, max: 30 * 16 }),
        (rises, today) => {
          const dollars = (place: number): number => 50 + rises.filter((rise) => place > rise).length * 7;
          const stairs = climb({ fromIn: 12, toIn: 30, todayIn: today / 16 }, (overhang) =>
            flat(dollars(overhang * 16)),
          );
          for (let place = 12 * 16; place <= 30 * 16; place += 1) {
            const step = stairs.steps.filter(
              ({ fromOverhangIn, toOverhangIn }) =>
                place / 16 >= fromOverhangIn && place / 16 <= toOverhangIn,
            );
            expect(step.map(({ boardsUsd }) => boardsUsd)).toEqual([usd(dollars(place))]);
          }
          expect(stairs.steps).toHaveLength(rises.length + 1);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('says where pieces find no board any more, and counts nothing there as cheaper', () => {
    const stairs = climb({ fromIn: 12, toIn: 24, todayIn: 23 }, (overhang) =>
      flat(overhang <= 20 ? 40 : null),
    );
    expect(stairs.steps.map(({ boardsUsd }) => boardsUsd)).toEqual(['40.00', null]);
    expect(stairs.cheaper).toEqual([]);
  });

  test('of a house rises with the overhang, and at each step is what the job costs there', () => {
    const feet = [8, 10, 12, 16];
    const job = smallJob({
      priceList: feet.map((lengthFt) => ({
        id: `2x6-${lengthFt}`,
        category: 'lumber',
        description: `2x6 No.2 ${lengthFt} ft`,
        unit: 'each',
        section: '2x6',
        grade: 'No.2',
        lengthFt,
        prices: [{ priceUsd: lengthFt * 1.1, observedOn: '2026-04-01' }],
      })),
    });
    const eaveId = job.survey.eaves[0]?.id ?? '';
    const costAt = (overhangIn: number): OverhangCost => {
      const result = computeJob(withOverhang(job, eaveId, overhangIn));
      return overhangCost(result.ok ? result.value : undefined);
    };
    const stairs = climb({ fromIn: 12, toIn: 20, todayIn: 16 }, costAt);
    expect(stairs.steps.length).toBeGreaterThan(2);
    for (const step of stairs.steps) {
      expect(costAt(step.fromOverhangIn).boardsUsd).toBe(step.boardsUsd);
      expect(costAt(step.toOverhangIn)).toMatchObject({ boardsUsd: step.boardsUsd, totalUsd: step.totalUsd });
    }
    const dollars = stairs.steps.map(({ boardsUsd }) => Number(boardsUsd));
    expect(dollars).toEqual(dollars.toSorted((a, b) => a - b));
  });
});
