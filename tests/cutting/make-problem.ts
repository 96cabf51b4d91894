import * as fc from 'fast-check';
import { cuttingModel, type CuttingModel } from '../../core/cutting/cutting-model.ts';
import { planCuts } from '../../core/cutting/plan-cuts.ts';
import { nearestSixteenth, type Sixteenths } from '../../core/units/sixteenths.ts';
import type { CutItem, CutPlan, CuttingProblem, StockLength } from '../../core/cutting/cut-plan-types.ts';

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
    depthSixteenths: nearestSixteenth(5.5),
  };
}

/** Plans a problem that can be planned. */
export function planOf(problem: CuttingProblem): CutPlan {
  const plan = planCuts(problem);
  if (!plan.ok) throw new Error(`not planned: ${JSON.stringify(plan.problem)}`);
  return plan.value;
}

/** The model of a problem that has one. */
export function modelOf(problem: CuttingProblem): CuttingModel {
  const model = cuttingModel(problem);
  if (!model.ok) throw new Error(`no model: ${JSON.stringify(model.problem)}`);
  return model.value.model;
}

/** Cost and bound of a plan. [cents] */
export function centsOf(plan: CutPlan): { readonly cost: number; readonly bound: number } {
  return { cost: Math.round(Number(plan.costUsd) * 100), bound: Math.round(Number(plan.boundUsd) * 100) };
}

/** What a plan counts for: its cost, and what each of its boards counts for besides. [cents] */
export function countedOf(plan: CutPlan): number {
  return centsOf(plan).cost + plan.centsPerBoard * plan.boards.length;
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

const anyOnHand: fc.Arbitrary<StockLength> = fc
  .record({
    length: fc.integer({ min: 200, max: 2200 }),
    priceCents: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 900 })),
    available: fc.integer({ min: 1, max: 2 }),
  })
  .map(({ length, priceCents, available }) => ({
    itemId: `on-hand-${length}`,
    lengthSixteenths: length as Sixteenths,
    priceCents,
    available,
    source: 'on-hand' as const,
  }));

/** The same with plumb-ended pieces, lengths that are scarce, boards on hand, and a board fewer worth money. */
export const anyFullProblem = (mostPieces: number): fc.Arbitrary<CuttingProblem> =>
  fc
    .record({
      problem: anyProblem(mostPieces),
      slants: fc.array(fc.constantFrom(0, 0, 15, 44, 88), { minLength: mostPieces, maxLength: mostPieces }),
      scarce: fc.array(fc.option(fc.integer({ min: 1, max: 3 }), { nil: undefined }), {
        minLength: 5,
        maxLength: 5,
      }),
      onHand: fc.uniqueArray(anyOnHand, { maxLength: 3, selector: ({ itemId }) => itemId }),
      centsPerBoard: fc.constantFrom(0, 0, 35, 400),
    })
    .map(({ problem, slants, scarce, onHand, centsPerBoard }) => ({
      ...problem,
      items: problem.items.map((item, index): CutItem => {
        const slant = slants[index] ?? 0;
        return slant === 0 ? item : { ...item, slantSixteenths: slant as Sixteenths };
      }),
      lengths: [
        ...problem.lengths.map((length, index) => {
          const available = scarce[index];
          // The first can always be bought, so that there is a plan.
          return index === 0 || available === undefined ? length : { ...length, available };
        }),
        ...onHand,
        { itemId: 'longest', lengthSixteenths: (22 * 192) as Sixteenths, priceCents: 3600 },
      ],
      preferences: { centsPerBoard },
    }));
