import { describe, expect, test } from 'vitest';
import { readPriceRows } from '../../core/pricing/price-csv.ts';
import { problemSentence } from '../../core/problems/sentence.ts';

const header = ['id', 'category', 'description', 'unit', 'section', 'length_ft', 'price_usd', 'observed_on'];
const good = ['a', 'lumber', '2x6 of 8 ft', 'each', '2x6', '8', '6.38', '2026-04-13'];
const change = (column: string, cell: string): string[] =>
  good.map((value, index) => (header[index] === column ? cell : value));
const sentenceOf = (columns: readonly string[]) => {
  const read = readPriceRows(columns, []);
  return read.ok ? '' : problemSentence(read.problem);
};

describe('what is told of a price list file that cannot be read', () => {
  test('tells a header without rows, and a column without a name', () => {
    expect(sentenceOf(header)).toBe(
      'The price list has no rows under its header. Nothing was imported; write one row for each price.',
    );
    expect(sentenceOf([...header, ''])).toContain('Not known: a column without a name.');
    expect(sentenceOf([...header, 'x'.repeat(500)])).toContain(`Not known: ${'x'.repeat(39)}….`);
  });

  test.each([
    [
      'price_usd',
      'six',
      'Row 2, column "price_usd": "six" is not a number. Write plain digits, like 12 or 12.5.',
    ],
    ['unit', 'y'.repeat(500), `Row 2, column "unit": "${'y'.repeat(39)}…": Choose one of: each,`],
    ['length_ft', '9'.repeat(400), `Row 2, column "length_ft": "${'9'.repeat(39)}…": Enter 60 or less.`],
    ['price_usd', '9'.repeat(400), `Row 2, column "price_usd": "${'9'.repeat(39)}…" is not a number.`],
    ['price_usd', '99999999', 'Row 2, column "price_usd": 99999999 is out of range.'],
  ])('repeats a cell of %s once, and not more than 40 characters of it', (column, cell, start) => {
    const read = readPriceRows(header, [change(column, cell)]);
    const sentence = read.ok ? '' : problemSentence(read.problem);
    expect(sentence.startsWith(start)).toBe(true);
    expect(sentence).not.toMatch(/Infinity|NaN|e\+/);
  });
});
