import { expect, test } from 'vitest';
import { sampleText, type Asker } from './contract-asker.ts';

/** A PNG of one dot. */
const png =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

/** Brings in the sample job with a quote that was accepted. */
export async function acceptedJob({ value }: Pick<Asker, 'value'>): Promise<string> {
  const { id: jobId } = await value('jobs.import', { text: sampleText });
  const { id } = await value('quotes.make', { jobId });
  await value('quotes.send', { id, knowing: true });
  const { today } = await value('app.info', {});
  await value('quotes.decide', { id, decision: 'accepted', on: today, note: '' });
  return jobId;
}

/** Hours of a day, invented. */
const time = (phase: string, hours: string, person = 'Ardith') => ({
  person,
  workedOn: '2026-05-04',
  phase,
  hours,
  note: '',
});
/** A receipt, invented, with what a test changes. */
const receipt = (change: object = {}) => ({
  kind: 'receipt' as const,
  supplier: 'Fernhollow Lumber',
  number: '88-1',
  datedOn: '2026-05-04',
  taxUsd: '6.50',
  lines: [
    {
      id: 'l1',
      phase: 'Framing',
      kind: 'material' as const,
      description: '2x6 No.2, 16 ft',
      quantity: '10',
      unit: 'each',
      amountUsd: '100.00',
    },
  ],
  ...change,
});

