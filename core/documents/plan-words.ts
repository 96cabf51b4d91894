import { Decimal } from 'decimal.js';
import type { CutPlan } from '../cutting/cut-plan-types.ts';
import type { ThumbPurchase } from '../cutting/thumb-rule.ts';
import { formatLength } from '../units/format-length.ts';
import { formatUsd, usd } from '../units/money.ts';
import { inchesOf } from '../units/sixteenths.ts';

/** What to buy, longest first, e.g. `6 of 16' 0", 2 of 10' 0"`; blank where nothing is bought. */
export function buyList(plan: CutPlan): string {
  return countsOf(plan, false);
}

/** What is taken of the boards on hand, longest first; blank where none is. */
export function onHandList(plan: CutPlan): string {
  return countsOf(plan, true);
}

function countsOf(plan: CutPlan, onHand: boolean): string {
  const counts = new Map<number, number>();
  for (const board of plan.boards) {
    if (board.onHand !== onHand) continue;
    const length = inchesOf(board.lengthSixteenths);
    counts.set(length, (counts.get(length) ?? 0) + 1);
  }
  return [...counts]
    .sort(([a], [b]) => b - a)
    .map(([length, count]) => `${count} of ${formatLength(length)}`)
    .join(', ');
}

/** What the boards cost, and what is known of the least that they could: the proof, or how much is left to gain. */
export function proofSentence(plan: CutPlan): string {
  const count = `${plan.boards.length} ${plan.boards.length === 1 ? 'board' : 'boards'}`;
  const cost = formatUsd(plan.costUsd);
  const wishes = wishWords([plan]);
  if (plan.proof !== 'none') return `${count} for ${cost}; no purchase from this list costs less${wishes}.`;
  const left = formatUsd(usd(new Decimal(plan.costUsd).minus(plan.boundUsd)));
  return `${count} for ${cost}, the best found. No purchase from this list can cost less than ${formatUsd(plan.boundUsd)}${wishes}, so at most ${left} (${percentText(plan.gap)}) is left to gain.`;
}

/** What was asked of plans besides the least money, to stand behind what is said of their cost; blank for nothing. */
export function wishWords(plans: readonly Pick<CutPlan, 'centsPerBoard'>[]): string {
  const centsPerBoard = Math.max(0, ...plans.map((plan) => plan.centsPerBoard));
  return centsPerBoard === 0
    ? ''
    : `, counting ${formatUsd(usd(new Decimal(centsPerBoard).div(100)))} for each board to carry`;
}

/** How it is known that no purchase costs less, for whoever asks. */
export function howProven(plan: CutPlan): string {
  switch (plan.proof) {
    case 'exact-bound':
      return 'Shown in whole numbers. Each length of piece is given a worth, such that no board on the list can hold pieces worth more than the board costs. All pieces together are then worth what these boards cost, to the cent, so boards that hold them all cannot cost less. Anyone can reckon the worths again.';
    case 'solver-tree':
      return `Shown by a search. A bound in whole numbers leaves a little room below this cost; every way to fill boards that could use it was searched and none is cheaper. The search reckons in decimal fractions; the plan itself was checked in whole sixteenths and cents.`;
    case 'none':
      return 'Not shown. The time was up before every cheaper purchase was ruled out; the bound holds all the same.';
    default:
      return plan.proof satisfies never;
  }
}

/** How much of the length goes into pieces, and what simpler ways to buy would have cost. */
export function comparisonSentences(
  plan: CutPlan,
  thumb: ThumbPurchase | null,
  wastePercent: number,
): readonly string[] {
  const one =
    plan.oneLengthUsd === null || plan.oneLengthFt === null
      ? 'No single length that can be bought holds every piece.'
      : `In ${plan.oneLengthFt} ft boards alone, cut one after another, longest piece first, it would cost ${formatUsd(plan.oneLengthUsd)}.`;
  return [
    `${percentText(plan.yield)} of the length goes into pieces.`,
    one,
    ...(thumb === null ? [] : [thumbSentence(thumb, wastePercent)]),
  ];
}

function thumbSentence({ boards, boardFt, costUsd, tooFew }: ThumbPurchase, wastePercent: number): string {
  const bought = `By the rule of thumb, ${wastePercent} % over the net length, one would buy ${boards} of ${boardFt} ft for ${formatUsd(costUsd)}`;
  return tooFew === 0 ? `${bought}.` : `${bought}, and find ${tooFew} too few at the saw.`;
}

/** A share as a percentage to one decimal. */
function percentText(share: number): string {
  return `${(share * 100).toFixed(1)} %`;
}

/** Pinned boards that cannot be cut as pinned, each with the reason and the way out. */
export function pinSentences(plan: CutPlan): readonly string[] {
  return plan.unmetPins.map(({ pin, why }) => {
    const board = `The board pinned for ${pin.marks.join(', ')}`;
    switch (why) {
      case 'length-gone':
        return `${board} is not cut so: its length is not to be had. Release the pin, or allow the length again.`;
      case 'piece-gone':
        return `${board} is not cut so: a piece of it is gone or pinned twice. Release the pin.`;
      case 'does-not-fit':
        return `${board} is not cut so: its pieces no longer fit in it. Release the pin.`;
      default:
        return why satisfies never;
    }
  });
}
