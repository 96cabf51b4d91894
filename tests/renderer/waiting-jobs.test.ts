import { expect, test } from 'vitest';
import { waitingJobs } from '../../renderer/screens/jobs/waiting-jobs.ts';

test('of the jobs that wait for an answer the one that lapses first stands first', () => {
  const jobs = [
    quote('sent', '2026-05-30', null),
    quote('draft', '2026-05-02', null),
    quote('sent', '2026-05-04', 2),
    quote('lapsed', '2026-04-30', null),
    { quote: null },
  ];
  expect(waitingJobs(jobs, 'waiting').map((job) => job.quote?.validUntil)).toEqual([
    '2026-05-04',
    '2026-05-30',
  ]);
  expect(waitingJobs(jobs, 'lapsing')).toEqual([jobs[2]]);
  expect(waitingJobs(jobs, 'lapsed')).toEqual([jobs[3]]);
  expect(waitingJobs(jobs, 'no-quote')).toEqual([jobs[1], jobs[4]]);
  expect(waitingJobs(jobs, 'all')).toBe(jobs);
});

function quote(state: 'sent' | 'lapsed' | 'draft', validUntil: string, daysLeft: number | null) {
  return { quote: { number: 1, revision: 1, state, sentOn: null, validUntil, daysLeft } };
}
