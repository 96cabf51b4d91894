import { parse } from 'csv-parse/sync';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { priceColumns } from '../../core/pricing/price-cells.ts';
import { firstMonthFirstDate, readPriceRows, writePriceRows } from '../../core/pricing/price-csv.ts';
import { priceItemSchema, priceListSchema, unitsOfSale } from '../../core/pricing/price-list.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { addDays } from '../../core/units/civil-date.ts';
import { sampleText, soundJob } from '../job/example-job.ts';

const header = ['id', 'category', 'description', 'unit', 'section', 'length_ft', 'price_usd', 'observed_on'];
const good = ['a', 'lumber', '2x6 of 8 ft', 'each', '2x6', '8', '6.38', '2026-04-13'];
const readBack = (rows: readonly (readonly string[])[]) => readPriceRows(rows[0] ?? [], rows.slice(1));
const change = (column: string, cell: string): string[] =>
  good.map((value, index) => (header[index] === column ? cell : value));

describe('a price list as rows', () => {
  test('reads an item with the defaults of what it leaves out', () => {
    expect(readPriceRows(header, [good])).toEqual({
      ok: true,
      value: [
        priceItemSchema.parse({
          id: 'a',
          category: 'lumber',
          description: '2x6 of 8 ft',
          unit: 'each',
          section: '2x6',
          lengthFt: 8,
          prices: [{ priceUsd: '6.38', observedOn: '2026-04-13' }],
        }),
      ],
    });
  });

  test('gathers rows of one id as prices of one item, and keeps an item without a price', () => {
    const read = readPriceRows(header, [
      good,
      ['b', 'edge', 'Edge', 'each', '', '', '', ''],
      good.with(6, '$1,006.50').with(7, '2026-04-20'),
    ]);
    expect(
      read.ok && read.value.map(({ id, prices }) => [id, prices.map(({ priceUsd }) => priceUsd)]),
    ).toEqual([
      ['a', ['6.38', '1006.50']],
      ['b', []],
    ]);
  });

  test('names missing, unknown and doubled columns, and takes nothing', () => {
    expect(readPriceRows(['id', 'description', 'cost', 'unit', 'unit'], [])).toEqual({
      ok: false,
      problem: {
        code: 'csv-columns',
        missing: ['category', 'price_usd', 'observed_on'],
        unknown: ['cost', 'unit'],
      },
    });
  });

  test.each([
    ['unit', 'yard', 'unit'],
    ['category', '', 'category'],
    ['price_usd', 'six', 'price_usd'],
    ['price_usd', '', 'price_usd'],
    ['price_usd', '-2', 'price_usd'],
    ['observed_on', '13.4.2026', 'observed_on'],
    ['observed_on', '2026-02-30', 'observed_on'],
    ['length_ft', "8'", 'length_ft'],
    ['length_ft', '800', 'length_ft'],
    ['id', '', 'id'],
  ])('names row and column where %s is "%s"', (column, cell, named) => {
    const read = readPriceRows(header, [good, change(column, cell).with(0, column === 'id' ? cell : 'b')]);
    expect(read).toMatchObject({ ok: false, problem: { code: 'csv-row', row: 3, column: named } });
    const sentence = read.ok ? '' : problemSentence(read.problem);
    expect(sentence).toMatch(/^Row 3, column ".*": .*[.] Nothing was imported[.]$/);
    expect(sentence).not.toMatch(/undefined|NaN|zod|Invalid input/);
  });

  test.each([
    ['4/30/2026', '2026-04-30'],
    ['04/05/2026', '2026-04-05'],
    ['12/1/2025', '2025-12-01'],
  ])('reads %s month first, as a spreadsheet of the United States writes a day', (cell, day) => {
    const read = readPriceRows(header, [change('observed_on', cell)]);
    expect(read.ok && read.value[0]?.prices[0]?.observedOn).toBe(day);
    expect(firstMonthFirstDate(header, [good, change('observed_on', cell)])).toBe(cell);
    expect(firstMonthFirstDate(header, [good])).toBe(undefined);
  });

  test.each(['30/4/2026', '4/31/2026', '4/30/26', '4-30-2026'])('never guesses what day %s is', (cell) => {
    const read = readPriceRows(header, [change('observed_on', cell)]);
    expect(read.ok ? '' : problemSentence(read.problem)).toBe(
      `Row 2, column "observed_on": "${cell}": Write a day as 2026-04-30, or month first with the year in full, as 4/30/2026. Nothing was imported.`,
    );
  });

  test('refuses rows of one id that disagree, and a row with too few cells', () => {
    expect(readPriceRows(header, [good, change('length_ft', '10')])).toMatchObject({
      ok: false,
      problem: { code: 'csv-row', row: 3, column: 'length_ft' },
    });
    expect(readPriceRows(header, [good, good.slice(1)])).toMatchObject({
      ok: false,
      problem: { code: 'csv-broken', row: 3 },
    });
  });

  test('writes nothing that a spreadsheet would run', () => {
    const hostile = ['=1+1', '+1', '-1', '@SUM(A1)', '\tx', '\rx', "'=x", "''@x"].map((description, index) =>
      priceItemSchema.parse({ id: String(index), category: 'other', unit: 'each', description }),
    );
    const rows = writePriceRows(hostile);
    const cells = rows.slice(1).flat();
    expect(cells.filter((cell) => /^[=+\-@\t\r]/.test(cell))).toEqual([]);
    expect(readBack(rows)).toEqual({ ok: true, value: hostile });
  });

  test('the sample price list comes back as it went out, also through CSV text', () => {
    const { priceList } = soundJob(sampleText());
    const rows = writePriceRows(priceList);
    expect(rows[0]).toEqual([...priceColumns]);
    expect(readBack(rows)).toEqual({ ok: true, value: priceList });
    const text = rows
      .map((row) => row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(','))
      .join('\r\n');
    const parsed: unknown = parse(text);
    expect(readBack(parsed as string[][])).toEqual({ ok: true, value: priceList });
  });

  test('any price list comes back as it went out', () => {
    const text = fc.string({ maxLength: 12 });
    const date = fc.integer({ min: 0, max: 20_000 }).map((days) => addDays('1990-01-01', days));
    const item = fc.record({
      category: fc.constantFrom('lumber', 'nails', 'sheet', 'plank', 'edge', 'other'),
      description: fc.string({ minLength: 1, maxLength: 20 }),
      unit: fc.constantFrom(...unitsOfSale),
      supplier: text,
      taxable: fc.boolean(),
      retired: fc.boolean(),
      section: text,
      grade: text,
      lengthFt: fc.option(fc.integer({ min: 4, max: 120 }).map((value) => value / 4)),
      nail: text,
      packageLb: fc.option(fc.integer({ min: 1, max: 200 }).map((value) => value / 2)),
      packageCount: fc.option(fc.integer({ min: 1, max: 5000 })),
      widthIn: fc.option(fc.integer({ min: 8, max: 960 }).map((value) => value / 16)),
      lengthIn: fc.option(fc.integer({ min: 16, max: 9600 }).map((value) => value / 16)),
      thicknessIn: fc.option(fc.double({ min: 0.01, max: 6, noNaN: true })),
      prices: fc.array(
        fc.record({
          priceUsd: fc.integer({ min: 0, max: 10_000_000 }).map((value) => String(value / 1000)),
          observedOn: date,
          source: fc.constantFrom('list', 'quote', 'receipt'),
          validUntil: fc.option(date),
        }),
        { maxLength: 4 },
      ),
    });
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 8 }), (items) => {
        const list = priceListSchema.parse(items.map((one, index) => ({ ...one, id: `item ${index}` })));
        expect(readBack(writePriceRows(list))).toEqual({ ok: true, value: list });
      }),
    );
  });
});
