import { expect, test } from 'vitest';
import type { Asker } from './contract-asker.ts';
import { acceptedJob } from './contract-costs.ts';

/** The end of a job, what it teaches, and the money of the whole shop. */
export function checkLearning(asker: Asker): void {
  const { value, problem } = asker;
  const words = {
    surprise: 'Is the gate wide enough?',
    owner: 'Ardith',
    reasons: { Framing: 'slow' as const },
  };

  test('a job is finished with what it came to, reported on paper, and taken up again', async () => {
    const jobId = await acceptedJob(asker);
    await value('costs.addTime', {
      jobId,
      entries: [{ person: 'Ardith', workedOn: '2026-05-06', phase: 'Framing', hours: '7.5' }],
    });
    const before = await value('money.closeOut', { jobId });
    expect(before).toMatchObject({ finished: null });
    expect(before.figures?.people).toMatchObject([{ person: 'Ardith', hours: '7.5' }]);
    expect(await problem('money.jobReport', { jobId, paperSize: 'letter' })).toEqual({
      code: 'costs',
      fault: { what: 'not-finished' },
    });
    await value('money.finish', { jobId, finishedOn: '2026-05-08', words });
    const after = await value('money.closeOut', { jobId });
    expect(after.finished).toMatchObject({
      finishedOn: '2026-05-08',
      words: { ...words, remind: true, willChange: '' },
      changedSince: false,
      outcome: { ownerHours: '7.5' },
    });
    expect(after.finished?.outcome).toEqual(after.outcome);
    const paper = await value('money.jobReport', { jobId, paperSize: 'letter' });
    expect(paper).toMatchObject({
      pages: 1,
      fileName: expect.stringMatching(/^2026-05-08 job report .*\.pdf$/),
    });
    expect((await value('settings.get', {})).settings.reminders).toMatchObject([{ text: words.surprise }]);
    expect((await value('learning.get', {})).finished).toMatchObject([{ jobId, finishedOn: '2026-05-08' }]);
    await value('learning.leaveOut', { jobId, phase: 'Framing', leftOut: true });
    const { rates } = await value('learning.get', {});
    expect(rates.every(({ offered }) => offered === null)).toBe(true);
    const [taught] = (await value('learning.get', {})).reminders;
    await value('learning.forgetReminder', { id: taught?.id ?? '' });
    await value('money.reopen', { jobId });
    expect((await value('learning.get', {})).finished).toEqual([]);
  });

  test('a learned rate and an allowance are taken into the settings as his own, and only known tasks have one', async () => {
    await value('learning.takeRate', { task: 'blocks', hoursPerUnit: 0.173 });
    await value('learning.takeAllowance', { group: 'nails', percent: 12.5 });
    await value('learning.takeAllowance', { group: 'plank', percent: 9 });
    const { settings } = await value('settings.get', {});
    expect(settings.labour.rates.filter(({ task }) => task === 'blocks')).toEqual([
      { task: 'blocks', hoursPerUnit: 0.173, mark: 'own' },
    ]);
    expect(settings).toMatchObject({ fastening: { lossPercent: 12.5 }, plankWastePercent: 9 });
    expect(await problem('learning.takeRate', { task: 'juggle', hoursPerUnit: 1 })).toEqual({
      code: 'not-found',
      what: 'task',
    });
  });

  test('a question of his own is asked before each quote until he takes it off', async () => {
    const { id } = await value('learning.remind', { text: 'Does the dog bite?' });
    expect((await value('learning.get', {})).reminders).toContainEqual({
      id,
      text: 'Does the dog bite?',
      from: '',
    });
    await value('learning.forgetReminder', { id });
    expect((await value('settings.get', {})).settings.reminders.map((one) => one.id)).not.toContain(id);
    expect(await problem('learning.remind', { text: ' ' })).toMatchObject({ field: 'text' });
    expect(await problem('learning.forgetReminder', { id })).toEqual({ code: 'not-found', what: 'question' });
  });

  test('a job without an accepted quote has nothing to finish', async () => {
    const { id: jobId } = await value('jobs.create', { name: 'Not yet' });
    expect(await value('money.closeOut', { jobId })).toMatchObject({ figures: null, finished: null });
    expect(await problem('money.finish', { jobId, finishedOn: '2026-05-08', words: {} })).toEqual({
      code: 'costs',
      fault: { what: 'no-accepted-quote' },
    });
  });

  test('the money of the shop lists each job with a contract', async () => {
    const jobId = await acceptedJob(asker);
    const { jobs } = await value('money.shop', {});
    expect(jobs.find((job) => job.jobId === jobId)).toMatchObject({ finishedOn: null, billedUsd: '0.00' });
  });

  test('a year comes as files for the accountant', async () => {
    expect(await value('money.exportYear', { year: 2026 })).toMatchObject({
      fileName: 'eavewright-year-2026.zip',
    });
  });

  test('the shop of the samples comes with what it has behind it', async () => {
    const { id: jobId } = await value('jobs.openFinishedSample', {});
    const { finished } = await value('money.closeOut', { jobId });
    expect(finished?.outcome.plannedMarginPercent).not.toBeNull();
  });

  test.each([
    ['money.closeOut', { jobId: 'gone' }],
    ['money.finish', { jobId: 'gone', finishedOn: '2026-05-08', words: {} }],
    ['money.reopen', { jobId: 'gone' }],
    ['money.jobReport', { jobId: 'gone', paperSize: 'a4' }],
    ['learning.leaveOut', { jobId: 'gone', phase: 'Framing', leftOut: true }],
  ] as const)('%s of a job that is gone says so', async (command, input) => {
    expect(await problem(command, input)).toEqual({ code: 'not-found', what: 'job' });
  });
}
