import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { guessLayout, fittedLayout } from '../../core/pricing/import/guess-layout.ts';
import { importLayoutSchema, type ImportLayout } from '../../core/pricing/import/layout.ts';
import { startImport, type Imported } from '../../core/pricing/import/read-import.ts';
import { writePriceRows } from '../../core/pricing/price-csv.ts';
import type { PriceItem } from '../../core/pricing/price-list.ts';
import { anyPriceList } from './any-price-list.ts';
import { priceItem } from './make-price.ts';

const today = '2026-05-15';

function imported(
  rows: readonly (readonly string[])[],
  change: Partial<ImportLayout> = {},
  list: readonly PriceItem[] = [],
): Imported {
  const [header = [], ...under] = rows;
  const layout = importLayoutSchema.parse({ ...guessLayout(header, under, 1), ...change });
  const reading = startImport(layout, list, today);
  for (const [index, row] of under.entries()) reading.take(row, index + 2);
  return reading.end();
}

/** What stands on the list once the changes are made, by the simplest of means. */
function applied(list: readonly PriceItem[], { changes }: Imported): readonly PriceItem[] {
  const items = new Map(list.map((item) => [item.id, item]));
  for (const change of changes) {
    if (change.kind === 'add-item') items.set(change.item.id, { ...change.item, prices: [] });
    if (change.kind === 'entries')
      items.set(change.to.id, { ...change.to, prices: items.get(change.to.id)?.prices ?? [] });
    if (change.kind === 'note-price') {
      const item = items.get(change.itemId);
      if (item !== undefined) items.set(item.id, { ...item, prices: [...item.prices, change.price] });
    }
  }
  return [...items.values()];
}

const pricesOf = ({ changes }: Imported): readonly string[] =>
  changes.flatMap((change) => (change.kind === 'note-price' ? [change.price.priceUsd] : []));

