import { usd, type Usd } from '../units/money.ts';
import { Decimal } from 'decimal.js';
import { slantOf } from './board-use.ts';
import type { CutPlan, CuttingProblem } from './cut-plan-types.ts';

/** What boards of one length would cost by a rule of thumb: so much more than the net length. */
export type ThumbPurchase = {
  readonly boardFt: number;
  readonly boards: number;
  readonly costUsd: Usd;
  /** Boards that are lacking once the pieces are cut one after another, longest first. [-] */
  readonly tooFew: number;
};

/**
 * What the rule of thumb would have him buy: the net length of the pieces and some per cent more, in boards of the one
 * length on which a purchase of one length costs least.
 * @param problem - pieces, lengths and prices. [1/16 in, cents]
 * @param plan - the plan made for it, which knows that length and what it costs.
 * @param wastePercent - what is added (common practice, no source: 10). [%]
 * @returns e.g. 72 ft net, 10 % more, in 16 ft boards: 79.2 / 16 -> 5 boards; null where no length holds every piece.
 */
export function thumbPurchase(
  problem: CuttingProblem,
  plan: Pick<CutPlan, 'oneLengthUsd' | 'oneLengthFt'>,
  wastePercent: number,
): ThumbPurchase | null {
  const { oneLengthUsd, oneLengthFt } = plan;
  if (oneLengthUsd === null || oneLengthFt === null) return null;
  const lengthSixteenths = oneLengthFt * 192;
  const cents = problem.lengths
    .filter((one) => one.source !== 'on-hand' && one.lengthSixteenths === lengthSixteenths)
    .reduce((least, { priceCents }) => Math.min(least, priceCents), Number.POSITIVE_INFINITY);
  if (!Number.isFinite(cents) || cents === 0) return null;
  const net = problem.items.reduce((sum, item) => sum + item.lengthSixteenths - slantOf(problem, item), 0);
  const boards = new Decimal(net)
    .times(new Decimal(wastePercent).plus(100))
    .div(100)
    .div(lengthSixteenths)
    .ceil()
    .toNumber();
  const needed = new Decimal(oneLengthUsd).times(100).div(cents).round().toNumber();
  return {
    boardFt: oneLengthFt,
    boards,
    costUsd: usd(new Decimal(cents).times(boards).div(100)),
    tooFew: Math.max(0, needed - boards),
  };
}
