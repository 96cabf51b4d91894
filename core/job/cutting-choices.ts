import { Decimal } from 'decimal.js';
import type { CutPlan } from '../cutting/cut-plan-types.ts';
import type { JobCutting } from '../eave/job-cutting.ts';
import type { Problem } from '../problems/problem.ts';
import { ok, type Result } from '../result.ts';
import { sumUsd, usd, type Usd } from '../units/money.ts';
import { computeJob } from './compute-job.ts';
import type { JobInput } from './job-file.ts';
import type { JobResult } from './job-result.ts';
import type { KeyedProblem } from './unsettled-plans.ts';

/** Something that the person wants of his boards, and the same job without it. */
export type CuttingChoice = {
  /** `all`, `pin/0`, `length/16`, `fewer-boards`, `on-hand`, `suppliers`. */
  readonly id: string;
  readonly without: JobCutting;
};

/**
 * Every choice that a job made of its boards, each with the job as it would be without that one choice; and all together
 * under `all`, where there are any. What is on hand is no wish against money: without it the lumber costs more.
 */
export function cuttingChoices(cutting: JobCutting): readonly CuttingChoice[] {
  const choices: CuttingChoice[] = [
    ...cutting.pins.map((_, index) => ({
      id: `pin/${index}`,
      without: { ...cutting, pins: cutting.pins.filter((__, at) => at !== index) },
    })),
    ...cutting.forbiddenLengthsFt.map((feet) => ({
      id: `length/${feet}`,
      without: {
        ...cutting,
        forbiddenLengthsFt: cutting.forbiddenLengthsFt.filter((other) => other !== feet),
      },
    })),
    ...(new Decimal(cutting.usdPerBoard).isZero()
      ? []
      : [{ id: 'fewer-boards', without: { ...cutting, usdPerBoard: '0' } }]),
    ...(cutting.suppliers.length === 0 ? [] : [{ id: 'suppliers', without: { ...cutting, suppliers: [] } }]),
  ];
  return [
    ...(choices.length === 0
      ? []
      : [
          {
            id: 'all',
            without: { ...cutting, pins: [], forbiddenLengthsFt: [], usdPerBoard: '0', suppliers: [] },
          },
        ]),
    ...choices,
    ...(cutting.useOnHand && cutting.onHand.length > 0
      ? [{ id: 'on-hand', without: { ...cutting, useOnHand: false } }]
      : []),
  ];
}

/** What the lumber of a job comes to. */
export type LumberSum = {
  readonly costUsd: Usd;
  readonly boards: number;
  /** Pieces that no board could be planned for; the cost is not whole while there are any. */
  readonly unplanned: number;
  readonly cutPlans: readonly CutPlan[];
  /** What is not shown to be the cheapest yet. */
  readonly open: readonly KeyedProblem[];
};

/** Adds the lumber up. */
export function lumberSum(result: Pick<JobResult, 'cutPlans' | 'cuttingProblems' | 'unplanned'>): LumberSum {
  return {
    costUsd: sumUsd(result.cutPlans.map((plan) => plan.costUsd)),
    boards: result.cutPlans.reduce((sum, { boards }) => sum + boards.length, 0),
    unplanned: result.unplanned.reduce((sum, { marks }) => sum + marks.length, 0),
    cutPlans: result.cutPlans,
    open: result.cuttingProblems.filter((_, index) => result.cutPlans[index]?.proof === 'none'),
  };
}

/**
 * What the lumber would come to with other wishes. The whole job is computed, since a length that can be bought or not
 * moves the joints of the fascia too.
 * @param input - the job.
 * @param cutting - the wishes to try.
 * @param solved - plans found before, by `problemKey`.
 */
export function lumberWith(
  input: JobInput,
  cutting: JobCutting,
  solved?: ReadonlyMap<string, CutPlan>,
): Result<LumberSum, Problem> {
  const computed = computeJob({ ...input, design: { ...input.design, cutting } }, solved);
  return computed.ok ? ok(lumberSum(computed.value)) : computed;
}

/** One sum less another, e.g. what a choice costs. [$] */
export function dearerBy(one: Pick<LumberSum, 'costUsd'>, other: Pick<LumberSum, 'costUsd'>): Usd {
  return usd(new Decimal(one.costUsd).minus(other.costUsd));
}
