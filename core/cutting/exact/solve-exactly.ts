import type { Problem } from '../../problems/problem.ts';
import { ok, type Result } from '../../result.ts';
import type { CutPlan, CuttingProblem } from '../cut-plan-types.ts';
import { emptyPlan } from '../make-plan.ts';
import { quickParts } from '../plan-cuts.ts';
import { startIncumbent } from './incumbent.ts';
import type { LinearPrograms } from './linear-programs.ts';
import { searchCompositions } from './search-compositions.ts';
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
  const { parts, pool } = quick.value;
  const { model, proven } = parts;
  const incumbent = startIncumbent(problem, parts, control);
  incumbent.tell('quick');
  if (!incumbent.stopped() && strategy === 'patterns') {
    const settled = searchCompositions(model, proven, pool, programs, incumbent);
    if (!settled && !incumbent.stopped()) searchPatterns(model, proven, programs, incumbent);
  }
  return ok(incumbent.plan(false));
}
