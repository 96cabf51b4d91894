import { Decimal } from 'decimal.js';
import { decimalText, type DecimalText, sumUsd, type Usd, usd } from '../../units/money.ts';
import type { FinishedJob } from './finished-job.ts';
import { meanAndSpread, overPercent } from './spread.ts';

/** Reckoned against taken, of one phase or a whole job. */
export type Held = {
  readonly budgetUsd: Usd;
  readonly actualUsd: Usd;
  readonly budgetHours: DecimalText;
  readonly actualHours: DecimalText;
  /** Taken beyond reckoned; null where nothing was reckoned. [%] */
  readonly overUsdPercent: DecimalText | null;
  readonly overHoursPercent: DecimalText | null;
};

export type JobHeld = Held & {
  readonly jobId: string;
  readonly jobName: string;
  readonly finishedOn: string;
};

/** How good the estimates of a phase were, over all finished jobs. */
export type PhaseAccuracy = {
  /** Null of whole jobs. */
  readonly phase: string | null;
  /** In the order they were finished. */
  readonly jobs: readonly JobHeld[];
  /** Mean and spread of what was taken beyond what was reckoned. [%] */
  readonly meanUsdPercent: DecimalText | null;
  readonly spreadUsdPercent: DecimalText | null;
  readonly meanHoursPercent: DecimalText | null;
  readonly spreadHoursPercent: DecimalText | null;
};

/**
 * Says how good the estimates were: whole jobs first, then phase by phase. Above 0 jobs took more than was reckoned; a mean
 * far from 0 is a bias that a rate can mend, a wide spread is what a contingency is for.
 * @param finished - in the order they were finished.
 */
export function estimateAccuracy(finished: readonly FinishedJob[]): readonly PhaseAccuracy[] {
  if (finished.length === 0) return [];
  const names = new Set(
    finished.flatMap(({ closeOut }) => closeOut.figures.phases.map(({ phase }) => phase)),
  );
  return [null, ...names].map((phase) => accuracyOf(phase, finished));
}

function accuracyOf(phase: string | null, finished: readonly FinishedJob[]): PhaseAccuracy {
  const jobs = finished.flatMap((job): readonly JobHeld[] => {
    const phases = job.closeOut.figures.phases.filter((one) => phase === null || one.phase === phase);
    return phases.length === 0
      ? []
      : [{ jobId: job.jobId, jobName: job.name, finishedOn: job.finishedOn, ...heldOf(phases) }];
  });
  const money = meanAndSpread(known(jobs.map(({ overUsdPercent }) => overUsdPercent)));
  const hours = meanAndSpread(known(jobs.map(({ overHoursPercent }) => overHoursPercent)));
  return {
    phase,
    jobs,
    meanUsdPercent: text(money.mean),
    spreadUsdPercent: text(money.spread),
    meanHoursPercent: text(hours.mean),
    spreadHoursPercent: text(hours.spread),
  };
}

function heldOf(phases: FinishedJob['closeOut']['figures']['phases']): Held {
  const budgetUsd = sumUsd(phases.map((one) => usd(one.budgetUsd)));
  const actualUsd = sumUsd(phases.map((one) => usd(one.actualUsd)));
  const budgetHours = sumOf(phases.map((one) => one.budgetHours));
  const actualHours = sumOf(phases.map((one) => one.actualHours));
  return {
    budgetUsd,
    actualUsd,
    budgetHours: decimalText(budgetHours),
    actualHours: decimalText(actualHours),
    overUsdPercent: text(overPercent(actualUsd, budgetUsd)),
    overHoursPercent: text(overPercent(actualHours, budgetHours)),
  };
}

function sumOf(values: readonly string[]): Decimal {
  return values.reduce((sum, value) => sum.plus(value), new Decimal(0));
}

function known(values: readonly (DecimalText | null)[]): readonly DecimalText[] {
  return values.filter((value) => value !== null);
}

function text(value: Decimal | null): DecimalText | null {
  return value === null ? null : decimalText(value);
}
