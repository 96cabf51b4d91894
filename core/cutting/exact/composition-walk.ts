import { partsOfCent, reducedParts, type Column } from '../column.ts';
import { cutOfWorths, type CompositionCut } from '../composition-cut.ts';
import type { CuttingModel, Load } from '../cutting-model.ts';
import { dive } from '../dive.ts';
import type { ProvenBound } from '../lower-bound.ts';
import { cheapestComposition, type Composition } from './cheapest-composition.ts';
import { cutAgainst } from './cut-against.ts';
import { enumeratePatterns, type Enumerated } from './enumerate-patterns.ts';
import type { LinearPrograms } from './linear-programs.ts';
import { loadsOfSolution, patternProgram } from './pattern-program.ts';

/** Steps of looking for one composition, at most. */
const mostSteps = 2_000_000;

/** Compositions asked about, at most. */
const mostCompositions = 2000;

/** Patterns that one composition is searched with, at most. */
const mostPatterns = 20_000;

/** Patterns from which on other compositions are looked at before one is searched with them. */
const manyPatterns = 1000;

/** Compositions that are looked at before such a search. */
const mostAhead = 24;

/** What is known of the numbers of boards that can hold all pieces. */
export type CompositionSearch = {
  readonly model: CuttingModel;
  readonly bound: ProvenBound;
  readonly pool: readonly Column[];
  readonly programs: LinearPrograms;
  readonly cuts: readonly CompositionCut[];
  readonly addCut: (cut: CompositionCut) => void;
  /** Patterns that a plan of some cost can use; undefined where there are too many. */
  readonly patternsWithin: (cents: number, stopped: () => boolean) => readonly Column[] | undefined;
};

/** What is looked for, and who hears of it; asked anew at every step. */
export type CompositionGoal = {
  /** No composition below this is of use, or possible. [cents] */
  readonly least: () => number;
  readonly most: () => number;
  readonly mostBoards: () => number;
  readonly stopped: () => boolean;
  /** Hears of loads that a composition allows. */
  readonly found: (loads: readonly Load[] | undefined) => void;
  /** Hears that no composition is cheaper, and whether some were ruled out in floating point. */
  readonly reached: (cents: number, proof: 'exact-bound' | 'solver-tree') => void;
  readonly met: () => boolean;
};

/** Starts with the worths that bound the cost, and other cuts known. */
export function startCompositions(
  model: CuttingModel,
  bound: ProvenBound,
  pool: readonly Column[],
  programs: LinearPrograms,
  known: readonly CompositionCut[],
): CompositionSearch {
  const cuts = [
    cutOfWorths(
      model,
      bound.worth.map((parts) => parts / partsOfCent),
    ),
    ...known,
  ];
  return {
    model,
    bound,
    pool,
    programs,
    cuts,
    addCut: (cut) => cuts.push(cut),
    patternsWithin: patternList(model, bound),
  };
}

/**
 * Goes through the numbers of boards of each length from the cheapest up. Nearly all are ruled out because their boards do
 * not even hold the pieces in fractions of patterns; for the few others a plan is looked for. The first that has one is the
 * cheapest, since all cheaper ones are ruled out.
 * @returns `end` where nothing within the goal is left; `met` where the goal was met; `gave-up` where it was stopped, or
 * there was too much to go through.
 */
export function walkCompositions(
  search: CompositionSearch,
  goal: CompositionGoal,
): 'end' | 'met' | 'gave-up' {
  const { model, pool, cuts } = search;
  const free: Column[] = pool.map((column) => ({ ...column, cents: 0 }));
  const excluded: (readonly number[])[] = [];
  let proof: 'exact-bound' | 'solver-tree' = 'exact-bound';
  let hasLookedAhead = false;
  for (let asked = 0; asked < mostCompositions && !goal.stopped(); asked += 1) {
    const cheapest = cheapestComposition(
      model,
      { cuts, excluded, least: goal.least(), most: goal.most(), mostBoards: goal.mostBoards() },
      mostSteps,
    );
    if (cheapest === 'gave-up') return 'gave-up';
    if (cheapest === 'none') {
      goal.reached(goal.most() + 1, proof);
      return 'end';
    }
    goal.reached(cheapest.cents, proof);
    const cut = cutAgainst(model, cheapest.boards, free, goal.stopped);
    if (cut !== undefined) {
      search.addCut(cut);
      continue;
    }
    diveInto(search, cheapest, goal);
    if (goal.met()) return 'met';
    const patterns = patternsFor(search, cheapest, goal);
    if (!hasLookedAhead && (patterns === undefined || patterns.length > manyPatterns)) {
      hasLookedAhead = true;
      lookAhead(search, cheapest, [...excluded, cheapest.boards], free, goal);
      if (goal.met()) return 'met';
    }
    const settled = patterns !== undefined && tryComposition(search, cheapest, patterns, goal);
    if (goal.met()) return 'met';
    if (!settled) return 'gave-up';
    excluded.push(cheapest.boards);
    proof = 'solver-tree';
  }
  return 'gave-up';
}