describe('a supplier’s file against the price list', () => {
  test('a list that is written out comes into an empty shop as the same list', () => {
    fc.assert(
      fc.property(anyPriceList, (items) => {
        const read = imported(writePriceRows(items));
        expect(read.faults).toEqual([]);
        expect(applied([], read)).toEqual(items);
      }),
    );
  });

  test('a list that is written out changes no item of the shop that it came from', () => {
    fc.assert(
      fc.property(anyPriceList, (items) => {
        const read = imported(writePriceRows(items), {}, items);
        expect(read.faults).toEqual([]);
        expect(read.counts).toMatchObject({ added: 0, changed: 0 });
        expect(read.changes.every(({ kind }) => kind === 'note-price')).toBe(true);
      }),
    );
  });

  test('rows are read by the titles of their columns, headings and blank rows passed over', () => {
    const read = imported([
      ['Item No.', 'Description', 'Size', 'Length (ft)', 'UOM', 'Net price', 'Effective'],
      ['', 'DIMENSION LUMBER', '', '', '', '', ''],
      ['10245', '2X6 12 SPF', '2 X 6', '12', 'MBF', '$845.00', '4/30/2026'],
      ['', '', '', '', '', '', ''],
    ]);
    expect(read.counts).toMatchObject({ rows: 2, skipped: 1, added: 1, prices: 1, faults: 0 });
    expect(read.changes).toMatchObject([
      {
        kind: 'add-item',
        item: { id: '10245', category: 'lumber', section: '2x6', lengthFt: 12, unit: 'MBF' },
      },
      { kind: 'note-price', price: { priceUsd: '845.00', observedOn: '2026-04-30', source: 'list' } },
    ]);
  });

  test('every cell that cannot be read is named by row and column, and none of the row comes in', () => {
    const read = imported([
      ['description', 'kind', 'unit', 'price', 'date'],
      ['Shims', 'other', 'box', '6.20', '2026-04-01'],
      ['Felt', 'cloth', 'yard', 'dear', '2026-02-30'],
    ]);
    expect(read.faults.map(({ row, field }) => [row, field])).toEqual([
      [3, 'kind'],
      [3, 'unit'],
      [3, 'price'],
      [3, 'day'],
    ]);
    expect(read.counts).toMatchObject({ added: 1, faults: 4 });
  });

  test('a blank cell leaves what the item has, and its wording stays the shop’s', () => {
    const mine = priceItem({
      id: 'felt',
      category: 'other',
      unit: 'roll',
      description: 'Felt, 30 lb',
      notes: 'ask for the long roll',
      supplier: 'Fernhollow Lumber',
    });
    const rows = [
      ['code', 'description', 'notes', 'price', 'minimum pack'],
      ['felt', 'FELT 30#', '', '31.50', '4'],
    ];
    const read = imported(rows, {}, [mine]);
    expect(applied([mine], read)[0]).toMatchObject({
      description: 'Felt, 30 lb',
      notes: 'ask for the long roll',
      minimumPack: 4,
      prices: [{ priceUsd: '31.50', observedOn: today }],
    });
    expect(applied([mine], imported(rows, { takesWording: true }, [mine]))[0]?.description).toBe('FELT 30#');
  });

  test('a code of another supplier is another item', () => {
    const theirs = priceItem({
      id: '77',
      unit: 'each',
      description: 'Bracket',
      supplier: 'Brindle Hardware',
    });
    const rows = [
      ['code', 'description', 'kind', 'unit', 'supplier', 'price'],
      ['77', 'Vent', 'other', 'each', 'Fernhollow Lumber', '3.10'],
    ];
    const first = imported(rows, {}, [theirs]);
    expect(first.changes).toMatchObject([{ item: { id: 'fernhollow-lumber-77' } }, {}]);
    const again = imported(rows, {}, applied([theirs], first));
    expect(again.counts).toMatchObject({ added: 0, found: { code: 1 } });
  });

  test('without a code, lumber is found by section, length, grade and supplier, all else by its description', () => {
    const board = priceItem({
      id: 'a',
      unit: 'each',
      section: '2x6',
      grade: 'No.2',
      lengthFt: 12,
      supplier: 'Fernhollow Lumber',
    });
    const better = priceItem({ ...board, id: 'b', unit: 'each', grade: 'Select' });
    const felt = priceItem({
      id: 'c',
      category: 'other',
      unit: 'roll',
      description: 'Felt, 30 lb',
      supplier: 'Fernhollow Lumber',
    });
    const header = ['description', 'section', 'grade', 'length', 'supplier', 'price'];
    const read = imported(
      [
        header,
        ['whatever', '2X6', 'no.2', "12'", 'FERNHOLLOW  lumber', '9'],
        ['felt, 30 LB', '', '', '', 'Fernhollow Lumber', '31'],
        ['whatever', '2x6', '', '12', 'Fernhollow Lumber', '8'],
      ],
      {},
      [board, better, felt],
    );
    expect(read.rows.map(({ row, foundBy }) => [row, foundBy])).toEqual([
      [2, 'size'],
      [3, 'description'],
    ]);
    expect(read.faults).toMatchObject([{ row: 4, field: 'description' }]);
    expect(read.faults[0]?.detail).toContain('more than one item');
  });

  test('two rows of one item that disagree are told', () => {
    const read = imported([
      ['code', 'description', 'kind', 'unit', 'grade', 'price'],
      ['1', 'Board', 'lumber', 'each', 'No.2', '3'],
      ['1', 'Board', 'lumber', 'each', 'Select', '3'],
    ]);
    expect(read.faults).toMatchObject([{ row: 3, field: 'grade' }]);
    expect(read.faults[0]?.detail).toContain('row 2');
  });

  test('an amount and a day that read two ways are shown as they stand', () => {
    const read = imported([
      ['description', 'kind', 'unit', 'price', 'date'],
      ['Board', 'lumber', 'each', '1,234', '4/5/2026'],
    ]);
    expect(read.twoWays).toEqual({ day: '4/5/2026', number: '1,234' });
  });
});

function boardOf(lengthFt: number): PriceItem {
  return priceItem({
    id: `l${lengthFt}`,
    unit: 'each',
    section: '2x6',
    lengthFt,
    description: `2x6, ${lengthFt} ft`,
  });
}

function boardOn(day: string): readonly string[] {
  return ['Board', 'lumber', 'each', '2', day];
}

