import { expect, test } from 'vitest';
import type { CommandInput } from '../../core/contract/contract.ts';
import { formatUsd, usd } from '../../core/units/money.ts';
import { readPdf } from '../paper/read-pdf.ts';
import { sampleText, type Asker } from './contract-asker.ts';
import { acceptedJob } from './contract-costs.ts';

const order = (change: object = {}) => ({
  reason: 'hidden' as const,
  description: 'Three rotted rafter ends',
  days: 1,
  lines: [
    {
      id: 'a',
      phase: 'Framing',
      kind: 'labour' as const,
      description: 'Rotted rafter end cut back and sistered',
      quantity: '3',
      unit: 'each',
      unitPriceUsd: '145.00',
      unitCostUsd: '78.15',
      unitHours: '1.5',
    },
  ],
  ...change,
});

/** What a paper says, read back from its own bytes. */
const linesOf = (paper: { readonly pdfBase64: string }): string =>
  readPdf(Buffer.from(paper.pdfBase64, 'base64'))
    .flatMap(({ lines }) => lines)
    .join('\n');
const dollars = (amount: string): string => formatUsd(usd(amount));

/** Change orders, invoices, credits, payments: frozen, numbered without gaps, adding up. */
export function checkBilling(asker: Asker): void {
  const { value, problem } = asker;
  const day = '2026-05-20';
  type Ask = CommandInput<'billing.issue'>['ask'];
  const issue = (jobId: string, ask: Ask) => value('billing.issue', { jobId, ask, issuedOn: day });
  const everything = async (jobId: string, percent: string) =>
    Object.fromEntries((await value('billing.get', { jobId })).parts.map(({ key }) => [key, percent]));

  test('without an accepted quote there is nothing to bill against, and it says so', async () => {
    const { id: jobId } = await value('jobs.create', { name: 'No contract' });
    expect((await value('billing.get', { jobId })).summary).toBeNull();
    const none = { code: 'billing', fault: { what: 'no-contract' } };
    expect(await problem('billing.preview', { jobId, ask: { kind: 'final' } })).toEqual(none);
    expect(await problem('billing.changeFromDesign', { jobId })).toEqual(none);
  });

  test('a change order counts once it is approved, adds to contract and budget, and stays as it is', async () => {
    const jobId = await acceptedJob(asker);
    const budget = (await value('costs.get', { jobId })).standing.whole.budgetUsd;
    const { id, number } = await value('billing.saveChange', { jobId, id: null, order: order() });
    expect(number).toBe(1);
    await value('billing.saveChange', { jobId, id, order: order({ days: 2 }) });
    expect((await value('billing.get', { jobId })).summary?.changesUsd).toBe('0.00');
    await value('billing.moveChange', { id, to: 'sent', on: day });
    await value('billing.moveChange', { id, to: 'approved', on: day, note: 'Signed on site' });
    const { summary, changeOrders } = await value('billing.get', { jobId });
    expect(summary?.changesUsd).toBe('435.00');
    expect(changeOrders).toMatchObject([{ number: 1, state: 'approved', priceUsd: '435.00', intact: true }]);
    const after = (await value('costs.get', { jobId })).standing.whole.budgetUsd;
    expect((Number(after) - Number(budget)).toFixed(2)).toBe('234.45');
    expect(await problem('billing.saveChange', { jobId, id, order: order() })).toEqual({
      code: 'billing',
      fault: { what: 'change-is-settled', number: 1, state: 'approved' },
    });
    const paper = await value('billing.changePaper', { id, paperSize: 'letter' });
    expect(paper.fileName).toMatch(/^change order 01 /);
    expect(paper.pages).toBe(1);
  });

  test('a change of the design alone, at the accepted prices, is what a change order from the design says', async () => {
    const jobId = await acceptedJob(asker);
    expect((await value('billing.changeFromDesign', { jobId })).order).toBeNull();
    const job = await value('jobs.get', { id: jobId });
    const extra = {
      id: 'tarps',
      description: 'More tarps',
      phase: 'Protect and stage' as const,
      kind: 'equipment' as const,
      quantity: '1',
      unit: 'each',
      unitCostUsd: '100',
    };
    const design = { ...job.design, extraCosts: [...job.design.extraCosts, extra] };
    await value('jobs.save', { id: jobId, baseRevision: job.revision, design });
    const change = await value('billing.changeFromDesign', { jobId });
    expect(Number(change.priceUsd)).toBeGreaterThan(100);
    expect(change.order?.lines.some(({ unitCostUsd }) => unitCostUsd === '100')).toBe(true);
  });

  test('deposit, progress with retainage and final bill the contract to the cent, one number after the other', async () => {
    const jobId = await acceptedJob(asker);
    const { settings } = await value('settings.get', {});
    const contract = (await value('billing.get', { jobId })).summary?.revisedUsd ?? '';
    const deposit = await issue(jobId, { kind: 'deposit', depositUsd: '1000' });
    const percents = await everything(jobId, '50');
    const ask: Ask = { kind: 'progress', percents, retainagePercent: '10', showsQuantities: true };
    const preview = await value('billing.preview', { jobId, ask });
    expect(preview.depositBeforeUsd).toBe('1000.00');
    const progress = await issue(jobId, ask);
    expect(await problem('billing.preview', { jobId, ask })).toMatchObject({
      fault: { what: 'nothing-to-bill' },
    });
    const held = (await value('billing.get', { jobId })).summary;
    expect(Number(held?.retainedUsd)).toBeGreaterThan(0);
    const final = await issue(jobId, { kind: 'final' });
    expect([progress.number, final.number]).toEqual([deposit.number + 1, deposit.number + 2]);
    expect(deposit.number).toBeGreaterThanOrEqual(settings.nextInvoiceNumber);
    const { summary, invoices } = await value('billing.get', { jobId });
    expect(summary).toMatchObject({ billedUsd: contract, toBillUsd: '0.00', retainedUsd: '0.00' });
    const cents = invoices.reduce((sum, { amountUsd }) => sum + Math.round(Number(amountUsd) * 100), 0);
    expect((cents / 100).toFixed(2)).toBe(contract);
    expect(await problem('billing.issue', { jobId, ask: { kind: 'final' }, issuedOn: day })).toMatchObject({
      fault: { what: 'nothing-to-bill', kind: 'final' },
    });
    const paper = await value('billing.invoicePaper', { id: progress.id, paperSize: 'letter' });
    expect(paper.fileName).toContain(`invoice ${String(progress.number).padStart(4, '0')} `);
  });

  test('the payments that the quote planned are offered before tax, and billed stage by stage', async () => {
    const jobId = await acceptedJob(asker);
    const { planned, summary } = await value('billing.get', { jobId });
    const sum = planned.reduce((cents, { amountUsd }) => cents + Math.round(Number(amountUsd) * 100), 0);
    expect((sum / 100).toFixed(2)).toBe(summary?.quotedUsd);
    for (const { when, amountUsd } of planned)
      await issue(jobId, { kind: 'stage', depositUsd: amountUsd, stage: when });
    expect((await value('billing.get', { jobId })).summary?.toBillUsd).toBe('0.00');
    expect(
      await problem('billing.preview', { jobId, ask: { kind: 'stage', depositUsd: '1' } }),
    ).toMatchObject({ fault: { what: 'more-than-contract', leftUsd: '0.00' }, field: 'depositUsd' });
  });

  test('where the client pays the tax, deposit, stage and final come to the total of the quote to the cent', async () => {
    const { settings, revision } = await value('settings.get', {});
    const { id: jobId } = await value('jobs.import', { text: sampleText });
    // The imported job brought the sample's rules, so the tax is set after it.
    const latest = await value('settings.get', {});
    const money = { ...latest.settings.money, taxRule: 'client-pays' as const, taxPercent: '8.875' };
    await value('settings.save', {
      settings: { ...latest.settings, money },
      baseRevision: latest.revision,
    });
    const { id } = await value('quotes.make', { jobId });
    await value('quotes.send', { id, knowing: true });
    await value('quotes.decide', { id, decision: 'accepted', on: day, note: '' });
    const [quote] = await value('quotes.list', { jobId });
    await issue(jobId, { kind: 'deposit', depositUsd: '333.33' });
    await issue(jobId, {
      kind: 'progress',
      percents: await everything(jobId, '41.7'),
      retainagePercent: '10',
    });
    await issue(jobId, { kind: 'stage', depositUsd: '77.77', stage: 'On the way' });
    await issue(jobId, { kind: 'final' });
    const { invoices, summary } = await value('billing.get', { jobId });
    expect(Number(summary?.taxUsd)).toBeGreaterThan(0);
    const cents = invoices.reduce((sum, { totalUsd }) => sum + Math.round(Number(totalUsd) * 100), 0);
    expect((cents / 100).toFixed(2)).toBe(quote?.totalUsd);
    const now = await value('settings.get', {});
    expect(now.revision).toBeGreaterThan(revision);
    await value('settings.save', {
      settings: { ...now.settings, money: settings.money },
      baseRevision: now.revision,
    });
  });

  test('a statement gathers every job of the client', async () => {
    const first = await acceptedJob(asker);
    const second = await acceptedJob(asker);
    await issue(first, { kind: 'deposit', depositUsd: '111.11' });
    await issue(second, { kind: 'deposit', depositUsd: '222.22' });
    const lines = linesOf(await value('billing.statement', { jobId: second, paperSize: 'letter' }));
    expect(lines).toContain('$111.11');
    expect(lines).toContain('$222.22');
  });

  test('payments close what was due first; one is taken back by a row of its own; a credit takes the next number', async () => {
    const jobId = await acceptedJob(asker);
    const first = await issue(jobId, { kind: 'deposit', depositUsd: '500' });
    const second = await issue(jobId, { kind: 'deposit', depositUsd: '300' });
    const pay = { jobId, paidOn: day, how: 'check 1042' };
    const { id } = await value('billing.pay', { ...pay, amountUsd: '600' });
    const open = async () => (await value('billing.get', { jobId })).invoices.map(({ openUsd }) => openUsd);
    expect(await open()).toEqual(['0.00', '200.00']);
    await value('billing.takeBackPayment', { id, note: 'The check came back' });
    expect(await open()).toEqual(['500.00', '300.00']);
    expect(await problem('billing.takeBackPayment', { id })).toEqual({
      code: 'billing',
      fault: { what: 'already-taken-back' },
    });
    expect(await problem('billing.pay', { ...pay, amountUsd: '0' })).toMatchObject({ field: 'amountUsd' });
    const credit = { invoiceId: second.id, reason: 'Billed twice', issuedOn: day };
    expect(await problem('billing.credit', { ...credit, amountUsd: '300.01' })).toMatchObject({
      fault: { what: 'credit-too-large', leftUsd: '300.00' },
    });
    const credited = await value('billing.credit', { ...credit, amountUsd: '300' });
    expect(credited.number).toBe(second.number + 1);
    expect(second.number).toBe(first.number + 1);
    expect((await value('billing.get', { jobId })).payments).toHaveLength(2);
    expect((await open()).slice(0, 2)).toEqual(['500.00', '0.00']);
    const statement = await value('billing.statement', { jobId, paperSize: 'a4' });
    expect(statement.fileName).toMatch(/^statement /);
  });

  test('a change order may not bring the contract below what is billed', async () => {
    const jobId = await acceptedJob(asker);
    await issue(jobId, { kind: 'final' });
    const less = order({ lines: [{ ...order().lines[0], quantity: '-3' }] });
    const { id } = await value('billing.saveChange', { jobId, id: null, order: less });
    expect(await problem('billing.moveChange', { id, to: 'approved', on: day })).toMatchObject({
      fault: { what: 'change-below-billed' },
    });
  });

  test('an issued invoice says every figure of its record, and prints the same after the shop has another name', async () => {
    const jobId = await acceptedJob(asker);
    const { id } = await value('billing.saveChange', { jobId, id: null, order: order() });
    await value('billing.moveChange', { id, to: 'approved', on: day });
    const percents = await everything(jobId, '40');
    const ask: Ask = { kind: 'progress', percents, retainagePercent: '5', showsQuantities: true };
    const figures = await value('billing.preview', { jobId, ask });
    const invoice = await value('billing.issue', {
      jobId,
      ask,
      issuedOn: day,
      seenUsd: figures.totalUsd,
    });
    const print = () => value('billing.invoicePaper', { id: invoice.id, paperSize: 'letter' });
    const paper = await print();
    const lines = linesOf(paper);
    for (const amount of [
      figures.quotedUsd,
      ...figures.changes.map(({ priceUsd }) => priceUsd),
      figures.revisedUsd,
      ...figures.parts.flatMap(({ priceUsd, doneUsd }) => [priceUsd, doneUsd]),
      figures.workToDateUsd,
      `-${figures.retainedUsd}`,
      figures.amountUsd,
      figures.totalUsd,
      figures.balanceToFinishUsd,
    ])
      expect(lines).toContain(dollars(amount));
    expect(lines).toContain('In place to date');
    const { settings, revision } = await value('settings.get', {});
    await value('settings.save', {
      settings: { ...settings, shopName: 'Another name' },
      baseRevision: revision,
    });
    expect((await print()).pdfBase64).toBe(paper.pdfBase64);
  });

  test('a change order prints as it was approved, whatever is approved and renamed later', async () => {
    const jobId = await acceptedJob(asker);
    const quoted = (await value('billing.get', { jobId })).summary?.quotedUsd ?? '';
    const make = async () => {
      const { id } = await value('billing.saveChange', { jobId, id: null, order: order() });
      await value('billing.moveChange', { id, to: 'approved', on: day });
      return id;
    };
    const first = await make();
    const print = (id: string) => value('billing.changePaper', { id, paperSize: 'letter' });
    const paper = await print(first);
    expect(linesOf(paper)).toContain(`Contract before this change ${dollars(quoted)}`);
    const second = await make();
    const after = (Number(quoted) + 435).toFixed(2);
    expect(linesOf(await print(second))).toContain(`Contract before this change ${dollars(after)}`);
    expect((await print(first)).pdfBase64).toBe(paper.pdfBase64);
  });

  test('what was approved from the design is not counted again by the next change from the design', async () => {
    const jobId = await acceptedJob(asker);
    const redesign = async (id: string) => {
      const job = await value('jobs.get', { id: jobId });
      const extra = {
        id,
        description: 'More tarps',
        phase: 'Protect and stage' as const,
        kind: 'equipment' as const,
        quantity: '1',
        unit: 'each',
        unitCostUsd: '100',
      };
      const design = { ...job.design, extraCosts: [...job.design.extraCosts, extra] };
      await value('jobs.save', { id: jobId, baseRevision: job.revision, design });
      return value('billing.changeFromDesign', { jobId });
    };
    const first = await redesign('tarps-1');
    const made = first.order ?? order();
    const { id } = await value('billing.saveChange', { jobId, id: null, order: made });
    expect((await value('billing.changeFromDesign', { jobId })).open).toEqual([1]);
    await value('billing.moveChange', { id, to: 'approved', on: day });
    expect(await value('billing.changeFromDesign', { jobId })).toMatchObject({ order: null, open: [] });
    expect(Number((await redesign('tarps-2')).priceUsd)).toBeLessThan(2 * Number(first.priceUsd));
  });

  test('a bill that comes to something else by now than was shown is not issued', async () => {
    const jobId = await acceptedJob(asker);
    const shown = await value('billing.preview', { jobId, ask: { kind: 'final' } });
    await issue(jobId, { kind: 'deposit', depositUsd: '250' });
    const refused = await problem('billing.issue', {
      jobId,
      ask: { kind: 'final' },
      issuedOn: day,
      seenUsd: shown.totalUsd,
    });
    expect(refused).toMatchObject({ code: 'billing', fault: { what: 'bill-moved' } });
    expect((await value('billing.get', { jobId })).invoices).toHaveLength(1);
  });

  test('all papers of the shop together are numbered without a gap, and the settings name the next', async () => {
    const all = (await value('jobs.list', { search: '', archived: false })).map(({ id }) => id);
    const books = await Promise.all(all.map((jobId) => value('billing.get', { jobId })));
    const numbers = books
      .flatMap(({ invoices }) => invoices.map(({ number }) => number))
      .sort((a, b) => a - b);
    const first = numbers[0] ?? 0;
    expect(numbers).toEqual(numbers.map((_, index) => first + index));
    expect((await value('settings.get', {})).settings.nextInvoiceNumber).toBe(first + numbers.length);
  });
}
