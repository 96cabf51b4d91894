import { Decimal } from 'decimal.js';
import type { ProofKind } from '../cutting/cut-plan-types.ts';
import { usd, type Usd } from '../units/money.ts';
import type { JobInput } from './job-file.ts';

/** What the boards of a job come to at one overhang. */
export type PlaceCost = {
  readonly overhangIn: number;
  /** The cheapest boards known; null where there are none. */
  readonly boardsUsd: Usd | null;
  /** No boards cost less than this. */
  readonly boundUsd: Usd | null;
  /** What shows that cost and bound are one; `none` where they are not. */
  readonly proof: ProofKind;
  /** Some piece is longer than any board there is, or the job cannot be computed; else boards are not planned yet. */
  readonly hasNoBoard: boolean;
};

/** A stretch of overhangs at which the boards cost the same. Both ends belong to it; the bound is that of its near end. */
export type CostStep = Omit<PlaceCost, 'overhangIn'> & {
  readonly fromOverhangIn: number;
  readonly toOverhangIn: number;
};

/** An overhang at which the boards cost less, and how much. */
export type CheaperStep = { readonly overhangIn: number; readonly savesUsd: Usd };

/** The boards' cost over the overhang. */
export type CostStaircase = {
  /** From the least overhang to the most. */
  readonly steps: readonly CostStep[];
  readonly todayIn: number;
  /** The nearest steps below today's overhang that cost less, nearest first. */
  readonly cheaper: readonly CheaperStep[];
  /** The furthest overhang, without a gap from today's, that costs no more than today's. [in] */
  readonly asFarAsIn: number;
};

/** Overhangs are asked about in sixteenths: none finer can be marked off. */
const perInch = 16;

/** Cheaper steps that are told, at most. */
const mostCheaper = 3;

/**
 * Every overhang that can be marked off in a range, and today's, in an order that shows the whole early: today's first,
 * then its ends, then ever finer between. Lengths change at nothing finer, so these are all their break-points.
 * Worked: 12 to 12-1/4, today 12-1/8 -> 12-1/8, 12, 12-1/4, then 12-1/16 and 12-3/16.
 * @param range - overhangs as the design gives them. [in]
 */
export function overhangPlaces(range: {
  readonly fromIn: number;
  readonly toIn: number;
  readonly todayIn: number;
}): readonly number[] {
  const first = Math.ceil(range.fromIn * perInch);
  const last = Math.max(first, Math.floor(range.toIn * perInch));
  const ordered = new Set([range.todayIn, first / perInch, last / perInch]);
  for (let step = perInch; step >= 1; step /= 2)
    for (let place = Math.ceil(first / step) * step; place <= last; place += step)
      ordered.add(place / perInch);
  return [...ordered];
}

/**
 * The boards' cost as a function of an eave's overhang: a staircase, since blanks fall out of lengths that can be bought.
 * Overhangs side by side at which the boards cost the same are one step. Of those whose cost is not the same neither is
 * wrong: each is the cheapest purchase known there, with the bound beside it.
 * Worked: 40 $ at 15-15/16 and 16 in., 55 $ at 16-1/16, today's -> two steps; 16 in. saves 15 $.
 * @param costs - what boards come to at each overhang, from the least up. [in]
 * @param todayIn - the overhang as it is designed; one of them. [in]
 */
export function costStaircase(costs: readonly PlaceCost[], todayIn: number): CostStaircase {
  const steps: CostStep[] = [];
  for (const { overhangIn, ...cost } of costs) {
    const last = steps.at(-1);
    // A proof at the near end holds for the whole step; one further on says nothing of what lies before it.
    if (last?.boardsUsd === cost.boardsUsd && last.hasNoBoard === cost.hasNoBoard)
      steps[steps.length - 1] = { ...last, toOverhangIn: overhangIn };
    else steps.push({ ...cost, fromOverhangIn: overhangIn, toOverhangIn: overhangIn });
  }
  return { steps, todayIn, ...besideToday(steps, todayIn) };
}

/** The same staircase seen from another overhang, as once that was taken. [in] */
export function seenFrom(staircase: CostStaircase, todayIn: number): CostStaircase {
  return staircase.todayIn === todayIn
    ? staircase
    : { steps: staircase.steps, todayIn, ...besideToday(staircase.steps, todayIn) };
}

/** The design of a job with another overhang at one eave. [in] */
export function withOverhang(input: JobInput, eaveId: string, overhangIn: number): JobInput {
  return {
    ...input,
    design: {
      ...input.design,
      eaves: input.design.eaves.map((eave) => (eave.eaveId === eaveId ? { ...eave, overhangIn } : eave)),
    },
  };
}

/** Whether an overhang lies on a step. [in] */
export function isOnStep({ fromOverhangIn, toOverhangIn }: CostStep, overhangIn: number): boolean {
  return overhangIn >= fromOverhangIn && overhangIn <= toOverhangIn;
}

function besideToday(
  steps: readonly CostStep[],
  todayIn: number,
): Pick<CostStaircase, 'cheaper' | 'asFarAsIn'> {
  const here = steps.find((step) => isOnStep(step, todayIn));
  const cost = here?.boardsUsd ?? null;
  const cheaper: CheaperStep[] = [];
  let least = cost === null ? undefined : new Decimal(cost);
  for (const { boardsUsd, toOverhangIn } of steps.toReversed()) {
    if (cost === null || least === undefined || toOverhangIn >= todayIn || boardsUsd === null) continue;
    if (!least.greaterThan(boardsUsd) || cheaper.length === mostCheaper) continue;
    least = new Decimal(boardsUsd);
    cheaper.push({ overhangIn: toOverhangIn, savesUsd: usd(new Decimal(cost).minus(boardsUsd)) });
  }
  return { cheaper, asFarAsIn: here?.toOverhangIn ?? todayIn };
}
