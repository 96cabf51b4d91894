import { expect, test } from 'vitest';
import { sampleText, type Asker } from './contract-asker.ts';

/** Quotes: numbered without gaps, revisioned, frozen when sent, and moved through the states of the trade. */
export function checkQuotes(asker: Asker): void {
  const { value, problem } = asker;
  const jobs = async () => value('jobs.list', { search: '', archived: false });

  test('a first quote takes the shop’s next number; made again while a draft it stays that number and revision', async () => {
    const { id } = await value('jobs.import', { text: sampleText });
    const { settings } = await value('settings.get', {});
    const first = await value('quotes.make', { jobId: id });
    expect(first).toMatchObject({ number: settings.nextQuoteNumber, revision: 1 });
    const again = await value('quotes.make', { jobId: id });
    expect(again).toMatchObject({ number: first.number, revision: 1 });
    expect((await value('settings.get', {})).settings.nextQuoteNumber).toBe(first.number + 1);
    expect(await value('quotes.list', { jobId: id })).toMatchObject([{ id: again.id, state: 'draft' }]);
    expect(await problem('quotes.paper', { id: first.id, sheet: 'quote', paperSize: 'letter' })).toEqual({
      code: 'not-found',
      what: 'quote',
    });
  });

  test('a sent quote prints as it was after prices went up, bears its number, and says what changed since', async () => {
    const { id: jobId } = await value('jobs.import', { text: sampleText });
    const { id, number } = await value('quotes.make', { jobId });
    await value('quotes.send', { id });
    const print = () => value('quotes.paper', { id, sheet: 'quote', paperSize: 'letter' });
    const before = await print();
    expect(before.fileName).toContain(`quote ${String(number).padStart(4, '0')}-1`);
    const { today } = await value('app.info', {});
    const lumber = (await value('prices.list', { on: 'today' })).filter(
      ({ category }) => category === 'lumber',
    );
    for (const item of lumber)
      await value('prices.observe', {
        itemId: item.id,
        observation: { priceUsd: '55.50', observedOn: today },
      });
    expect((await print()).pdfBase64).toBe(before.pdfBase64);
    const change = await value('quotes.compare', { id });
    expect(change.lines.length).toBeGreaterThan(0);
    expect(Number(change.directAfterUsd)).toBeGreaterThan(Number(change.directBeforeUsd));
    expect(Number(change.marginIfPriceStaysPercent)).toBeLessThan(Number(change.marginBeforePercent));
    const sum = change.lines.reduce(
      (total, line) => total + Math.round(Number(line.costDifferenceUsd) * 100),
      0,
    );
    expect(sum).toBeGreaterThan(0);
  });

  test('a sent quote is answered once; the next is a revision of the same number, and the list of jobs shows it', async () => {
    const { id: jobId } = await value('jobs.import', { text: sampleText });
    const { id, number } = await value('quotes.make', { jobId });
    const day = (await value('app.info', {})).today;
    const decide = { id, decision: 'accepted' as const, on: day, note: 'By telephone' };
    // A draft cannot be answered, and a sent one cannot be sent again.
    expect(await problem('quotes.decide', decide)).toEqual({ code: 'changed-elsewhere', what: 'quote' });
    await value('quotes.send', { id });
    expect(await problem('quotes.send', { id })).toEqual({ code: 'changed-elsewhere', what: 'quote' });
    const next = await value('quotes.make', { jobId });
    expect(next).toMatchObject({ number, revision: 2 });
    expect((await jobs()).find((job) => job.id === jobId)?.quote).toMatchObject({
      number,
      revision: 2,
      state: 'draft',
    });
    const list = await value('quotes.list', { jobId });
    // The sample's prices are of a spring long past, so what was sent on them has lapsed; it can still be accepted.
    expect(list.map(({ revision, state }) => `${revision} ${state}`)).toEqual(['2 draft', '1 lapsed']);
    await value('quotes.decide', decide);
    expect((await value('quotes.list', { jobId }))[1]).toMatchObject({
      state: 'accepted',
      decidedOn: day,
      note: 'By telephone',
      sentOn: day,
    });
    expect(await problem('quotes.decide', decide)).toEqual({ code: 'changed-elsewhere', what: 'quote' });
  });

  test('a quote that lacks a price is made, and not sent', async () => {
    const file = JSON.parse(sampleText) as { priceList: { id: string }[]; design: object };
    const { id: jobId } = await value('jobs.import', {
      text: JSON.stringify({ ...file, asOf: '2001-01-01' }),
    });
    const { id } = await value('quotes.make', { jobId });
    expect(await problem('quotes.send', { id })).toMatchObject({ code: 'quote-not-complete' });
    expect(await value('quotes.list', { jobId })).toMatchObject([{ state: 'draft' }]);
  });

  test.each([
    ['quotes.make', { jobId: 'gone' }, 'job'],
    ['quotes.list', { jobId: 'gone' }, 'job'],
    ['quotes.send', { id: 'gone' }, 'quote'],
    ['quotes.decide', { id: 'gone', decision: 'declined', on: '2026-05-01', note: '' }, 'quote'],
    ['quotes.paper', { id: 'gone', sheet: 'quote', paperSize: 'a4' }, 'quote'],
    ['quotes.compare', { id: 'gone' }, 'quote'],
  ] as const)('%s of what is gone says so', async (command, input, what) => {
    expect(await problem(command, input)).toEqual({ code: 'not-found', what });
  });
}
