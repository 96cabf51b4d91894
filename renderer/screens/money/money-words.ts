import type { CommandOutput } from '../../../core/contract/contract.ts';
import type { Age } from '../../../core/billing/ledger.ts';
import type { MaterialGroup } from '../../../core/jobcost/learning/finished-job.ts';

export type ShopMoney = CommandOutput<'money.shop'>;
export type ShopJob = ShopMoney['jobs'][number];
export type Learning = CommandOutput<'learning.get'>;
export type LearnedRate = Learning['rates'][number];
export type Accuracy = Learning['accuracy'][number];

export const ageWords: Readonly<Record<Age, string>> = {
  'not-due': 'Not due yet',
  '1-30': '1 to 30 days late',
  '31-60': '31 to 60 days late',
  '61-90': '61 to 90 days late',
  'over-90': 'More than 90 days late',
};

export const materialWords: Readonly<Record<MaterialGroup, string>> = {
  lumber: 'Lumber, beyond its cut plan',
  nails: 'Nails, beyond the loss allowed',
  sheet: 'Sheets',
  plank: 'Planks, beyond the waste allowed',
  edge: 'Drip edge',
  vents: 'Vents',
};

/** A difference with its sign: `+12 %`, `-4 %`. */
export function signedPercent(percent: string | null): string {
  return percent === null ? '–' : `${Number(percent) > 0 ? '+' : ''}${percent} %`;
}

/** How far a chart has to reach to both sides, in whole tens and at least 20. [%] */
export function evenReach(percents: readonly (string | null)[]): number {
  return percents.reduce(
    (most, percent) => Math.max(most, Math.ceil(Math.abs(Number(percent ?? 0)) / 10) * 10),
    20,
  );
}

/** `one job`, `3 jobs`. */
export function jobsWords(count: number): string {
  return count === 1 ? 'one job' : `${count} jobs`;
}

/** How late a bill is. */
export function lateWords(daysPast: number): string {
  if (daysPast <= 0) return daysPast === 0 ? 'due today' : `due in ${-daysPast} ${days(-daysPast)}`;
  return `${daysPast} ${days(daysPast)} late`;
}

/** How long a quote is good. */
export function leftWords(daysLeft: number): string {
  if (daysLeft < 0) return `lapsed ${-daysLeft} ${days(-daysLeft)} ago`;
  return daysLeft === 0 ? 'good until today' : `${daysLeft} ${days(daysLeft)} left`;
}

function days(count: number): string {
  return count === 1 ? 'day' : 'days';
}
