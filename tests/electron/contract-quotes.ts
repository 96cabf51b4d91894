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

  test('the way that the client takes is what quotes are held against each other by; no other can be taken', async () => {
    const { id: jobId } = await value('jobs.import', { text: sampleText });
    const { id } = await value('quotes.make', { jobId });
    const { ways, unanswered } = await value('quotes.ways', { id });
    expect(unanswered).toEqual([]);
    expect(ways.map(({ name }) => name)).toEqual(['Eaves and gable', 'Eaves alone', 'Open tails, no soffit']);
    const [offered, alone] = ways;
    expect(alone?.differences).toEqual(['The gable stays as it is.']);
    await value('quotes.send', { id });
    const { today } = await value('app.info', {});
    const take = (wayId: string) => ({ id, decision: 'accepted' as const, on: today, note: '', wayId });
    expect(await problem('quotes.decide', take('a9'))).toEqual({
      code: 'offer',
      fault: { what: 'no-such-way' },
    });
    await value('quotes.decide', take('a1'));
    const [shown] = await value('quotes.list', { jobId });
    expect(shown?.chosen).toEqual({ id: 'a1', name: 'Eaves alone', totalUsd: alone?.totalUsd });
    expect(shown?.totalUsd).toBe(offered?.totalUsd);
    // What is billed and budgeted is the way that was taken. The sample's tax is in its price.
    expect((await value('billing.get', { jobId })).summary?.quotedUsd).toBe(alone?.totalUsd);
    const next = await value('quotes.make', { jobId });
    const change = await value('quotes.compare', { id, withId: next.id });
    expect(change.totalBeforeUsd).toBe(alone?.totalUsd);
    expect(change.totalAfterUsd).toBe(offered?.totalUsd);
  });

  test('a quote that leaves something open is sent only by one who says that he knows', async () => {
    const file = JSON.parse(sampleText) as { design: { offer: object } };
    file.design.offer = { ...file.design.offer, notNeeded: [] };
    const { id: jobId } = await value('jobs.import', { text: JSON.stringify(file) });
    const { id } = await value('quotes.make', { jobId });
    const { unanswered } = await value('quotes.ways', { id });
    expect(unanswered).toContain('lead-safe work');
    expect(await problem('quotes.send', { id })).toEqual({
      code: 'offer',
      fault: { what: 'not-all-asked', questions: unanswered },
    });
    await value('quotes.send', { id, knowing: true });
  });

  test('payments that do not add up keep a quote from being sent, whatever he says he knows', async () => {
    const file = JSON.parse(sampleText) as { design: { offer: object } };
    const payments = [{ id: 'p1', when: 'At signing', kind: 'percent', value: '90' }];
    file.design.offer = { ...file.design.offer, payments };
    const { id: jobId } = await value('jobs.import', { text: JSON.stringify(file) });
    const { id } = await value('quotes.make', { jobId });
    const [made] = await value('quotes.list', { jobId });
    expect(await problem('quotes.send', { id, knowing: true })).toEqual({
      code: 'offer',
      fault: { what: 'payments-do-not-add-up', leftUsd: (Number(made?.totalUsd) / 10).toFixed(2) },
    });
  });

  test('a sent quote keeps the logo it had; a file that is no picture is refused', async () => {
    expect(await problem('settings.putLogo', { base64: 'R0lGODlh' })).toMatchObject({ code: 'offer' });
    // Begins as a PNG and is none: it would stop every paper.
    const broken = Buffer.from(greyPoint, 'base64').subarray(0, 40).toString('base64');
    expect(await problem('settings.putLogo', { base64: broken })).toMatchObject({ code: 'offer' });
    await value('settings.putLogo', { base64: greyPoint });
    expect((await value('settings.logo', {})).logo).toMatchObject({ widthPx: 1, base64: greyPoint });
    const { id: jobId } = await value('jobs.import', { text: sampleText });
    const { id } = await value('quotes.make', { jobId });
    await value('quotes.send', { id });
    const print = () => value('quotes.paper', { id, sheet: 'quote', paperSize: 'letter' });
    const before = await print();
    await value('settings.putLogo', { base64: '' });
    expect((await value('settings.logo', {})).logo).toBeNull();
    expect((await print()).pdfBase64).toBe(before.pdfBase64);
    const bare = await value('quotes.make', { jobId });
    const without = await value('quotes.paper', { id: bare.id, sheet: 'quote', paperSize: 'letter' });
    expect(imagesIn(before.pdfBase64)).toBe(1);
    expect(imagesIn(without.pdfBase64)).toBe(0);
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
    ['quotes.ways', { id: 'gone' }, 'quote'],
  ] as const)('%s of what is gone says so', async (command, input, what) => {
    expect(await problem(command, input)).toEqual({ code: 'not-found', what });
  });
}

/** A PNG of one grey point. */
const greyPoint =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==';

/** How many pictures a PDF carries: ISO 32000-1, 8.9.5, an XObject of subtype Image. */
function imagesIn(pdfBase64: string): number {
  const text = Buffer.from(pdfBase64, 'base64').toString('latin1');
  return text.match(/\/Subtype \/Image/g)?.length ?? 0;
}
