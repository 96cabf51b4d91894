import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { entriesOf } from '../../core/pricing/price-changes.ts';
import type { PriceItem } from '../../core/pricing/price-list.ts';
import { bulkChange, changedPrice, roundings } from '../../core/pricing/table/bulk-change.ts';
import { readEntryText, writeEntryText } from '../../core/pricing/table/entry-text.ts';
import { blockOf, pasteBlock } from '../../core/pricing/table/paste-block.ts';
import { heldPrice, withChanges, writeCell, type CellColumn } from '../../core/pricing/table/table-cells.ts';
import { readNumber } from '../../core/pricing/table/written-number.ts';
import { readUnit } from '../../core/pricing/table/words-of-sale.ts';
import { anyPriceList } from './any-price-list.ts';
import { priceItem } from './make-price.ts';

const today = '2026-05-15';
const columns: readonly CellColumn[] = [
  'description',
  'price',
  'unit',
  'supplier',
  'category',
  'section',
  'grade',
  'species',
  'lengthFt',
  'minimumPack',
  'taxable',
  'notes',
];
const quoted = (cell: string): string => (/["\t\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

describe('a cell of the price list', () => {
  test.each([
    ['lengthFt', "12'", 12],
    ['lengthFt', '12\' 6"', 12.5],
    ['lengthFt', '14 ft', 14],
    ['unit', 'per MBF', 'MBF'],
    ['unit', 'sq. ft.', 'SF'],
    ['category', 'Sheet goods', 'sheet'],
    ['taxable', 'N', false],
    ['minimumPack', '', 1],
    ['widthIn', "4'", 48],
    ['thicknessIn', '15/32', 15 / 32],
    ['packageLb', '5 lb', 5],
    ['section', '2 X 6', '2x6'],
  ] as const)('%s reads "%s"', (name, text, value) => {
    expect(readEntryText(name, text)).toEqual({ ok: true, value: { [name]: value } });
  });

  test.each([
    ['lengthFt', '99'],
    ['lengthFt', 'long'],
    ['unit', 'yard'],
    ['unit', 'MSF'],
    ['minimumPack', '2.5'],
    ['minimumPack', '0'],
    ['description', ' '],
  ] as const)('%s refuses "%s"', (name, text) => {
    expect(readEntryText(name, text).ok).toBe(false);
  });

  test('reads as it is written, for every entry of every item', () => {
    fc.assert(
      fc.property(anyPriceList, (items) => {
        const entries = columns.filter((column) => column !== 'price');
        const read = (item: PriceItem) =>
          entries.map((name) => readEntryText(name, writeEntryText(name, entriesOf(item))));
        expect(items.map(read)).toEqual(
          items.map((item) => entries.map((name) => ({ ok: true, value: { [name]: item[name] } }))),
        );
      }),
    );
  });

  test.each([
    ['1,234.5', 'point', '1234.5'],
    ['1.234,5', 'comma', '1234.5'],
    ['1,234', 'point', '1234'],
    ['1,234', 'comma', '1.234'],
    ['$ 12', 'point', '12'],
    ['.75', 'point', '0.75'],
  ] as const)('the number %s by %s is %s', (text, sign, value) => {
    expect(readNumber(text, sign)).toEqual({ ok: true, value });
  });

  test.each(['12,34', '1,23,456', '1.2.3', '(12)', '1e3', '--1', ''])(
    '"%s" is no number by point',
    (text) => {
      expect(readNumber(text, 'point').ok).toBe(false);
    },
  );

  test('a thousand of a unit is told from the unit', () => {
    expect(readUnit('MSF')).toEqual({ unit: 'SF', per: 1000 });
    expect(readUnit('$/MBF')).toEqual({ unit: 'MBF', per: 1 });
    expect(readUnit('furlong')).toBeUndefined();
  });
});

describe('a block that is pasted', () => {
  const items = [1, 2, 3].map((number) =>
    priceItem({ id: `i${number}`, unit: 'each', description: `Item ${number}`, prices: [] }),
  );

  test('goes into the cells from the first one on, and names what cannot be read', () => {
    const paste = pasteBlock('4.50\teach\n\tMBF\ncheap\tyard\n9\teach', items, ['price', 'unit'], today);
    expect(paste.cells.map(({ itemId, column, from, to }) => [itemId, column, from, to])).toEqual([
      ['i1', 'price', '', '4.50'],
      ['i2', 'unit', 'each', 'MBF'],
    ]);
    expect(paste.faults.map(({ row, column, typed }) => [row, column, typed])).toEqual([
      [3, 'price', 'cheap'],
      [3, 'unit', 'yard'],
    ]);
    expect(paste.rowsBeyond).toBe(1);
    expect(paste.changes).toMatchObject([
      { kind: 'note-price', itemId: 'i1', price: { priceUsd: '4.50', observedOn: today } },
      { kind: 'entries', to: { id: 'i2', unit: 'MBF' } },
    ]);
  });

  test('cells in quotes may hold line breaks, tabs and quotes; the last line break begins no row', () => {
    expect(blockOf('a\tb\r\n"c\nd"\t"e ""f"""\r\n')).toEqual([
      ['a', 'b'],
      ['c\nd', 'e "f"'],
    ]);
    expect(blockOf('one')).toEqual([['one']]);
    expect(blockOf('a\n\nb')).toEqual([['a'], [''], ['b']]);
  });

  test('what is copied out of a list changes nothing in it, and makes any other list of its length the same', () => {
    fc.assert(
      fc.property(anyPriceList, anyPriceList, (from, onto) => {
        const rows = Math.min(from.length, onto.length);
        const source = from.slice(0, rows);
        const text = source
          .map((item) => columns.map((column) => quoted(writeCell(column, item, today))).join('\t'))
          .join('\r\n');
        expect(pasteBlock(text, source, columns, today)).toMatchObject({ changes: [], faults: [] });
        const paste = pasteBlock(text, onto.slice(0, rows), columns, today);
        expect(paste.faults).toEqual([]);
        const after = withChanges(onto, paste.changes);
        for (const [index, item] of source.entries())
          for (const column of columns) {
            const is = after[index] === undefined ? '' : writeCell(column, after[index], today);
            const was = onto[index] === undefined ? '' : writeCell(column, onto[index], today);
            const wanted = writeCell(column, item, today);
            // A blank price takes none away.
            const isBlankPrice = column === 'price' && wanted === '';
            expect(column === 'price' ? Number(is) : is).toBe(
              column === 'price' ? Number(isBlankPrice ? was : wanted) : wanted,
            );
          }
      }),
    );
  });
});

describe('a change of many prices', () => {
  test.each([
    ['10.00', 'percent', '4.5', 'cent', '10.45'],
    ['6.38', 'percent', '7', 'places', '6.83'],
    // 0.0725 x 1.1 = 0.07975, half up at the four places that it has.
    ['0.0725', 'percent', '10', 'places', '0.0798'],
    ['6.38', 'percent', '-5', 'five-cents', '6.05'],
    ['6.38', 'amount', '0.5', 'quarter', '7'],
    ['6.38', 'amount', '-0.38', 'dollar', '6'],
    // Exactly between two quarters goes up.
    ['1.00', 'amount', '0.125', 'quarter', '1.25'],
  ] as const)('%s by %s %s to the %s is %s', (price, by, value, rounding, expected) => {
    expect(changedPrice(price, { by, value, rounding }).toFixed()).toBe(expected);
  });

  test('agrees with whole-number arithmetic, for every price, percentage and rounding', () => {
    const steps = { cent: 1n, 'five-cents': 5n, quarter: 25n, dollar: 100n } as const;
    fc.assert(
      fc.property(
        fc.bigInt({ min: 0n, max: 10_000_000n }),
        fc.bigInt({ min: -9_999n, max: 50_000n }),
        fc.constantFrom('cent', 'five-cents', 'quarter', 'dollar'),
        (cents, hundredths, rounding) => {
          // cents x (10000 + hundredths) / 10000, half up to whole steps.
          const step = steps[rounding] * 10_000n;
          const wanted = ((2n * cents * (10_000n + hundredths) + step) / (2n * step)) * steps[rounding];
          const got = changedPrice(written(cents), { by: 'percent', value: written(hundredths), rounding });
          expect(got.times(100).toFixed()).toBe(String(wanted));
        },
      ),
    );
  });

  test('leaves what has no price, what would fall below nothing, and what stays the same', () => {
    const rule = { by: 'amount', value: '-1', rounding: 'cent' } as const;
    const change = bulkChange(
      [pricedItem('none', null), pricedItem('low', '0.50'), pricedItem('fine', '3')],
      rule,
      today,
    );
    expect(change.left).toEqual([
      { description: 'none', why: 'no-price' },
      { description: 'low', why: 'below-zero' },
    ]);
    expect(change.rows).toMatchObject([{ itemId: 'fine', fromUsd: '3', toUsd: '2' }]);
    expect(bulkChange([pricedItem('fine', '3')], { ...rule, value: '0' }, today).left).toMatchObject([
      { why: 'same' },
    ]);
  });

  test('shows each changed item at its new price, and no other item otherwise', () => {
    fc.assert(
      fc.property(anyPriceList, fc.constantFrom(...roundings), (items, rounding) => {
        const change = bulkChange(items, { by: 'percent', value: '12.5', rounding }, today);
        const after = withChanges(items, change.changes);
        const news = new Map(change.rows.map(({ itemId, toUsd }) => [itemId, toUsd]));
        for (const [index, item] of items.entries())
          expect(after[index] === undefined ? undefined : heldPrice(after[index], today)?.priceUsd).toBe(
            news.get(item.id) ?? heldPrice(item, today)?.priceUsd,
          );
      }),
    );
  });
});

/** Hundredths as a decimal. */
function written(hundredths: bigint): string {
  const size = hundredths < 0n ? -hundredths : hundredths;
  return `${hundredths < 0n ? '-' : ''}${size / 100n}.${String(size % 100n).padStart(2, '0')}`;
}

function pricedItem(id: string, priceUsd: string | null): PriceItem {
  const prices = priceUsd === null ? [] : [{ priceUsd, observedOn: '2026-01-01' }];
  return priceItem({ id, unit: 'each', description: id, prices });
}
