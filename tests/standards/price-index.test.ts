import { readFileSync } from 'node:fs';
import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import { percentile } from '../../core/pricing/history/percentile.ts';
import { readIndexSeries, rebased } from '../../core/pricing/history/index-series.ts';
import { readCsv } from '../../electron/services/csv-text.ts';

/**
 * Source: U.S. Bureau of Labor Statistics, regional table "Softwood lumber", producer price index, 1982 = 100, not seasonally
 * adjusted, January 2025 to March 2026, as read in it; the last four months were preliminary then. That it is commodity 0811
 * of the index is inferred from the table's name.
 */
const text = readFileSync(new URL('../../fixtures/softwood-lumber-index.csv', import.meta.url), 'utf8');

function published() {
  const table = readCsv(text);
  if (!table.ok) throw new Error('the fixture is CSV');
  const series = readIndexSeries([table.value.header, ...table.value.rows]);
  if (!series.ok) throw new Error(JSON.stringify(series.problem));
  return series.value;
}

describe('a published index of softwood lumber', () => {
  test('comes in whole: its twelve months of 2025 average what the table prints for the year', () => {
    const of2025 = published().filter(({ month }) => month.startsWith('2025'));
    const sum = of2025.reduce<Decimal>((total, { value }) => total.plus(value), new Decimal(0));
    expect(of2025).toHaveLength(12);
    expect(sum.div(12).toFixed(3)).toBe('264.926');
  });

  test('beside a price follows p2 = p1 x I2 / I1, the rule for adjusting a price by an index', () => {
    // $10.00 in January 2025 would be $10.00 x 267.927 / 267.542 = $10.0144 in March 2026: 100.14 where January is 100.
    const against = rebased([{ from: '2025-01-06', costUsd: '10.00' }], published());
    expect(against?.baseMonth).toBe('2025-01');
    expect(against?.index.at(-1)).toEqual({ month: '2026-03', value: '100.14' });
    // March 2025: 287.961 / 267.542 = 1.0763.
    expect(against?.index[2]?.value).toBe('107.63');
  });

  test('moved in a month by the middle of its fourteen changes, between the seventh and the eighth of them', () => {
    const values = published().map(({ value }) => new Decimal(value));
    const changes = values.slice(1).map((value, at) =>
      value
        .div(values[at] ?? value)
        .minus(1)
        .times(100),
    );
    const sorted = changes.toSorted((a, b) => a.comparedTo(b));
    const middle = sorted[6]?.plus(sorted[7] ?? 0).div(2);
    expect(changes).toHaveLength(14);
    expect(percentile(changes, 0.5).toFixed(6)).toBe(middle?.toFixed(6));
    // 0.9 x 15 = 13.5: half way from the 13th change (+3.963 %, to February 2026) to the 14th (+4.749 %, to March 2025).
    expect(percentile(changes, 0.9).toFixed(2)).toBe('4.36');
  });
});
