import { zeroUsd } from '../units/money.ts';
import { nearestSixteenth } from '../units/sixteenths.ts';
import { slantOf } from './board-use.ts';
import { checkPlan } from './check-plan.ts';
import type { CompositionCut } from './composition-cut.ts';
import { centsOf, type Load, type ModelAndPins } from './cutting-model.ts';
import { loadsToBoards } from './loads-to-boards.ts';
import type { ProvenBound } from './lower-bound.ts';
import { settlePins } from './settle-pins.ts';
import { stockGroup } from './stock-group.ts';
import { gapOf, usdOfCents } from './with-bound.ts';
import type { BoundCertificate, CutPlan, CuttingProblem, ProofKind } from './cut-plan-types.ts';

/** What a plan is made of. */
export type PlanParts = ModelAndPins & {
  readonly loads: readonly Load[];
  /** Of the loads, without pinned boards. [cents] */
  readonly boundCents: number;
  /** What the bound in whole numbers is shown by. */
  readonly proven: ProvenBound;
  /** What rules out purchases that the worths of `proven` alone would leave possible. */
  readonly cuts: readonly CompositionCut[];
  /** What shows that nothing is cheaper, where bound and cost are one. */
  readonly proof: Exclude<ProofKind, 'none'>;
  readonly tiesProven: boolean;
  readonly oneLength: { readonly cents: number; readonly lengthSixteenths: number } | null;
};

/** Makes a plan of loads: boards with marks, held against the problem once more, with cost, bound and certificate. */
export function makePlan(problem: CuttingProblem, parts: PlanParts): CutPlan {
  const { model, pins, loads, oneLength } = parts;
  const boards = loadsToBoards(problem, model, loads, pins);
  checkPlan(problem, boards);
  const counted = centsOf(model, loads);
  if (parts.boundCents > counted)
    throw new Error(`cut plan: the bound of ${parts.boundCents} cents is above the cost of ${counted}`);
  const cents = boards.reduce((sum, board) => sum + board.priceCents, 0);
  const bound = Math.max(0, cents - (counted - parts.boundCents));
  // Of a piece with two plumb ends the mid-line: what it takes of a board beside others like it.
  const net = problem.items.reduce((sum, item) => sum + item.lengthSixteenths - slantOf(problem, item), 0);
  const total = boards.reduce((sum, board) => sum + board.lengthSixteenths, 0);
  return {
    group: stockGroup(problem.stock),
    stock: problem.stock,
    boards,
    costUsd: usdOfCents(cents),
    boundUsd: usdOfCents(bound),
    ...gapOf(cents, bound),
    proof: bound === cents ? parts.proof : 'none',
    certificate: certificateOf(parts),
    tiesProven: parts.tiesProven && bound === cents,
    centsPerBoard: problem.preferences?.centsPerBoard ?? 0,
    unmetPins: settlePins(problem).unmet,
    yield: total === 0 ? 1 : net / total,
    oneLengthUsd: oneLength === null ? null : usdOfCents(oneLength.cents),
    oneLengthFt: oneLength === null ? null : oneLength.lengthSixteenths / 192,
  };
}

/** The plan of a problem without pieces. */
export function emptyPlan(problem: CuttingProblem): CutPlan {
  return {
    group: stockGroup(problem.stock),
    stock: problem.stock,
    boards: [],
    costUsd: zeroUsd,
    boundUsd: zeroUsd,
    gap: 0,
    status: 'optimal',
    proof: 'exact-bound',
    certificate: null,
    tiesProven: true,
    centsPerBoard: problem.preferences?.centsPerBoard ?? 0,
    unmetPins: settlePins(problem).unmet,
    yield: 1,
    oneLengthUsd: null,
    oneLengthFt: null,
  };
}

const noSlant = nearestSixteenth(0);

function certificateOf({ model, proven: { worth, tax }, cuts }: PlanParts): BoundCertificate {
  return {
    worths: model.sizes.map(({ sample }, size) => ({
      lengthSixteenths: sample.lengthSixteenths,
      slantSixteenths: sample.slantSixteenths ?? noSlant,
      parts: worth[size] ?? 0,
    })),
    supplies: model.stocks.flatMap(({ itemId, lengthSixteenths, priceCents }, stock) => {
      const parts = tax[stock] ?? 0;
      return parts === 0 ? [] : [{ itemId, lengthSixteenths, priceCents, parts }];
    }),
    cuts: cuts.map((cut) => cut.worth),
  };
}
