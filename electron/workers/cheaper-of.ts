import { centsOfUsd, withBound } from '../../core/cutting/with-bound.ts';
import type { Raced } from './solver-race.ts';

/**
 * The better of two answers to one problem, with the better of their bounds; where they cost the same, the first.
 * @param one - an answer.
 * @param other - what else is known, where anything is.
 */
export function cheaperOf(one: Raced, other: Raced | undefined): Raced {
  // Where a board fewer is worth money, bounds and costs of two searches are no measure of each other.
  if (other === undefined || one.plan.centsPerBoard !== 0) return one;
  const [cost, otherCost] = [centsOfUsd(one.plan.costUsd), centsOfUsd(other.plan.costUsd)];
  const [best, second] = otherCost < cost ? [other, one] : [one, other];
  const bound = Math.min(centsOfUsd(second.plan.boundUsd), centsOfUsd(best.plan.costUsd));
  const plan = withBound(best.plan, bound, 'solver-tree');
  return { plan, ended: plan.proof === 'none' ? one.ended : 'proven' };
}