/**
 * Looks for plans with numbers of boards beyond one whose search would be long: what is found here is no proof, but the
 * cheaper the plan, the less is left to search.
 */
function lookAhead(
  search: CompositionSearch,
  from: Composition,
  before: readonly (readonly number[])[],
  free: Column[],
  goal: CompositionGoal,
): void {
  const { model, cuts } = search;
  const excluded = [...before];
  for (let asked = 0; asked < mostAhead && !goal.stopped(); asked += 1) {
    const rules = { cuts, excluded, least: from.cents, most: goal.most(), mostBoards: goal.mostBoards() };
    const next = cheapestComposition(model, rules, mostSteps);
    if (next === 'gave-up' || next === 'none') return;
    const cut = cutAgainst(model, next.boards, free, goal.stopped);
    if (cut === undefined) {
      diveInto(search, next, goal);
      excluded.push(next.boards);
    } else search.addCut(cut);
  }
}

/** Dives for a plan with just so many boards to buy, and any scarce ones. */
function diveInto({ model, pool }: CompositionSearch, composition: Composition, goal: CompositionGoal): void {
  const bought = withBoards(model, composition);
  const usable = pool.filter(({ stock }) => (bought.stocks[stock]?.available ?? 0) > 0);
  goal.found(dive(bought, { cells: 30_000_000, stopped: goal.stopped }, usable).loads);
}

/** The patterns that a plan with just so many boards to buy can use; undefined where there are too many. */
function patternsFor(
  { model, patternsWithin }: CompositionSearch,
  composition: Composition,
  goal: CompositionGoal,
): readonly Column[] | undefined {
  const bought = withBoards(model, composition);
  return patternsWithin(model.limited ? goal.most() : composition.cents, goal.stopped)?.filter(
    ({ stock }) => (bought.stocks[stock]?.available ?? 0) > 0,
  );
}

/** Looks for the best plan with just so many boards to buy, and any scarce ones; false where it could not be settled. */
function tryComposition(
  { model, programs }: CompositionSearch,
  composition: Composition,
  patterns: readonly Column[],
  goal: CompositionGoal,
): boolean {
  const bought = withBoards(model, composition);
  const most = model.limited ? goal.most() : composition.cents;
  const answer = programs.solveMip(patternProgram(bought, patterns, goal.mostBoards()), {
    absoluteGap: 0.999,
    cutoff: most + 0.5,
    rewrite: true,
    stopped: goal.stopped,
    onSolution: (values) => goal.found(loadsOfSolution(bought, patterns, values)),
  });
  if (answer.objective < Number.POSITIVE_INFINITY)
    goal.found(loadsOfSolution(bought, patterns, answer.columnValues));
  return answer.status !== 'stopped';
}

/** The model with just so many boards to buy; scarce boards stay as they are. */
function withBoards(model: CuttingModel, { boards }: Composition): CuttingModel {
  return {
    ...model,
    stocks: model.stocks.map((stock, index) =>
      stock.available === Number.POSITIVE_INFINITY ? { ...stock, available: boards[index] ?? 0 } : stock,
    ),
    boughtForNeed: model.boughtForNeed.map(() => -1),
    limited: true,
  };
}

/** Lists patterns once for the dearest plan asked about, and gives those that a plan of some cost can use. */
function patternList(model: CuttingModel, bound: ProvenBound): CompositionSearch['patternsWithin'] {
  let listed: (Enumerated & { readonly slack: number }) | undefined;
  return (cents, stopped) => {
    const slack = cents * partsOfCent - bound.parts;
    if (listed === undefined || listed.slack < slack) {
      listed = {
        ...enumeratePatterns(model, bound, {
          slack,
          mostColumns: mostPatterns,
          mostSteps: 20_000_000,
          stopped,
        }),
        slack,
      };
    }
    if (!listed.complete) return undefined;
    return listed.columns.filter((column) => reducedParts(column, bound) <= slack);
  };
}
