import { partsOfCent, reducedParts, type Column } from '../column.ts';
import { cutOfWorths } from '../composition-cut.ts';
import type { CuttingModel } from '../cutting-model.ts';
import { dive } from '../dive.ts';
import type { ProvenBound } from '../lower-bound.ts';
import { cheapestComposition, type Composition } from './cheapest-composition.ts';
import { cutAgainst } from './cut-against.ts';
import { enumeratePatterns, type Enumerated } from './enumerate-patterns.ts';
import type { Incumbent } from './incumbent.ts';
import type { LinearPrograms } from './linear-programs.ts';
import { loadsOfSolution, patternProgram } from './pattern-program.ts';

/** Steps of looking for one composition, at most. */
const mostSteps = 2_000_000;

/** Compositions asked about, at most. */
const mostCompositions = 2000;

/** Patterns that one composition is searched with, at most. */
const mostPatterns = 20_000;

/**
 * Goes through the numbers of boards of each length from the cheapest up. Nearly all are ruled out because their boards do
 * not even hold the pieces in fractions of patterns; for the few others a plan is looked for. The first that has one is the
 * cheapest, since all cheaper ones are ruled out.
 * @param model - the problem.
 * @param bound - worths in whole parts of a cent, by which patterns are listed.
 * @param pool - patterns known already.
 * @param programs - a solver of linear programs.
 * @param incumbent - the best plan so far; made better, and its bound with it.
 * @returns whether it came to the end, so that the incumbent is the cheapest.
 */
export function searchCompositions(
  model: CuttingModel,
  bound: ProvenBound,
  pool: readonly Column[],
  programs: LinearPrograms,
  incumbent: Incumbent,
): boolean {
  const free: Column[] = pool.map((column) => ({ ...column, cents: 0 }));
  const cuts = [
    cutOfWorths(
      model,
      bound.worth.map((parts) => parts / partsOfCent),
    ),
    ...incumbent.parts().cuts,
  ];
  const excluded: (readonly number[])[] = [];
  const patternsWithin = patternList(model, bound, incumbent);
  let proof: 'exact-bound' | 'solver-tree' = incumbent.parts().proof;
  for (let asked = 0; asked < mostCompositions && !incumbent.stopped(); asked += 1) {
    const cheapest = cheapestComposition(
      model,
      { cuts, excluded },
      incumbent.boundCents(),
      incumbent.target(),
      mostSteps,
    );
    if (cheapest === 'gave-up') return false;
    if (cheapest === 'none') {
      incumbent.raise(incumbent.target() + 1, proof, 'search');
      return true;
    }
    incumbent.raise(cheapest.cents, proof, 'search');
    const cut = cutAgainst(model, cheapest.boards, free, incumbent.stopped);
    if (cut !== undefined) {
      cuts.push(cut);
      incumbent.keepCut(cut);
      continue;
    }
    const bought = withBoards(model, cheapest);
    incumbent.offer(
      dive(bought, { cells: 30_000_000, stopped: incumbent.stopped }, [...usable(pool, bought)]).loads,
      'search',
    );
    if (incumbent.closed()) return true;
    const target = model.limited ? incumbent.target() : cheapest.cents;
    const patterns = patternsWithin(target);
    if (patterns === undefined) return false;
    if (!searchOne(bought, usable(patterns, bought), target, programs, incumbent)) return false;
    if (incumbent.closed()) return true;
    excluded.push(cheapest.boards);
    proof = 'solver-tree';
  }
  return false;
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

/** Patterns of stocks that a composition has boards of. */
function usable(patterns: readonly Column[], model: CuttingModel): readonly Column[] {
  return patterns.filter(({ stock }) => (model.stocks[stock]?.available ?? 0) > 0);
}

/** Searches for a plan with the boards of one composition; false where it was stopped. */
function searchOne(
  model: CuttingModel,
  patterns: readonly Column[],
  target: number,
  programs: LinearPrograms,
  incumbent: Incumbent,
): boolean {
  const answer = programs.solveMip(patternProgram(model, patterns), {
    absoluteGap: 0.999,
    cutoff: target + 0.5,
    rewrite: true,
    stopped: incumbent.stopped,
    onSolution: (values) => incumbent.offer(loadsOfSolution(model, patterns, values), 'search'),
  });
  if (answer.objective < Number.POSITIVE_INFINITY)
    incumbent.offer(loadsOfSolution(model, patterns, answer.columnValues), 'search');
  return answer.status !== 'stopped';
}

/** Lists patterns once for the dearest plan asked about, and gives those that a plan of some cost can use. */
function patternList(
  model: CuttingModel,
  bound: ProvenBound,
  incumbent: Incumbent,
): (cents: number) => readonly Column[] | undefined {
  let listed: (Enumerated & { readonly slack: number }) | undefined;
  return (cents) => {
    const slack = cents * partsOfCent - bound.parts;
    if (listed === undefined || listed.slack < slack) {
      listed = {
        ...enumeratePatterns(model, bound, {
          slack,
          mostColumns: mostPatterns,
          mostSteps: 20_000_000,
          stopped: incumbent.stopped,
        }),
        slack,
      };
    }
    if (!listed.complete) return undefined;
    return listed.columns.filter((column) => reducedParts(column, bound) <= slack);
  };
}