/** Time, receipts, orders and progress: entered once, corrected beside the first entry, added up against the budget. */
export function checkCosts(asker: Asker): void {
  const { value, problem } = asker;
  test('a job without an accepted quote has no budget, and takes hours all the same', async () => {
    const { id: jobId } = await value('jobs.create', { name: 'Not quoted' });
    expect((await value('costs.get', { jobId })).contract).toBeNull();
    await value('costs.addTime', { jobId, entries: [time('Framing', '2')] });
    expect((await value('costs.get', { jobId })).standing.whole).toMatchObject({
      budgetUsd: '0.00',
      actualHours: '2',
    });
  });

  test('the accepted quote is the budget; hours and receipts count against it by phase', async () => {
    const jobId = await acceptedJob(asker);
    const before = await value('costs.get', { jobId });
    expect(before.contract).toMatchObject({ revision: 1, changesUsd: '0.00' });
    const direct = before.standing.whole.budgetUsd;
    expect(Number(direct)).toBeGreaterThan(0);
    await value('costs.addTime', { jobId, entries: [time('Framing', '6.5'), time('Framing', '0', 'Bram')] });
    await value('costs.addBill', { jobId, bill: receipt() });
    const now = await value('costs.get', { jobId });
    // $34 and 35 % burden are $45.90 an hour: 6.5 h are $298.35; the receipt came to $106.50.
    expect(now.standing.phases.find(({ phase }) => phase === 'Framing')).toMatchObject({
      actualUsd: '404.85',
      actualHours: '6.5',
    });
    expect(now.times).toHaveLength(1);
    expect(now.byKind.find(({ kind }) => kind === 'material')?.actualUsd).toBe('106.50');
  });

  test('a corrected entry stays to be seen, counts no more, and is corrected once', async () => {
    const jobId = await acceptedJob(asker);
    await value('costs.addTime', { jobId, entries: [time('Framing', '8')] });
    const [first] = (await value('costs.get', { jobId })).times;
    await value('costs.correctTime', { id: first?.id ?? '', entry: time('Framing', '7') });
    const after = await value('costs.get', { jobId });
    expect(after.times.map(({ hours, replaces }) => [hours, replaces])).toEqual([
      ['8', null],
      ['7', first?.id],
    ]);
    expect(after.standing.whole.actualHours).toBe('7');
    expect(await problem('costs.correctTime', { id: first?.id, entry: null })).toEqual({
      code: 'costs',
      fault: { what: 'already-replaced' },
    });
    await value('costs.correctTime', { id: after.times[1]?.id ?? '', entry: null });
    expect((await value('costs.get', { jobId })).standing.whole.actualHours).toBe('0');
  });

  test('nobody works more than a day has, and nothing of such a day is entered', async () => {
    const { id: jobId } = await value('jobs.create', { name: 'A long day' });
    const entries = [time('Framing', '13', 'Cyprian'), time('Paint', '12', 'Cyprian')];
    expect(await problem('costs.addTime', { jobId, entries })).toMatchObject({
      fault: { what: 'too-many-hours', person: 'Cyprian', hours: '25' },
    });
    expect((await value('costs.get', { jobId })).times).toEqual([]);
    expect(await problem('costs.addTime', { jobId, entries: [time('Paint', '0', 'Cyprian')] })).toMatchObject(
      {
        fault: { what: 'no-hours' },
      },
    );
  });

  test('an order is money that is bound until its receipt comes', async () => {
    const jobId = await acceptedJob(asker);
    const { id: orderId } = await value('costs.addBill', {
      jobId,
      bill: receipt({ kind: 'order', taxUsd: '0' }),
    });
    expect((await value('costs.get', { jobId })).standing.whole).toMatchObject({
      committedUsd: '100.00',
      actualUsd: '0.00',
    });
    const { id } = await value('costs.addBill', {
      jobId,
      bill: receipt({
        taxUsd: '0',
        orderId,
        lines: [{ ...receipt().lines[0], amountUsd: '60' }],
      }),
    });
    expect((await value('costs.get', { jobId })).openOrders).toEqual([
      { id: orderId, receivedUsd: '60.00', openUsd: '40.00' },
    ]);
    await value('costs.correctBill', {
      id,
      bill: receipt({
        taxUsd: '0',
        orderId,
        closesOrder: true,
        lines: [{ ...receipt().lines[0], amountUsd: '95' }],
      }),
    });
    expect((await value('costs.get', { jobId })).standing.whole).toMatchObject({
      committedUsd: '0.00',
      actualUsd: '95.00',
    });
  });

  test('a return lowers the cost of a job, and one that would raise it is refused at its amount', async () => {
    const jobId = await acceptedJob(asker);
    const [line] = receipt().lines;
    const back = (amountUsd: string) =>
      receipt({ kind: 'return' as const, taxUsd: '0', lines: [{ ...line!, quantity: '1', amountUsd }] });
    await value('costs.addBill', { jobId, bill: receipt() });
    expect(await problem('costs.addBill', { jobId, bill: back('26.40') })).toEqual({
      code: 'costs',
      fault: { what: 'return-adds-cost' },
      field: 'bill.lines.0.amountUsd',
    });
    await value('costs.addBill', { jobId, bill: back('-26.40') });
    const { standing } = await value('costs.get', { jobId });
    expect(standing.whole.actualUsd).toBe('80.10');
  });

  test('a receipt notes the price of one on the price list, where it is told to', async () => {
    const jobId = await acceptedJob(asker);
    const { purchaseLines } = await value('costs.get', { jobId });
    const line = purchaseLines.find(({ itemId }) => itemId !== null);
    const bill = receipt({
      lines: [
        { ...receipt().lines[0], itemId: line?.itemId, costLineId: line?.costLineId, notesPrice: true },
      ],
    });
    expect((await value('costs.addBill', { jobId, bill })).pricesNoted).toBe(1);
    const item = await value('prices.ofItem', { itemId: line?.itemId ?? '' });
    expect(item.prices).toContainEqual({
      priceUsd: '10',
      observedOn: '2026-05-04',
      source: 'receipt',
      validUntil: null,
    });
    const after = await value('costs.get', { jobId });
    expect(after.purchaseLines.find(({ costLineId }) => costLineId === line?.costLineId)?.boughtUsd).toBe(
      '100.00',
    );
  });

  test('progress by quantity or by hand earns the budget; the newest word holds', async () => {
    const jobId = await acceptedJob(asker);
    const { countable } = await value('costs.get', { jobId });
    const framing = countable.find(({ phase }) => phase === 'Framing');
    expect(framing?.unit).toBe('tails');
    const half = String(Number(framing?.total) / 2);
    const word = { jobId, phase: 'Framing', percent: null, toCompleteUsd: null };
    await value('costs.noteProgress', { ...word, quantity: '1' });
    await value('costs.noteProgress', { ...word, quantity: half });
    const phase = (await value('costs.get', { jobId })).standing.phases.find(
      (one) => one.phase === 'Framing',
    );
    expect(phase).toMatchObject({ percent: '50', percentFrom: 'quantity' });
    expect(await problem('costs.noteProgress', { ...word, quantity: null, percent: '101' })).toMatchObject({
      field: 'percent',
    });
  });

  test('a photo is kept by what it is, not by its name, and comes back as it was', async () => {
    const { id: jobId } = await value('jobs.create', { name: 'With a photo' });
    const { id } = await value('costs.attach', { jobId, name: '../../rot.png', base64: png });
    const kept = await value('costs.openAttachment', { id });
    expect(kept).toEqual({ fileName: `${id}.png`, base64: png });
    expect(
      await problem('costs.attach', {
        jobId,
        name: 'rot.png',
        base64: Buffer.from('<script>').toString('base64'),
      }),
    ).toEqual({ code: 'costs', fault: { what: 'not-a-picture', fileName: 'rot.png' } });
    expect(await problem('costs.openAttachment', { id: 'gone' })).toMatchObject({ code: 'not-found' });
    const bill = receipt({ attachmentId: 'gone' });
    expect(await problem('costs.addBill', { jobId, bill })).toMatchObject({ what: 'attachment' });
    expect(await problem('costs.correctBill', { id: 'gone', bill: null })).toMatchObject({ what: 'entry' });
  });
}
