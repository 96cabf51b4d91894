import * as fc from 'fast-check';
import { planCuts } from '../../core/cutting/plan-cuts.ts';
import { nearestSixteenth } from '../../core/units/sixteenths.ts';
import type { CutPlan, CuttingProblem } from '../../core/cutting/cut-plan-types.ts';

/** Builds a problem from plain numbers: pieces [in], lengths [ft, cents], kerf and end trim [in]. */
export function makeProblem(
  piecesIn: readonly number[],
  lengths: readonly (readonly [feet: number, cents: number])[],
  saw: { readonly kerfIn?: number; readonly endTrimIn?: number } = {},
): CuttingProblem {
  return {
    stock: { section: '2x6', grade: 'No.2' },
    items: piecesIn.map((inches, index) => ({
      mark: `P${index + 1}`,
      lengthSixteenths: nearestSixteenth(inches),
    })),
    lengths: lengths.map(([feet, priceCents], index) => ({
      itemId: `length-${index + 1}`,
      lengthSixteenths: nearestSixteenth(feet * 12),
      priceCents,
    })),
    kerfSixteenths: nearestSixteenth(saw.kerfIn ?? 0.125),
    endTrimSixteenths: nearestSixteenth(saw.endTrimIn ?? 0),
  };
}

/** Plans a problem that can be planned. */
export function planOf(problem: CuttingProblem): CutPlan {
  const plan = planCuts(problem);
  if (!plan.ok) throw new Error(`not planned: ${JSON.stringify(plan.problem)}`);
  return plan.value;
}

/** Cost and bound of a plan. [cents] */
export function centsOf(plan: CutPlan): { readonly cost: number; readonly bound: number } {
  return { cost: Math.round(Number(plan.costUsd) * 100), bound: Math.round(Number(plan.boundUsd) * 100) };
}

const priced = fc
  .uniqueArray(fc.constantFrom(8, 10, 12, 14, 16, 18, 20), { minLength: 1, maxLength: 5 })
  .chain((feet) =>
    fc.tuple(
      ...feet.map((length) =>
        fc.tuple(fc.constant(length), fc.integer({ min: length * 60, max: length * 140 })),
      ),
    ),
  );

/** Any job of a yard: pieces from 10 to 90 in., lengths from 8 to 20 ft with prices out of proportion. */
export const anyProblem = (mostPieces: number): fc.Arbitrary<CuttingProblem> =>
  fc
    .record({
      pieces: fc.array(fc.integer({ min: 160, max: 1440 }), { minLength: 1, maxLength: mostPieces }),
      lengths: priced,
      kerf: fc.constantFrom(0, 1, 2, 3),
      trim: fc.constantFrom(0, 4, 8, 16),
    })
    .map(({ pieces, lengths, kerf, trim }) =>
      makeProblem(
        pieces.map((sixteenths) => sixteenths / 16),
        lengths,
        { kerfIn: kerf / 16, endTrimIn: trim / 16 },
      ),
    );
