import type { CutPlan } from '../../../core/cutting/cut-plan-types.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { Decimal } from 'decimal.js';
import { formatUsd, type Usd, usd } from '../../../core/units/money.ts';
import { inchesOf } from '../../../core/units/sixteenths.ts';

/** What to buy, longest first, e.g. `6 of 16' 0", 2 of 10' 0"`. */
export function buyList(plan: CutPlan): string {
  const counts = new Map<number, number>();
  for (const board of plan.boards) {
    const length = inchesOf(board.lengthSixteenths);
    counts.set(length, (counts.get(length) ?? 0) + 1);
  }
  return [...counts]
    .sort(([a], [b]) => b - a)
    .map(([length, count]) => `${count} of ${formatLength(length)}`)
    .join(', ');
}

/** How good the plan is, in plain words: the bound, the yield, and what one length alone would have cost. */
export function planSentences(plan: CutPlan): readonly string[] {
  const bound =
    plan.status === 'optimal'
      ? `No purchase from these lengths costs less than ${formatUsd(plan.costUsd)}.`
      : `The best plan found. No purchase from these lengths can cost less than ${formatUsd(plan.boundUsd)}, so at most ${formatUsd(less(plan.costUsd, plan.boundUsd))} (${percent(plan.gap)}) is left to gain.`;
  const one =
    plan.oneLengthUsd === null || plan.oneLengthFt === null
      ? 'No single length holds every piece.'
      : `Buying ${plan.oneLengthFt} ft boards alone would cost ${formatUsd(plan.oneLengthUsd)}.`;
  return [bound, `${percent(plan.yield)} of the length bought goes into pieces.`, one];
}

/** A share as a percentage to one decimal. */
function percent(share: number): string {
  return `${(share * 100).toFixed(1)} %`;
}

function less(from: Usd, amount: Usd): Usd {
  return usd(new Decimal(from).minus(amount));
}
