import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { computeJob } from '../../core/job/compute-job.ts';
import { explain } from '../../core/trace/explain.ts';
import { smallJob, type SmallJob } from '../takeoff/small-job.ts';

/** Invented prices of 2x6 No.2 in lengths of which the longest may be too short. */
function lumber(feet: readonly number[]): readonly object[] {
  return feet.map((lengthFt) => ({
    id: `2x6-${lengthFt}`,
    category: 'lumber',
    description: `2x6 No.2 ${lengthFt} ft`,
    unit: 'each',
    section: '2x6',
    grade: 'No.2',
    lengthFt,
    prices: [{ priceUsd: lengthFt, observedOn: '2026-04-01' }],
  }));
}

/** Walls with rafters 14 to 26 in. apart, overhangs of 12 to 24 in., and lengths to buy. */
const anyJob: fc.Arbitrary<SmallJob> = fc
  .record({
    gaps: fc.array(fc.integer({ min: 14 * 16, max: 26 * 16 }), { minLength: 2, maxLength: 12 }),
    overhangIn: fc.integer({ min: 12, max: 24 }),
    pitchRisePer12: fc.integer({ min: 3, max: 12 }),
    feet: fc.uniqueArray(fc.constantFrom(4, 6, 8, 12, 16), { minLength: 0, maxLength: 4 }),
  })
  .map(({ gaps, overhangIn, pitchRisePer12, feet }) => {
    const stations: number[] = [4];
    for (const gap of gaps) stations.push((stations.at(-1) ?? 0) + gap / 16);
    return {
      stations,
      eave: { lengthIn: (stations.at(-1) ?? 0) + 6, pitchRisePer12 },
      eaveDesign: { overhangIn },
      priceList: lumber(feet),
    };
  });

test('no piece is lost between takeoff and cut plan: each is in one board, or named as not planned', () => {
  fc.assert(
    fc.property(anyJob, (change) => {
      const result = computeJob(smallJob(change));
      expect(result).toMatchObject({ ok: true });
      const value = result.ok ? result.value : undefined;
      const planned = value?.cutPlans.flatMap((plan) =>
        plan.boards.flatMap((board) => board.items.map((item) => item.mark)),
      );
      const unplanned = value?.unplanned.flatMap((stock) => stock.marks);
      const taken = value?.takeoff.pieces.map((piece) => piece.mark);
      expect([...(planned ?? []), ...(unplanned ?? [])].toSorted()).toEqual(taken?.toSorted());
      expect(taken?.length).toBeGreaterThan(4);
    }),
    { numRuns: 40 },
  );
});

test('every figure that a takeoff line is made of can be opened', () => {
  const job = smallJob({ moreEaves: [[12, 40, 64]], priceList: lumber([8, 12, 16]) });
  const result = computeJob(job);
  if (!result.ok) throw new Error(result.problem.code);
  const refs = [
    ...result.value.takeoff.lines.flatMap((line) => line.madeOf.map((part) => part.ref)),
    ...result.value.takeoff.pieces.map((piece) => piece.ref),
  ].filter((ref) => ref !== undefined);
  expect(refs.length).toBeGreaterThan(60);
  expect(refs.filter((ref) => explain(ref, job, result.value) === undefined)).toEqual([]);
});
