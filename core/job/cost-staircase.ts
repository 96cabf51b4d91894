import { Decimal } from 'decimal.js';
import type { ProofKind } from '../cutting/cut-plan-types.ts';
import { usd, type Usd } from '../units/money.ts';
import type { JobInput } from './job-file.ts';
import type { JobResult } from './job-result.ts';

/** What a job comes to at one overhang. */
export type OverhangCost = {
  /** Of all boards of the job; null where some piece has no board or the job cannot be computed. */
  readonly boardsUsd: Usd | null;
  readonly totalUsd: Usd | null;
  /** The weakest of the plans' proofs. */
  readonly proof: ProofKind;
};

/** A stretch of overhangs at which the boards cost the same. Both ends belong to it; total and proof are of its far end. */
export type CostStep = OverhangCost & { readonly fromOverhangIn: number; readonly toOverhangIn: number };

/** An overhang at which the boards cost less, and how much. */
export type CheaperStep = {
  readonly overhangIn: number;
  readonly savesUsd: Usd;
  readonly totalUsd: Usd | null;
};

/** The boards' cost over the overhang. */
export type CostStaircase = {
  /** From the least overhang to the most, without gaps. */
  readonly steps: readonly CostStep[];
  /** The nearest steps below today's overhang that cost less, nearest first. */
  readonly cheaper: readonly CheaperStep[];
  /** The furthest overhang that costs no more than today's. [in] */
  readonly asFarAsIn: number;
};

/** Overhangs are asked about in sixteenths: none finer can be marked off. */
const perInch = 16;

/** Cheaper steps that are told, at most. */
const mostCheaper = 3;

/**
 * The boards' cost as a function of an eave's overhang: a staircase, since blanks fall out of lengths that can be bought.
 * Longer pieces never cost less, so where the cost is the same at both ends of a stretch it is the same between, and only
 * stretches whose ends differ are parted (in the middle, down to a sixteenth). Exact as far as the costs are those of the
 * cheapest plans; where a plan is not proven, a step may lie a little off.
 *
 * Asks for what it needs one overhang at a time: it is given the cost by `next`, so that the page can answer at once and
 * the host when its workers are done.
 * Worked: boards at 40 $ up to 16 in., 55 $ beyond; from 12 to 20 in., today 18 -> two steps; 16 in. saves 15 $.
 * @param range - overhangs to look at, as the design gives them, and today's. [in]
 * @yields overhangs to compute the job at. [in]
 */
export function* costStaircase(range: {
  readonly fromIn: number;
  readonly toIn: number;
  readonly todayIn: number;
}): Generator<number, CostStaircase, OverhangCost> {
  const first = Math.ceil(range.fromIn * perInch);
  const last = Math.max(first, Math.floor(range.toIn * perInch));
  const today = Math.min(last, Math.max(first, Math.round(range.todayIn * perInch)));
  const known = new Map<number, OverhangCost>();
  const costAt = function* (place: number): Generator<number, OverhangCost, OverhangCost> {
    const found = known.get(place) ?? (yield place / perInch);
    known.set(place, found);
    return found;
  };
  /** Places where the cost changes: the last one of each step. */
  const ends: number[] = [];
  const part = function* (from: number, to: number): Generator<number, void, OverhangCost> {
    const [low, high] = [yield* costAt(from), yield* costAt(to)];
    if (low.boardsUsd === high.boardsUsd) return;
    if (to - from === 1) {
      ends.push(from);
      return;
    }
    const middle = Math.floor((from + to) / 2);
    yield* part(from, middle);
    yield* part(middle, to);
  };
  yield* costAt(today);
  yield* part(first, today);
  yield* part(today, last);
  const steps: CostStep[] = [];
  let from = first;
  for (const end of [...ends, last]) {
    const cost = yield* costAt(end);
    steps.push({ ...cost, fromOverhangIn: from / perInch, toOverhangIn: end / perInch });
    from = end + 1;
  }
  return { steps, ...besideToday(steps, today / perInch) };
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

/** What a computed job comes to, for the staircase; undefined stands for one that cannot be computed. */
export function overhangCost(
  result: Pick<JobResult, 'cutPlans' | 'unplanned' | 'estimate'> | undefined,
): OverhangCost {
  if (result === undefined) return { boardsUsd: null, totalUsd: null, proof: 'none' };
  const proofs = new Set(result.cutPlans.map(({ proof }) => proof));
  // What merely has no price is left out at every overhang alike.
  const whole = result.unplanned.every(
    ({ problem: { code } }) => code !== 'piece-longer-than-stock' && code !== 'not-enough-boards',
  );
  return {
    boardsUsd: whole ? usd(Decimal.sum(0, ...result.cutPlans.map(({ costUsd }) => costUsd))) : null,
    totalUsd: whole ? result.estimate.totalUsd : null,
    proof: proofs.has('none') ? 'none' : proofs.has('solver-tree') ? 'solver-tree' : 'exact-bound',
  };
}

function besideToday(
  steps: readonly CostStep[],
  todayIn: number,
): Pick<CostStaircase, 'cheaper' | 'asFarAsIn'> {
  const here = steps.find(
    ({ fromOverhangIn, toOverhangIn }) => todayIn >= fromOverhangIn && todayIn <= toOverhangIn,
  );
  const cost = here?.boardsUsd ?? null;
  const cheaper: CheaperStep[] = [];
  let least = cost === null ? undefined : new Decimal(cost);
  for (const { boardsUsd, totalUsd, toOverhangIn } of steps.toReversed()) {
    if (cost === null || least === undefined || toOverhangIn >= todayIn || boardsUsd === null) continue;
    if (!least.greaterThan(boardsUsd) || cheaper.length === mostCheaper) continue;
    least = new Decimal(boardsUsd);
    cheaper.push({ overhangIn: toOverhangIn, savesUsd: usd(new Decimal(cost).minus(boardsUsd)), totalUsd });
  }
  return { cheaper, asFarAsIn: here?.toOverhangIn ?? todayIn };
}
