import type { CommandOutput } from '../../../core/contract/contract.ts';

type JobSummary = CommandOutput<'jobs.list'>[number];

/** Which jobs are shown, by how their newest quote stands. */
export type Waits = 'all' | 'no-quote' | 'waiting' | 'lapsing' | 'lapsed';

export const waitChoices: readonly { readonly id: Waits; readonly label: string }[] = [
  { id: 'all', label: 'All jobs' },
  { id: 'waiting', label: 'Waiting for an answer' },
  { id: 'lapsing', label: 'Lapses within a week' },
  { id: 'lapsed', label: 'Lapsed unanswered' },
  { id: 'no-quote', label: 'Not sent yet' },
];

/** Why a list is empty: `The one job here …`. */
export const oneWords: Readonly<Record<Waits, string>> = {
  all: 'is not shown',
  waiting: 'does not wait for an answer',
  lapsing: 'has no quote that lapses within a week',
  lapsed: 'has no quote that lapsed unanswered',
  'no-quote': 'has a quote that was sent',
};

/** The same of several: `None of the 4 jobs here …`. */
export const noneWords: Readonly<Record<Waits, string>> = {
  all: 'is shown',
  waiting: 'waits for an answer',
  lapsing: 'has a quote that lapses within a week',
  lapsed: 'has a quote that lapsed unanswered',
  'no-quote': 'is still without a sent quote',
};

/** The jobs whose newest quote stands so; those that wait with the one that lapses first at the head. */
export function waitingJobs<J extends Pick<JobSummary, 'quote'>>(
  jobs: readonly J[],
  waits: Waits,
): readonly J[] {
  if (waits === 'all') return jobs;
  return jobs
    .filter(({ quote }) => stands(quote, waits))
    .toSorted((a, b) => urgency(a).localeCompare(urgency(b)));
}

/** What a list of jobs is put in order by: what waits first, the day it lapses before all. */
export function urgency({ quote }: Pick<JobSummary, 'quote'>): string {
  if (quote === null) return '5';
  const rank = { sent: '0', lapsed: '1', draft: '2', accepted: '3', declined: '4' }[quote.state];
  return `${rank} ${quote.validUntil}`;
}

function stands(quote: JobSummary['quote'], waits: Exclude<Waits, 'all'>): boolean {
  switch (waits) {
    case 'no-quote':
      return quote === null || quote.state === 'draft';
    case 'waiting':
      return quote?.state === 'sent';
    case 'lapsing':
      return quote?.state === 'sent' && quote.daysLeft !== null;
    case 'lapsed':
      return quote?.state === 'lapsed';
    default:
      return waits satisfies never;
  }
}
