import { Decimal } from 'decimal.js';
import { decimalText, type DecimalText } from '../../units/money.ts';
import { shrink } from './credibility.ts';
import type { Allowances } from './close-job.ts';
import { type FinishedJob, type MaterialGroup, materialGroups } from './finished-job.ts';
import { overPercent } from './spread.ts';

/** What finished jobs say of how much of a material was bought beyond what was reckoned. */
export type MaterialUse = {
  readonly group: MaterialGroup;
  readonly jobs: readonly {
    readonly jobId: string;
    readonly jobName: string;
    /** Bought beyond reckoned, at the reckoned price; and paid beyond what it was reckoned at. [%] */
    readonly overQuantityPercent: DecimalText | null;
    readonly overPricePercent: DecimalText | null;
  }[];
  /** All that was bought over all that was reckoned, less one. [%] */
  readonly overQuantityPercent: DecimalText | null;
  /** The allowance that is in use, where the shop sets one for it; and the one that is proposed. [%] */
  readonly usedPercent: DecimalText | null;
  readonly offeredPercent: DecimalText | null;
};

/**
 * Holds what was bought, returns taken off, against what was reckoned: lumber beyond its cut plan, nails and planks beyond
 * their allowance. The need of a job is what was reckoned less the allowance in it; all that was bought over all that was
 * needed is drawn toward the allowance of the first job by the number of jobs (see `shrink`). Proposed to tenths half up,
 * and never below 0.
 * Worked: nails with 10 % allowance, 20 % more bought on 3 jobs (k = 3): half way from 1.10 to 1.20 x 1.10, 21 %.
 * @param finished - in the order they were finished.
 * @param allowances - in use, by material. [%]
 */
export function materialUse(
  finished: readonly FinishedJob[],
  allowances: Allowances,
): readonly MaterialUse[] {
  return materialGroups.flatMap((group): readonly MaterialUse[] => {
    const found = finished.flatMap(({ jobId, name, closeOut }) =>
      closeOut.figures.materials
        .filter((one) => one.group === group && Number(one.reckonedUsd) > 0)
        .map((one) => ({ jobId, jobName: name, ...one })),
    );
    if (found.length === 0) return [];
    const reckoned = found.reduce((sum, one) => sum.plus(one.reckonedUsd), new Decimal(0));
    const bought = found.reduce((sum, one) => sum.plus(one.boughtUsd), new Decimal(0));
    const used = allowances[group];
    return [
      {
        group,
        jobs: found.map((one) => ({
          jobId: one.jobId,
          jobName: one.jobName,
          overQuantityPercent: text(overPercent(one.boughtUsd, one.reckonedUsd)),
          overPricePercent: text(overPercent(one.paidUsd, one.boughtUsd)),
        })),
        overQuantityPercent: text(overPercent(bought, reckoned)),
        usedPercent: used === undefined ? null : decimalText(used),
        offeredPercent: used === undefined ? null : proposed(found, used),
      },
    ];
  });
}

function proposed(
  found: readonly FinishedJob['closeOut']['figures']['materials'][number][],
  usedPercent: number,
): DecimalText {
  const withAllowance = (percent: string | null): Decimal =>
    new Decimal(percent ?? usedPercent).div(100).plus(1);
  const bought = found.reduce((sum, one) => sum.plus(one.boughtUsd), new Decimal(0));
  const needed = found.reduce(
    (sum, one) => sum.plus(new Decimal(one.reckonedUsd).div(withAllowance(one.allowedPercent))),
    new Decimal(0),
  );
  const believed = withAllowance(found[0]?.allowedPercent ?? null);
  const percent = shrink(bought.div(needed), found.length, believed).minus(1).times(100);
  return decimalText(Decimal.min(100, Decimal.max(0, percent)).toDecimalPlaces(1, Decimal.ROUND_HALF_UP));
}

function text(value: Decimal | null): DecimalText | null {
  return value === null ? null : decimalText(value);
}
