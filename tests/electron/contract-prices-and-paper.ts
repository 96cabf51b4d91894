import { expect, test } from 'vitest';
import { sample, sampleText, type Asker } from './contract-asker.ts';

/** Files, prices, estimates, sheets, and what is told of a change. */
export function checkPricesAndPaper(asker: Asker): void {
  const { ask, value, problem, transport, expected } = asker;
  test('a job goes out as a file and comes in again the same, prices of the shop untouched', async () => {
    const [marsh] = await value('jobs.list', { search: 'south', archived: false });
    const { text, fileName } = await value('jobs.export', { id: marsh?.id ?? '' });
    expect(fileName).toBe('Marsh cottage, south.eavewright-job.json');
    const pricesBefore = await value('prices.list', {});
    const { id } = await value('jobs.import', { text });
    const [from, to] = [await value('jobs.get', { id: marsh?.id ?? '' }), await value('jobs.get', { id })];
    expect({ ...to, id: '', revision: 0 }).toEqual({ ...from, id: '', revision: 0, drafts: {} });
    expect(await value('prices.list', {})).toEqual(pricesBefore);
    expect((await value('settings.get', {})).settings.shopName).toBe('Wren & Daughter');
  });

  test.each([
    ['not JSON', 'rafters', 'file-not-json'],
    ['JSON of something else', '{"format":"recipe"}', 'file-not-a-job'],
    ['a job with a bad entry', sampleText.replace('"storeys": 1', '"storeys": 9'), 'file-faults'],
  ])('a file that is %s is refused and nothing is taken in', async (_what, text, code) => {
    const before = await value('jobs.list', { search: '', archived: false });
    expect(await problem('jobs.import', { text })).toMatchObject({ code });
    expect(await value('jobs.list', { search: '', archived: false })).toEqual(before);
  });

  test('a price item is added and changed, and its prices are noted once each', async () => {
    const item = { id: 'staging', category: 'other', description: 'Staging', unit: 'each' } as const;
    await value('prices.saveItem', { item });
    const observation = { priceUsd: '120.50', observedOn: '2026-05-01' };
    await value('prices.observe', { itemId: 'staging', observation });
    await value('prices.observe', { itemId: 'staging', observation });
    await value('prices.observe', { itemId: 'staging', observation: { ...observation, priceUsd: 130 } });
    await value('prices.saveItem', { item: { ...item, description: 'Staging, a week', retired: true } });
    const stored = (await value('prices.list', {})).find(({ id }) => id === 'staging');
    expect(stored).toMatchObject({ description: 'Staging, a week', retired: true });
    expect(stored?.prices.map(({ priceUsd }) => priceUsd)).toEqual(['120.50', '130']);
    expect(await problem('prices.observe', { itemId: 'nothing', observation })).toEqual({
      code: 'not-found',
      what: 'price item',
    });
    expect(await problem('prices.saveItem', { item: { ...item, unit: 'bushel' } })).toMatchObject({
      field: 'item.unit',
    });
  });

  test('a mistyped price is taken back alone, the later of two that say the same', async () => {
    const item = { id: 'tarp', category: 'other', description: 'Tarp', unit: 'each' } as const;
    await value('prices.saveItem', { item });
    const prices = async () =>
      (await value('prices.list', {}))
        .find(({ id }) => id === 'tarp')
        ?.prices.map(({ priceUsd }) => priceUsd);
    for (const priceUsd of ['30', '300', '30']) {
      await value('prices.observe', { itemId: 'tarp', observation: observed(priceUsd) });
    }
    await value('prices.removeObservation', { itemId: 'tarp', observation: observed('30') });
    expect(await prices()).toEqual(['30', '300']);
    await value('prices.removeObservation', { itemId: 'tarp', observation: observed('300') });
    expect(await prices()).toEqual(['30']);
    for (const gone of [
      { itemId: 'tarp', observation: observed('300') },
      { itemId: 'tarp', observation: { ...observed('30'), source: 'quote' } },
      { itemId: 'nothing', observation: observed('30') },
    ]) {
      expect(await problem('prices.removeObservation', gone)).toEqual({ code: 'not-found', what: 'price' });
    }
    expect(await prices()).toEqual(['30']);
  });

  test('days that a spreadsheet wrote come in month first, and it is told', async () => {
    const text =
      'id,category,description,unit,price_usd,observed_on\r\nshim,other,Shims,box,6.20,4/5/2026\r\n';
    expect(await value('prices.importCsv', { text })).toMatchObject({
      items: 1,
      prices: 1,
      monthFirst: '4/5/2026',
    });
    const shim = (await value('prices.list', {})).find(({ id }) => id === 'shim');
    expect(shim?.prices[0]?.observedOn).toBe('2026-04-05');
  });

  test('the price list goes out as CSV and comes in again without a change', async () => {
    const before = await value('prices.list', {});
    const { text, fileName } = await value('prices.exportCsv', {});
    expect(fileName).toMatch(/^price-list-\d{4}-\d{2}-\d{2}\.csv$/);
    expect(await value('prices.importCsv', { text })).toMatchObject({
      items: before.length,
      prices: 0,
      monthFirst: null,
    });
    expect(await value('prices.list', {})).toEqual(before);
  });

  test('a price list with wrong columns, a bad row or broken quotes is refused whole', async () => {
    const before = await value('prices.list', {});
    const { text } = await value('prices.exportCsv', {});
    expect(await problem('prices.importCsv', { text: 'item,cost\r\n2x6,9\r\n' })).toMatchObject({
      code: 'csv-columns',
    });
    expect(await problem('prices.importCsv', { text: text.replace('"120.50"', '"a lot"') })).toMatchObject({
      code: 'csv-row',
    });
    expect(await problem('prices.importCsv', { text: `${text}"open` })).toMatchObject({
      code: 'csv-broken',
    });
    expect(await problem('prices.importCsv', { text: '' })).toMatchObject({ code: 'csv-broken', row: 1 });
    expect(await value('prices.list', {})).toEqual(before);
  });

  test('an estimate is frozen under the next number and shows in the list of jobs', async () => {
    const [job] = await value('jobs.list', { search: 'quillfeather', archived: false });
    const jobId = job?.id ?? '';
    const first = await value('estimates.save', { jobId });
    const second = await value('estimates.save', { jobId });
    expect([first.number, second.number]).toEqual([1, 2]);
    const list = await value('estimates.list', { jobId });
    expect(list).toMatchObject([
      { id: second.id, number: 2, asOf: sample.asOf, intact: true },
      { id: first.id, number: 1, asOf: sample.asOf, intact: true },
    ]);
    expect(list[0]?.totalUsd).toMatch(/^\d+\.\d{2}$/);
    const [after] = await value('jobs.list', { search: 'quillfeather', archived: false });
    expect(after?.lastEstimateUsd).toBe(list[0]?.totalUsd);
    expect(after?.lastEstimateLacks).toBe(list[0]?.lacks);
  });

  test('a job that cannot be computed gives a reason instead of an estimate or a sheet', async () => {
    const { id } = await value('jobs.create', { name: 'Nothing measured' });
    expect(await problem('estimates.save', { jobId: id })).toMatchObject({ code: 'no-eaves' });
    expect(await problem('paper.make', { jobId: id, sheet: 'quote', paperSize: 'letter' })).toMatchObject({
      code: 'no-eaves',
    });
    expect(await value('estimates.list', { jobId: id })).toEqual([]);
  });

  test('a sheet comes as a PDF', async () => {
    const [job] = await value('jobs.list', { search: 'quillfeather', archived: false });
    const paper = await value('paper.make', {
      jobId: job?.id ?? '',
      sheet: 'takeoff',
      paperSize: 'letter',
    });
    expect(Buffer.from(paper.pdfBase64, 'base64').subarray(0, 5).toString()).toBe('%PDF-');
    expect(paper.fileName).toMatch(/\.pdf$/);
    expect(paper.pages).toBeGreaterThan(0);
  });

  test('a saved estimate prints its quote again as it was, after prices and design went on', async () => {
    const [job] = await value('jobs.list', { search: 'quillfeather', archived: false });
    const jobId = job?.id ?? '';
    await value('estimates.save', { jobId });
    const [saved] = await value('estimates.list', { jobId });
    const print = () =>
      value('paper.ofEstimate', { estimateId: saved?.id ?? '', sheet: 'quote', paperSize: 'letter' });
    const before = await print();
    for (const item of (await value('prices.list', { on: 'today' })).slice(0, 20))
      await value('prices.observe', { itemId: item.id, observation: observed('77.70') });
    const after = await print();
    expect(after.pdfBase64).toBe(before.pdfBase64);
    expect(after.fileName).toBe(before.fileName);
    expect(
      await problem('paper.ofEstimate', { estimateId: 'gone', sheet: 'quote', paperSize: 'letter' }),
    ).toEqual({ code: 'not-found', what: 'estimate' });
  });

  test('the price list of a day has each item with the one price of that day; an item alone has them all', async () => {
    const itemId = 'dated';
    await value('prices.saveItem', {
      item: { id: itemId, category: 'other', description: 'Dated', unit: 'each' },
    });
    const on = async (day: string) =>
      (await value('prices.list', { on: day }))
        .find(({ id }) => id === itemId)
        ?.prices.map((one) => one.priceUsd);
    expect(await on('2026-05-01')).toEqual([]);
    for (const [priceUsd, observedOn] of [
      ['3', '2026-03-01'],
      ['1', '2026-01-01'],
      ['2', '2026-03-01'],
    ])
      await value('prices.observe', {
        itemId,
        observation: { priceUsd: priceUsd ?? '', observedOn: observedOn ?? '' },
      });
    expect(await on('2026-02-28')).toEqual(['1']);
    // Of two on one day, the later in the list.
    expect(await on('2026-03-01')).toEqual(['2']);
    // Before any price the first that comes is told, so that it can be said when prices begin.
    expect(await on('2025-12-31')).toEqual(['1']);
    expect((await value('prices.ofItem', { itemId })).prices.map((one) => one.priceUsd)).toEqual([
      '3',
      '1',
      '2',
    ]);
    expect(await problem('prices.ofItem', { itemId: 'gone' })).toEqual({
      code: 'not-found',
      what: 'price item',
    });
  });

  test('a write is told to whoever listens, a read and a refused write are not', async () => {
    const heard: unknown[] = [];
    const stop = transport().subscribe((event) => heard.push(event));
    await expect
      .poll(async () => {
        await value('prices.saveItem', {
          item: { id: 'heard', category: 'other', description: 'Heard', unit: 'each' },
        });
        return heard.at(-1);
      })
      .toEqual({ kind: 'changed', what: 'prices' });
    heard.length = 0;
    await value('jobs.list', { search: '', archived: false });
    await problem('jobs.archive', { id: 'gone', archived: true });
    await value('jobs.create', { name: 'Heard too' });
    await expect.poll(() => heard).toContainEqual({ kind: 'changed', what: 'jobs' });
    expect(heard).toEqual([{ kind: 'changed', what: 'jobs' }]);
    stop();
  });

  test(`saving through a dialog is ${expected.savesFiles ? 'the shell’s' : 'not this shell’s'}`, async () => {
    const file = { fileName: 'list.csv', base64: Buffer.from('a').toString('base64') };
    const reply = await ask('files.save', file);
    expect(reply).toEqual(
      expected.savesFiles
        ? { ok: true, value: { saved: false } }
        : { ok: false, problem: { code: 'not-here', what: 'Saving through a dialog' } },
    );
  });
}

function observed(priceUsd: string) {
  return { priceUsd, observedOn: '2026-05-01' };
}
