import { Decimal } from 'decimal.js';
import { usd, type Usd } from '../units/money.ts';
import type { CutPlan, ProofKind } from './cut-plan-types.ts';

/** Whole cents of an amount rounded to cents. [cents] */
export function centsOfUsd(amount: Usd): number {
  return new Decimal(amount).times(100).toNumber();
}

/** An amount from whole cents. [cents] */
export function usdOfCents(cents: number): Usd {
  return usd(`${cents}e-2`);
}

/**
 * A plan with a better bound than its own, as another solve may find one; gap, status and proof follow.
 * @param boundCents - no plan is below this; one that is not better than the plan's own changes nothing. [cents]
 * @param proof - what shows it, where it meets the cost.
 */
export function withBound(plan: CutPlan, boundCents: number, proof: Exclude<ProofKind, 'none'>): CutPlan {
  const cost = centsOfUsd(plan.costUsd);
  if (boundCents <= centsOfUsd(plan.boundUsd)) return plan;
  const bound = Math.min(boundCents, cost);
  return {
    ...plan,
    boundUsd: usdOfCents(bound),
    ...gapOf(cost, bound),
    proof: bound === cost ? proof : 'none',
  };
}

/** Gap and status of a cost over a bound. [cents] */
export function gapOf(cost: number, bound: number): Pick<CutPlan, 'gap' | 'status'> {
  return {
    gap: bound === 0 ? (cost === 0 ? 0 : 1) : (cost - bound) / bound,
    status: bound === cost ? 'optimal' : 'best-found',
  };
}
