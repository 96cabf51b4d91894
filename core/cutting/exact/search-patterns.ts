import { partsOfCent, reducedParts, type Column } from '../column.ts';
import type { CuttingModel } from '../cutting-model.ts';
import type { ProvenBound } from '../lower-bound.ts';
import { enumeratePatterns } from './enumerate-patterns.ts';
import type { Incumbent } from './incumbent.ts';
import type { LinearPrograms } from './linear-programs.ts';
import { loadsOfSolution, patternProgram } from './pattern-program.ts';

/** Patterns that the first, small search is given; each further one is given so many times more. */
const firstPatterns = 400;
const growth = 4;

/** Patterns beyond which no search is tried. */
const mostPatterns = 40_000;

/** Steps of looking for patterns; some seconds. */
const mostSteps = 40_000_000;

/**
 * Searches for a cheaper plan among the patterns that one can use: first among those nearest to being worth their price,
 * which mostly finds the cheapest plan and so makes the list shorter, then among more, and at last among all, which shows
 * that nothing is cheaper.
 * @param model - the problem.
 * @param bound - worths in whole parts of a cent, by which patterns are listed.
 * @param programs - a solver of linear programs.
 * @param incumbent - the best plan so far; made better, and closed where that can be shown.
 */
export function searchPatterns(
  model: CuttingModel,
  bound: ProvenBound,
  programs: LinearPrograms,
  incumbent: Incumbent,
): void {
  const slackOf = (): number => incumbent.target() * partsOfCent - bound.parts;
  const listed = enumeratePatterns(model, bound, {
    slack: slackOf(),
    mostColumns: mostPatterns,
    mostSteps,
    stopped: incumbent.stopped,
  });
  let patterns = listed.columns
    .map((column) => ({ column, reduced: reducedParts(column, bound) }))
    .sort((a, b) => a.reduced - b.reduced || compareColumns(a.column, b.column));
  for (let count = firstPatterns; !incumbent.stopped(); count *= growth) {
    const slack = slackOf();
    if (slack < 0) return incumbent.raise(incumbent.cents(), 'solver-tree', 'search');
    patterns = patterns.filter(({ reduced }) => reduced <= slack);
    const all = listed.complete && patterns.length <= count * 2;
    const some = (all ? patterns : patterns.slice(0, count)).map(({ column }) => column);
    const searched = searchAmong(model, some, programs, incumbent, all);
    if (all || !searched || (!listed.complete && some.length === patterns.length)) return;
  }
}

/** Searches among some patterns; whether it came to an end by itself. */
function searchAmong(
  model: CuttingModel,
  patterns: readonly Column[],
  programs: LinearPrograms,
  incumbent: Incumbent,
  all: boolean,
): boolean {
  const target = incumbent.target();
  const answer = programs.solveMip(patternProgram(model, patterns), {
    absoluteGap: 0.999,
    cutoff: target + 0.5,
    rewrite: false,
    stopped: incumbent.stopped,
    onProgress(_, treeBound) {
      if (all) incumbent.raise(Math.min(target + 1, Math.ceil(treeBound - 1e-5)), 'solver-tree', 'search');
    },
    onSolution: (values) => incumbent.offer(loadsOfSolution(model, patterns, values), 'search'),
  });
  if (answer.objective < Number.POSITIVE_INFINITY)
    incumbent.offer(loadsOfSolution(model, patterns, answer.columnValues), 'search');
  if (answer.status === 'stopped') return false;
  // Nothing is left below the target, nor below what was found.
  if (all) incumbent.raise(Math.min(target + 1, incumbent.cents()), 'solver-tree', 'search');
  return true;
}

function compareColumns(one: Column, other: Column): number {
  if (one.stock !== other.stock) return one.stock - other.stock;
  const [a, b] = [one, other].map(({ sizes, counts }) => `${sizes.join()}:${counts.join()}`);
  return a === b ? 0 : (a ?? '') < (b ?? '') ? -1 : 1;
}
