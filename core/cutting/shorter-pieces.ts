import { slantOf } from './board-use.ts';
import type { CutItem, CutPlan, CuttingProblem } from './cut-plan-types.ts';
import { cuttingModel } from './cutting-model.ts';
import { loadsToBoards } from './loads-to-boards.ts';
import { checkPlan } from './check-plan.ts';
import { selectStocks } from './select-stocks.ts';
import { usdOfCents } from './with-bound.ts';
import { zeroUsd } from '../units/money.ts';

/**
 * Whether every piece of one problem can be cut where another one asks for a piece of its own that is no shorter, with the
 * same slant, from the same lengths by the same saw. Then whatever holds the longer pieces holds the shorter ones, and
 * nothing holds the longer ones for less than the shorter ones cost at least.
 */
export function areShorter(shorter: CuttingProblem, longer: CuttingProblem): boolean {
  return sameTerms(shorter, longer) && replacements(shorter, longer) !== undefined;
}

/**
 * The plan of a problem, cut to the pieces of another one that are no longer (`areShorter`): the boards stay, each swapped
 * for the cheapest that still holds its pieces; a board that nothing is left on is not bought.
 * @param problem - the shorter pieces. [1/16 in]
 * @param longer - the longer pieces, which the plan was made for. [1/16 in]
 * @param plan - boards of the longer pieces.
 * @returns a plan without a bound of its own; undefined where the pieces are not shorter, or where pins or a worth of
 * boards say what goes together.
 */
export function planOfShorter(
  problem: CuttingProblem,
  longer: CuttingProblem,
  plan: CutPlan,
): CutPlan | undefined {
  if (!sameTerms(problem, longer)) return undefined;
  const replaced = replacements(problem, longer);
  const modelled = cuttingModel(problem);
  if (replaced === undefined || !modelled.ok) return undefined;
  const { model, pins } = modelled.value;
  const sizeOf = new Map(
    model.sizes.map(({ sample }, size) => [`${sample.lengthSixteenths}/${slantOf(problem, sample)}`, size]),
  );
  const contents = plan.boards
    .map(({ items }) =>
      items.flatMap(({ mark }) => {
        const item = replaced.get(mark);
        return item === undefined
          ? []
          : (sizeOf.get(`${item.lengthSixteenths}/${slantOf(problem, item)}`) ?? []);
      }),
    )
    .filter((sizes) => sizes.length > 0);
  const loads = selectStocks(model, contents);
  if (loads === undefined) return undefined;
  const boards = loadsToBoards(problem, model, loads, pins);
  checkPlan(problem, boards);
  const cents = boards.reduce((sum, { priceCents }) => sum + priceCents, 0);
  const net = problem.items.reduce((sum, item) => sum + item.lengthSixteenths - slantOf(problem, item), 0);
  const total = boards.reduce((sum, { lengthSixteenths }) => sum + lengthSixteenths, 0);
  return {
    ...plan,
    boards,
    costUsd: usdOfCents(cents),
    boundUsd: zeroUsd,
    gap: cents === 0 ? 0 : 1,
    status: 'best-found',
    proof: 'none',
    certificate: null,
    tiesProven: false,
    yield: total === 0 ? 1 : net / total,
    oneLengthUsd: null,
    oneLengthFt: null,
  };
}

/** Same lengths at the same prices, same saw, and nothing wanted but the least money. */
function sameTerms(one: CuttingProblem, other: CuttingProblem): boolean {
  return isPlain(one) && isPlain(other) && termsOf(one) === termsOf(other);
}

function isPlain({ preferences }: CuttingProblem): boolean {
  return (preferences?.pinned ?? []).length === 0 && (preferences?.centsPerBoard ?? 0) === 0;
}

function termsOf(problem: CuttingProblem): string {
  const { lengths, kerfSixteenths, endTrimSixteenths, depthSixteenths = 0, preferences } = problem;
  return JSON.stringify([
    lengths,
    kerfSixteenths,
    endTrimSixteenths,
    depthSixteenths,
    preferences?.useOnHand ?? true,
  ]);
}

/**
 * For each piece of the longer problem, by mark, the shorter piece that takes its place: of each slant the longest takes
 * that of the longest, and so on, which works wherever any way does.
 */
function replacements(
  shorter: CuttingProblem,
  longer: CuttingProblem,
): ReadonlyMap<string, CutItem> | undefined {
  const places = bySlant(longer);
  const replaced = new Map<string, CutItem>();
  for (const [slant, items] of bySlant(shorter)) {
    const held = places.get(slant) ?? [];
    for (const [rank, item] of items.entries()) {
      const place = held[rank];
      if (place === undefined || place.lengthSixteenths < item.lengthSixteenths) return undefined;
      replaced.set(place.mark, item);
    }
  }
  return replaced;
}

function bySlant(problem: CuttingProblem): ReadonlyMap<number, readonly CutItem[]> {
  const sorted = problem.items.toSorted((a, b) => b.lengthSixteenths - a.lengthSixteenths);
  return Map.groupBy(sorted, (item) => slantOf(problem, item));
}
