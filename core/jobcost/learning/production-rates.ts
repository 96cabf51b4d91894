import { Decimal } from 'decimal.js';
import { decimalText, type DecimalText } from '../../units/money.ts';
import { credibility, shrink } from './credibility.ts';
import type { FinishedJob } from './finished-job.ts';
import { median, oddScores, standsOut } from './outliers.ts';

/** What one finished job took for a task. */
export type JobRate = {
  readonly jobId: string;
  readonly jobName: string;
  readonly finishedOn: string;
  readonly phase: string;
  /** Hours for one, on one storey, ordinary pitch and access. [h/unit] */
  readonly rate: DecimalText;
  /** Of the task, each counted as hard as it was: quantity x condition factors. [unit] */
  readonly units: DecimalText;
  /** Share of the phase's hours. [h] */
  readonly hours: DecimalText;
  /** How far it stands from the others (modified Z-score). */
  readonly score: DecimalText;
  readonly standsOut: boolean;
  /** The person left it out. */
  readonly leftOut: boolean;
};

/** What finished jobs say of a task. */
export type LearnedRate = {
  readonly task: string;
  /** [h/unit] */
  readonly used: DecimalText;
  /** Jobs in the order they were finished, those left out among them. */
  readonly jobs: readonly JobRate[];
  /** Jobs that count. */
  readonly counted: number;
  /** All their hours over all their units; and the middle one of their rates. Null where none counts. [h/unit] */
  readonly mean: DecimalText | null;
  readonly median: DecimalText | null;
  /** How far they are believed. [%] */
  readonly trustPercent: DecimalText;
  /** Proposed: the mean drawn toward what was believed before; null where none counts. [h/unit] */
  readonly offered: DecimalText | null;
};

/** A phase of a job whose hours are not to be learned from. */
export type LeftOut = { readonly jobId: string; readonly phase: string };

/**
 * Learns hours for one unit of each task from finished jobs.
 *
 * Hours are kept by phase. A phase's hours go to its tasks, and to what change orders added to it, in proportion to the
 * hours that were reckoned for each. So a task's rate on a job is the rate that the estimate used x (hours worked / hours
 * reckoned, changes in them) of its phase. The factors for storeys, pitch and access, which stand in the reckoned hours,
 * fall out of that, so that jobs can be compared. The mean is all hours over all units, and it is drawn toward the rate
 * that the first of these jobs was estimated with, by the number of jobs (see `shrink`): not toward the rate in use, or
 * taking what is proposed would draw the next proposal on without a further job. A job that stands out is told and still counts until the person leaves it out.
 * Rates are rounded to thousandths half up.
 * Worked: 0.45 h used; a phase reckoned at 20 h took 24 h -> 0.54 h; proposed after that one job (k = 3): 0.473 h.
 * @param finished - in the order they were finished.
 * @param used - rates in use, by task. [h/unit]
 * @param leftOut - what the person left out.
 * @returns one for each task that a finished job has hours of, in the order of `used`.
 */
export function learnRates(
  finished: readonly FinishedJob[],
  used: ReadonlyMap<string, Decimal.Value>,
  leftOut: readonly LeftOut[],
): readonly LearnedRate[] {
  const taken = finished.flatMap((job) => taskHours(job));
  return [...used].flatMap(([task, rate]): readonly LearnedRate[] => {
    const ofTask = taken.filter((one) => one.task === task);
    return ofTask.length === 0 ? [] : [learnRate(task, rate, ofTask, leftOut)];
  });
}

type TaskTaken = {
  readonly job: FinishedJob;
  readonly task: string;
  readonly phase: string;
  /** Rate that the estimate used. [h/unit] */
  readonly estimatedAt: Decimal;
  readonly units: Decimal;
  readonly hours: Decimal;
};

function taskHours(job: FinishedJob): readonly TaskTaken[] {
  const { phases, tasks } = job.closeOut.figures;
  return tasks.flatMap(({ task, phase, hoursPerUnit, hours }): readonly TaskTaken[] => {
    const stood = phases.find((one) => one.phase === phase);
    const rate = new Decimal(hoursPerUnit);
    const reckoned = new Decimal(hours);
    if (stood === undefined || rate.lte(0) || reckoned.lte(0)) return [];
    if (Number(stood.actualHours) <= 0 || Number(stood.budgetHours) <= 0) return [];
    return [
      {
        job,
        task,
        phase,
        estimatedAt: rate,
        units: reckoned.div(rate),
        hours: new Decimal(stood.actualHours).times(reckoned).div(stood.budgetHours),
      },
    ];
  });
}

function learnRate(
  task: string,
  used: Decimal.Value,
  taken: readonly TaskTaken[],
  leftOut: readonly LeftOut[],
): LearnedRate {
  const isLeftOut = ({ job, phase }: TaskTaken): boolean =>
    leftOut.some((one) => one.jobId === job.jobId && one.phase === phase);
  const rates = taken.map(({ hours, units }) => hours.div(units));
  const scores = oddScores(rates);
  const counted = taken.filter((one) => !isLeftOut(one));
  const units = counted.reduce((sum, one) => sum.plus(one.units), new Decimal(0));
  const hours = counted.reduce((sum, one) => sum.plus(one.hours), new Decimal(0));
  const mean = counted.length === 0 ? null : hours.div(units);
  const middle = median(counted.map((one) => one.hours.div(one.units)));
  return {
    task,
    used: decimalText(used),
    jobs: taken.map((one, index): JobRate => {
      const score = scores[index] ?? new Decimal(0);
      return {
        jobId: one.job.jobId,
        jobName: one.job.name,
        finishedOn: one.job.finishedOn,
        phase: one.phase,
        rate: thousandths(rates[index] ?? new Decimal(0)),
        units: hundredths(one.units),
        hours: hundredths(one.hours),
        score: decimalText(score),
        standsOut: standsOut(score),
        leftOut: isLeftOut(one),
      };
    }),
    counted: counted.length,
    mean: mean === null ? null : thousandths(mean),
    median: middle === undefined ? null : thousandths(middle),
    trustPercent: decimalText(
      credibility(counted.length).times(100).toDecimalPlaces(0, Decimal.ROUND_HALF_UP),
    ),
    offered:
      mean === null ? null : thousandths(shrink(mean, counted.length, counted[0]?.estimatedAt ?? used)),
  };
}

function thousandths(value: Decimal): DecimalText {
  return decimalText(value.toDecimalPlaces(3, Decimal.ROUND_HALF_UP));
}

function hundredths(value: Decimal): DecimalText {
  return decimalText(value.toDecimalPlaces(2, Decimal.ROUND_HALF_UP));
}
