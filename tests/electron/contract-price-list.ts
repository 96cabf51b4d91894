import { gzipSync } from 'node:zlib';
import readXlsxFile from 'read-excel-file/node';
import { expect, test } from 'vitest';
import type { CommandInput } from '../../core/contract/contract.ts';
import { entriesOf } from '../../core/pricing/price-changes.ts';
import type { Asker } from './contract-asker.ts';

const file = (text: string): string => Buffer.from(text, 'utf8').toString('base64');
const yard = 'Item No.;Text;Kind;UOM;Net price;Date\n77;Felt, 30 lb;other;roll;"1.031,50";30.04.2026\n';

type Changes = CommandInput<'prices.change'>['changes'];

function note(priceUsd: string): Changes[number] {
  return { kind: 'note-price', itemId: 'strut', price: { priceUsd, observedOn: '2026-05-01' } };
}

/** Editing the price list, files of suppliers, and the workbook. */
export function checkPriceList(asker: Asker): void {
  const { value, problem, transport } = asker;
  const itemOf = async (id: string) => value('prices.ofItem', { itemId: id });

  test('several changes of the price list hold all or none, and are taken back to the letter', async () => {
    const before = await value('prices.list', {});
    const item = { id: 'strut', category: 'other', description: 'Strut', unit: 'each' } as const;
    expect(
      await problem('prices.change', {
        changes: [
          { kind: 'add-item', item },
          { ...note('3'), itemId: 'gone' },
        ],
      }),
    ).toMatchObject({ code: 'not-found' });
    expect(await value('prices.list', {})).toEqual(before);

    const made = await value('prices.change', {
      changes: [{ kind: 'add-item', item }, note('3'), note('4')],
    });
    expect(made.changed).toBe(3);
    const from = entriesOf(await itemOf('strut'));
    const changed = await value('prices.change', {
      changes: [
        { kind: 'entries', from, to: { ...from, minimumPack: 12, notes: 'by the dozen' } },
        { kind: 'take-back', itemId: 'strut', price: { priceUsd: '3', observedOn: '2026-05-01' } },
      ],
    });
    const after = await value('prices.list', {});
    expect(await itemOf('strut')).toMatchObject({ minimumPack: 12, prices: [{ priceUsd: '4' }] });
    const undone = await value('prices.undo', { stepIds: [made.stepId, changed.stepId] });
    expect(await value('prices.list', {})).toEqual(before);
    await value('prices.undo', { stepIds: [undone.stepId] });
    expect(await value('prices.list', {})).toEqual(after);
  });

  test('an entry that was changed elsewhere is not written over', async () => {
    const from = entriesOf(await itemOf('strut'));
    const change = (to: object): Changes => [{ kind: 'entries', from, to: { ...from, ...to } }];
    await value('prices.change', { changes: change({ notes: 'first' }) });
    expect(await problem('prices.change', { changes: change({ notes: 'second' }) })).toMatchObject({
      code: 'prices',
      fault: { what: 'changed-since', item: 'Strut', entry: 'note' },
    });
    // Another entry of it can be changed all the same.
    await value('prices.change', { changes: change({ species: 'oak' }) });
    expect(await itemOf('strut')).toMatchObject({ notes: 'first', species: 'oak' });
    expect(await problem('prices.undo', { stepIds: [999_999] })).toMatchObject({
      fault: { what: 'undo-gone' },
    });
  });

  test('a supplier’s file is read by its titles, shown, taken in, and its layout remembered', async () => {
    const importId = 'yard';
    const heard: unknown[] = [];
    const stop = transport().subscribe((event) => heard.push(event));
    const opened = await value('prices.importOpen', { importId, base64: file(yard) });
    expect(opened).toMatchObject({
      separator: ';',
      encoding: 'utf-8',
      rows: 1,
      isOurs: false,
      layoutName: null,
    });
    expect(opened.layout.columns.map(({ field }) => field)).toEqual([
      'code',
      null,
      'kind',
      'unit',
      'price',
      'day',
    ]);
    const columns = opened.layout.columns.with(1, { title: 'Text', field: 'description' });
    const layout = { ...opened.layout, columns, constants: { supplier: 'Fernhollow Lumber' } };
    const preview = await value('prices.importPreview', { importId, layout });
    expect(preview).toMatchObject({
      counts: { added: 1, prices: 1, faults: 0 },
      rows: [{ row: 2, does: 'adds', description: 'Felt, 30 lb', toUsd: '1031.50', day: '2026-04-30' }],
    });
    const run = await value('prices.importRun', { importId, layout, rememberAs: 'Fernhollow Lumber' });
    expect(run).toMatchObject({ added: 1, changed: 0, prices: 1 });
    expect(await itemOf('77')).toMatchObject({
      supplier: 'Fernhollow Lumber',
      prices: [{ priceUsd: '1031.50' }],
    });
    expect(await value('prices.layouts', {})).toMatchObject([{ name: 'Fernhollow Lumber' }]);
    await expect
      .poll(() => heard)
      .toContainEqual(expect.objectContaining({ kind: 'importing', importId, stage: 'writing' }));
    stop();
    const again = await value('prices.importOpen', { importId: 'again', base64: file(yard) });
    expect(again).toMatchObject({ layoutName: 'Fernhollow Lumber' });
    expect(
      await problem('prices.importRun', { importId: 'again', layout: again.layout, rememberAs: null }),
    ).toEqual('no problem');
    await value('prices.undo', { stepIds: [run.stepId] });
    expect(await problem('prices.ofItem', { itemId: '77' })).toMatchObject({ code: 'not-found' });
    await value('prices.forgetLayout', { name: 'Fernhollow Lumber' });
    expect(await value('prices.layouts', {})).toEqual([]);
    expect(await problem('prices.forgetLayout', { name: 'Fernhollow Lumber' })).toMatchObject({
      code: 'not-found',
    });
  });

  test('one cell that cannot be read keeps the whole file out, and a file let go of is asked for again', async () => {
    const before = await value('prices.list', {});
    const text = 'description,kind,unit,price\nShim,other,box,6\nWedge,other,box,dear\n';
    const { layout } = await value('prices.importOpen', { importId: 'bad', base64: file(text) });
    expect(await problem('prices.importRun', { importId: 'bad', layout, rememberAs: null })).toMatchObject({
      fault: { what: 'import-faults', faults: 1, first: expect.stringContaining('row 3') },
    });
    expect(await value('prices.list', {})).toEqual(before);
    expect(await value('prices.importStop', { importId: 'bad' })).toEqual({ wasHeld: true });
    expect(await problem('prices.importPreview', { importId: 'bad', layout })).toMatchObject({
      fault: { what: 'import-gone' },
    });
    const twice = {
      ...layout,
      columns: layout.columns.with(1, { title: 'kind', field: 'description' as const }),
    };
    await value('prices.importOpen', { importId: 'bad', base64: file(text) });
    expect(await problem('prices.importPreview', { importId: 'bad', layout: twice })).toMatchObject({
      fault: { what: 'column-twice', field: 'Description' },
    });
  });

  test('a long file that is being read can be stopped, and nothing of it comes in', async () => {
    const before = await value('prices.list', {});
    const rows = Array.from({ length: 15_000 }, (_, at) => `l${at},Item ${at},other,each,${at % 90}.5`);
    const text = `code,description,kind,unit,price\n${rows.join('\n')}\n`;
    const { layout } = await value('prices.importOpen', { importId: 'long', base64: file(text) });
    const running = problem('prices.importRun', { importId: 'long', layout, rememberAs: null });
    await value('prices.importStop', { importId: 'long' });
    expect(await running).toMatchObject({
      fault: { what: expect.stringMatching(/^import-(stopped|gone)$/) },
    });
    expect(await value('prices.list', {})).toEqual(before);
  });

  test.each([
    ['a workbook', Buffer.from('PK\u0003\u0004rest'), { fault: { what: 'not-text', looksLike: 'workbook' } }],
    ['packed bytes', gzipSync('a,b'), { fault: { what: 'not-text' } }],
    ['an open quotation mark', Buffer.from('a,b\n"open,1\n'), { code: 'csv-broken' }],
    ['a mark inside a cell', Buffer.from('a,b\nx"y",1\n'), { code: 'csv-broken' }],
    ['nothing', Buffer.from(''), { code: 'csv-broken' }],
    ['a row without an end', Buffer.from(`a,b\n${'x'.repeat(1_200_000)},1\n`), { code: 'csv-broken' }],
    [
      'columns without an end',
      Buffer.from(`${'a,'.repeat(500)}\n`),
      { fault: { what: 'file-too-long', of: 'columns' } },
    ],
  ])('a file of %s is refused with a reason', async (_what, bytes, expected) => {
    expect(
      await problem('prices.importOpen', { importId: 'hostile', base64: bytes.toString('base64') }),
    ).toMatchObject(expected);
  });

  test.each([
    ['utf-16le', Buffer.from('\uFEFFdescription,price\nFußleiste,3\n', 'utf16le')],
    ['windows-1252', Buffer.from('description,price\nFu\u00dfleiste,3\n', 'latin1')],
    ['utf-8', Buffer.from('\uFEFFdescription,price\nFußleiste,3\n', 'utf8')],
  ])('a file in %s is read letter for letter', async (encoding, bytes) => {
    const opened = await value('prices.importOpen', {
      importId: 'letters',
      base64: bytes.toString('base64'),
    });
    expect(opened.encoding).toBe(encoding);
    expect(opened.head).toEqual([
      ['description', 'price'],
      ['Fußleiste', '3'],
    ]);
  });

  test('the workbook reads back with numbers as numbers, days as days, and no formula', async () => {
    const item = { id: 'formula', category: 'other', description: '=1+1', unit: 'each' } as const;
    await value('prices.change', {
      changes: [
        { kind: 'add-item', item },
        { kind: 'note-price', itemId: 'formula', price: { priceUsd: '12.345', observedOn: '2026-04-30' } },
      ],
    });
    const { fileName, base64 } = await value('prices.exportXlsx', {});
    expect(fileName).toMatch(/^price-list-.*\.xlsx$/);
    const [sheet] = await readXlsxFile(Buffer.from(base64, 'base64'));
    const rows = sheet?.data ?? [];
    const row = rows.find(([id]) => id === 'formula') ?? [];
    const cell = (name: string) => row[rows[0]?.indexOf(name) ?? -1];
    expect(cell('description')).toBe("'=1+1");
    expect(cell('price_usd')).toBe(12.345);
    expect(cell('observed_on')).toEqual(new Date('2026-04-30T00:00:00Z'));
    const prices = (await value('prices.list', {})).map(({ prices: all }) => Math.max(1, all.length));
    expect(rows.length).toBe(1 + prices.reduce((sum, count) => sum + count, 0));
  });
}
