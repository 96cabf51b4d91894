import { patternCount } from '../better-loads.ts';
import { partsOfCent, type Column } from '../column.ts';
import type { CuttingModel } from '../cutting-model.ts';
import { walkCompositions, type CompositionSearch } from './composition-walk.ts';
import { enumeratePatterns } from './enumerate-patterns.ts';
import type { Incumbent } from './incumbent.ts';
import type { LinearModel } from './linear-programs.ts';
import { atMost, exactly, makeProgram } from './make-program.ts';
import { entriesOfPattern, loadsOfSolution, mostOfPattern } from './pattern-program.ts';

/** Patterns that the fewest are chosen among, at most; more would take longer than fewer set-ups save. */
const mostPatterns = 200;

/** Cases that the choice of patterns may be parted into. */
const mostNodes = 20;

/**
 * Among plans that cost as little, looks for one with fewer boards, and among those for one with fewer patterns.
 * @param search - what is known of numbers of boards.
 * @param incumbent - a plan that is proven the cheapest; made better.
 * @param stopped - whether to leave it at that.
 * @returns whether no plan of this cost has fewer boards, nor of those fewer patterns.
 */
export function breakTies(search: CompositionSearch, incumbent: Incumbent, stopped: () => boolean): boolean {
  const cents = incumbent.cents();
  const ended = walkCompositions(search, {
    least: () => cents,
    most: () => cents,
    mostBoards: () => incumbent.loads().length - 1,
    stopped,
    found: (loads) => incumbent.offer(loads, 'ties'),
    reached: () => {},
    met: () => false,
  });
  return ended === 'end' && fewestPatterns(search, incumbent, stopped);
}

/** Whether the fewest patterns were found, for as many boards and as much money. */
function fewestPatterns(search: CompositionSearch, incumbent: Incumbent, stopped: () => boolean): boolean {
  const { model, bound, programs } = search;
  const now = patternCount(incumbent.loads());
  const needed = fewestPossible(model);
  if (now <= needed) return true;
  const { columns, complete } = enumeratePatterns(model, bound, {
    slack: incumbent.cents() * partsOfCent - bound.parts,
    mostColumns: mostPatterns,
    mostSteps: 2_000_000,
    stopped,
    which: 'any',
  });
  if (!complete || stopped()) return false;
  const answer = programs.solveMip(fewestProgram(model, columns, incumbent), {
    absoluteGap: 0.999,
    cutoff: now - 0.5,
    rewrite: true,
    mostNodes,
    stopped,
  });
  if (answer.objective < now) incumbent.offer(loadsOfSolution(model, columns, answer.columnValues), 'ties');
  return answer.status !== 'stopped';
}

/** No pattern cuts more kinds than its board has room for; so many patterns there must be at least. */
function fewestPossible(model: CuttingModel): number {
  const longest = model.stocks.at(-1)?.room ?? 0;
  let room = longest;
  const shortestFirst = model.sizes.map(({ span }) => span).toSorted((a, b) => a - b);
  const together = shortestFirst.filter((span) => (room -= span) >= 0).length;
  return Math.ceil(model.sizes.length / Math.max(1, together));
}

/**
 * The choice of the fewest patterns: columns are boards of each pattern, then whether it is used; rows are the pieces of
 * each size, exactly; each pattern's boards, none where it is not used; scarce boards; the cost and the boards in all, as
 * they are.
 */
function fewestProgram(model: CuttingModel, patterns: readonly Column[], incumbent: Incumbent): LinearModel {
  const links = model.sizes.length;
  const supplies = links + patterns.length;
  const sums = supplies + model.stocks.length;
  const most = patterns.map((pattern) => mostOfPattern(model, pattern));
  return makeProgram(
    [
      ...model.sizes.map(({ demand }) => exactly(demand)),
      ...patterns.map(() => atMost(0)),
      ...model.stocks.map(({ available }) => atMost(available)),
      atMost(incumbent.cents()),
      atMost(incumbent.loads().length),
    ],
    [
      ...patterns.map((pattern, index) => ({
        cost: 0,
        upper: most[index] ?? 0,
        entries: [
          ...entriesOfPattern(pattern),
          [links + index, 1] as const,
          [supplies + pattern.stock, 1] as const,
          [sums, pattern.cents] as const,
          [sums + 1, 1] as const,
        ],
      })),
      ...patterns.map((_, index) => ({
        cost: 1,
        upper: 1,
        entries: [[links + index, -(most[index] ?? 0)] as const],
      })),
    ],
  );
}
