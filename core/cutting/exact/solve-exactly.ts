import type { Problem } from '../../problems/problem.ts';
import { ok, type Result } from '../../result.ts';
import type { CutPlan, CuttingProblem } from '../cut-plan-types.ts';
import { emptyPlan, type PlanParts } from '../make-plan.ts';
import type { Column } from '../column.ts';
import type { ProvenBound } from '../lower-bound.ts';
import { quickParts } from '../plan-cuts.ts';
import { atLeisure, atOnce } from '../plan-loads.ts';
import { breakTies } from './break-ties.ts';
import { diveGrouped } from './dive-grouped.ts';
import { startCompositions, walkCompositions, type CompositionSearch } from './composition-walk.ts';
import { startIncumbent, type Incumbent } from './incumbent.ts';
import type { LinearPrograms } from './linear-programs.ts';
import { searchArcs } from './search-arcs.ts';
import { searchPatterns } from './search-patterns.ts';
import type { SolveControl, SolveStrategy } from './solve-control.ts';

/**
 * Plans the boards of one stock and proves that nothing is cheaper, as far as time allows.
 * @param problem - pieces, lengths with prices, saw and preferences. [1/16 in, cents]
 * @param programs - a solver of linear programs.
 * @param control - when to stop, and whom to tell.
 * @param strategy - formulation to search.
 */
export function solveExactly(
  problem: CuttingProblem,
  programs: LinearPrograms,
  control: SolveControl,
  strategy: SolveStrategy = 'patterns',
): Result<CutPlan, Problem> {
  if (problem.items.length === 0) return ok(emptyPlan(problem));
  const quick = quickParts(problem);
  if (!quick.ok) return quick;
  const { model } = quick.value.parts;
  const incumbent = startIncumbent(problem, quick.value.parts, control);
  incumbent.tell('quick');
  const { proven, pool } = thorough(problem, quick.value, incumbent);
  const compositions = startCompositions(model, proven, pool, programs, quick.value.parts.cuts);
  if (strategy === 'arc-flow' && !incumbent.stopped()) searchArcs(model, proven, programs, incumbent);
  if (!incumbent.stopped()) searchCompositions(compositions, incumbent);
  if (!incumbent.stopped()) diveGrouped(model, incumbent);
  if (!incumbent.stopped()) searchPatterns(model, proven, programs, incumbent);
  if (strategy === 'patterns' && !incumbent.stopped()) searchArcs(model, proven, programs, incumbent);
  const tiesProven =
    incumbent.boundCents() === incumbent.cents() && breakTies(compositions, incumbent, incumbent.interrupted);
  return ok(incumbent.plan(tiesProven, compositions.cuts.slice(1)));
}

/** Worths and patterns of a thorough relaxation: those of the quick plan, unless it drew sizes together. */
function thorough(
  problem: CuttingProblem,
  quick: { readonly parts: PlanParts; readonly pool: readonly Column[] },
  incumbent: Incumbent,
): { readonly proven: ProvenBound; readonly pool: readonly Column[] } {
  const { model, proven } = quick.parts;
  const asItStands = { proven, pool: quick.pool };
  if (model.sizes.length <= atOnce.mostSizes || incumbent.stopped()) return asItStands;
  const again = quickParts(problem, atLeisure, incumbent.interrupted);
  if (!again.ok) return asItStands;
  const { parts, pool } = again.value;
  incumbent.offer(parts.loads, 'dive');
  if (parts.proven.parts <= proven.parts) return asItStands;
  incumbent.strengthen(parts.proven);
  return { proven: parts.proven, pool };
}

/** Goes through numbers of boards until the cheapest that allow a plan are found. */
function searchCompositions(compositions: CompositionSearch, incumbent: Incumbent): void {
  const before = incumbent.parts().proof;
  walkCompositions(compositions, {
    least: incumbent.boundCents,
    most: incumbent.target,
    mostBoards: () => Number.POSITIVE_INFINITY,
    stopped: incumbent.stopped,
    found: (loads) => incumbent.offer(loads, 'search'),
    reached: (cents, proof) => incumbent.raise(cents, proof === 'exact-bound' ? before : proof, 'search'),
    met: incumbent.closed,
  });
}