describe('days of a file', () => {
  const header = ['description', 'kind', 'unit', 'price', 'date'];

  test('one that reads in a single order says how the others are meant', () => {
    const read = imported([header, boardOn('4/5/2026'), boardOn('4/30/2026')]);
    expect(read.twoWays.day).toBeNull();
    expect(imported([header, boardOn('4/5/2026'), boardOn('2026-04-30')]).twoWays.day).toBe('4/5/2026');
  });

  test('are never turned around: a month that no calendar has is refused at its cell', () => {
    const read = imported([header, boardOn('30/4/2026')], { dayOrder: 'month-first' });
    expect(read.faults).toMatchObject([{ row: 2, field: 'day' }]);
  });

  test.each([
    ['4/30/26', 'month-first', '2026-04-30'],
    ['30-4-2026', 'day-first', '2026-04-30'],
    ['26.4.30', 'year-first', '2026-04-30'],
    ['2026-04-30 14:05:00', 'day-first', '2026-04-30'],
  ] as const)('%s, %s, is %s', (text, dayOrder, expected) => {
    const read = imported([header, boardOn(text)], { dayOrder });
    expect(read.rows[0]?.day).toBe(expected);
  });
});

describe('units of a file', () => {
  const header = ['section', 'length', 'unit', 'price'];

  test.each([
    // Board measure: nominal T x W x L / 12, so 2x6x12 = 12 BF and 2x6x16 = 16 BF (PS 20, American Softwood Lumber
    // Standard, board measure; from memory).
    ['MBF', '12', '$750.00', '9'],
    ['MBF', '16', '$750.00', '12'],
    ['BF', '16', '0.75', '12'],
    ['LF', '16', '0.80', '12.8'],
    ['MLF', '12', '800', '9.6'],
  ])('a price for %s of 2x6, %s ft, %s, is %s for one board', (unit, length, price, each) => {
    const list = [boardOf(12), boardOf(16)];
    expect(pricesOf(imported([header, ['2x6', length, unit, price]], {}, list))).toEqual([each]);
  });

  test('a thousand square feet of sheathing is priced by the foot', () => {
    const read = imported([
      ['description', 'kind', 'unit', 'price'],
      ['Sheathing', 'panels', 'MSF', '$850.00'],
    ]);
    expect(read.changes).toMatchObject([{ item: { unit: 'SF' } }, { price: { priceUsd: '0.85' } }]);
  });

  test('lengths in inches become feet', () => {
    const read = imported(
      [
        ['section', 'Length (in)', 'unit', 'price'],
        ['2x4', '104 5/8', 'each', '3.98'],
        ['2x4', '96', 'each', '3.50'],
      ],
      {},
    );
    expect(read.faults).toEqual([]);
    expect(
      read.changes.flatMap((change) => (change.kind === 'add-item' ? [change.item.lengthFt] : [])),
    ).toEqual([104.625 / 12, 8]);
  });

  test('a price in a unit that its item cannot be reckoned in is refused at its cell', () => {
    const nails = priceItem({ id: 'n', category: 'nails', unit: 'box', description: 'Nails' });
    const read = imported(
      [
        ['description', 'unit', 'price'],
        ['nails', 'lb', '2'],
      ],
      {},
      [nails],
    );
    expect(read.faults).toMatchObject([{ row: 2, field: 'unit' }]);
  });
});

describe('how a file is written', () => {
  const header = ['description', 'kind', 'unit', 'price', 'date'];

  test('decimal commas are seen in the prices, and day first in the days', () => {
    const layout = guessLayout(header, [['Board', 'lumber', 'each', '1.234,50', '30.04.2026']], 1);
    expect([layout.decimalSign, layout.dayOrder]).toEqual(['comma', 'day-first']);
    const read = imported([header, ['Board', 'lumber', 'each', '1.234,50', '30.04.2026']]);
    expect(read.changes[1]).toMatchObject({ price: { priceUsd: '1234.50', observedOn: '2026-04-30' } });
  });

  test('a remembered layout finds its columns wherever they have moved', () => {
    const layout = guessLayout(['Cost', 'Text'], [], 1);
    const known = {
      ...layout,
      columns: [
        { title: 'Cost', field: 'price' as const },
        { title: 'Text', field: 'description' as const },
      ],
    };
    expect(fittedLayout(known, ['Text', 'Pallet', 'Cost'])?.columns.map(({ field }) => field)).toEqual([
      'description',
      null,
      'price',
    ]);
    expect(fittedLayout(known, ['Text', 'Price'])).toBeUndefined();
  });
});
