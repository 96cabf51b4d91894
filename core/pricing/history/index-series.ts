import { Decimal } from 'decimal.js';
import { z } from 'zod';
import type { Problem } from '../../problems/problem.ts';
import { fail, ok, type Result } from '../../result.ts';
import { addDays, isCivilDate } from '../../units/civil-date.ts';
import { decimalText } from '../../units/money.ts';
import { stepOn } from './price-steps.ts';
import type { CostStep } from './price-risk.ts';

/** A month of the calendar: `2026-03`. */
export const monthSchema = z.string().regex(/^\d{4}-(0[1-9]|1[0-2])$/);

/** What an index stood at in a month. */
export const indexValueSchema = z.strictObject({ month: monthSchema, value: z.string().min(1).max(40) });
export type IndexValue = z.infer<typeof indexValueSchema>;

const mostMonths = 2400;

/**
 * Reads an index series from a table of two columns, month and value; a heading row is passed over. Months are written
 * `2026-03`, `2026-03-15`, `3/2026` or `Mar 2026`; a day is taken for its month. Values are plain decimals above zero, with a
 * point. The later row of one month would hide the other, so a month twice is a fault.
 * @param rows - cells as text, the first row included.
 * @returns months in order; or what is wrong, with its row from 1.
 */
export function readIndexSeries(
  rows: readonly (readonly string[])[],
): Result<readonly IndexValue[], Problem> {
  const values = new Map<string, string>();
  for (const [at, cells] of rows.entries()) {
    const [monthCell = '', valueCell = ''] = cells.map((cell) => cell.trim());
    if (monthCell === '' && valueCell === '') continue;
    const month = readMonth(monthCell);
    const value = readValue(valueCell);
    // The first row may be a heading: neither of its cells can be read then.
    if (at === 0 && month === undefined && value === undefined) continue;
    if (month === undefined)
      return broken(at, `"${monthCell}" is no month. Write it like 2026-03, 3/2026 or Mar 2026`);
    if (value === undefined)
      return broken(at, `"${valueCell}" is no value above zero. Write it like 214.6, with a point`);
    if (values.has(month)) return broken(at, `the month ${month} stands there twice`);
    values.set(month, value);
  }
  if (values.size === 0) return broken(0, 'no month with a value stands in it');
  if (values.size > mostMonths) return broken(mostMonths, `it has more than ${mostMonths} months`);
  return ok(
    [...values].map(([month, value]) => ({ month, value })).toSorted((a, b) => (a.month < b.month ? -1 : 1)),
  );
}

/** Two lines held against each other: both 100 in the first month that both have. */
export type Rebased = {
  readonly baseMonth: string;
  readonly index: readonly { readonly month: string; readonly value: string }[];
  readonly prices: readonly { readonly from: string; readonly value: string }[];
};

/**
 * Holds an index against what something cost: both become 100 in the first month that both have. A month's price is the one
 * that held on its last day.
 * @param steps - what it cost, earliest first. [$]
 * @param index - months in order.
 * @returns to hundredths half up; undefined where they have no month in common. Worked: a price of $8 in 2026-03 and an index of
 * 250 then: $9 later stands at 112.50, an index of 260 at 104.00.
 */
export function rebased(steps: readonly CostStep[], index: readonly IndexValue[]): Rebased | undefined {
  for (const { month, value } of index) {
    const held = stepOn(steps, lastDayOf(month));
    if (held === undefined || new Decimal(held.costUsd).isZero()) continue;
    return {
      baseMonth: month,
      index: index.map((one) => ({ month: one.month, value: against(one.value, value) })),
      prices: steps.map((step) => ({ from: step.from, value: against(step.costUsd, held.costUsd) })),
    };
  }
  return undefined;
}

function against(one: string, base: string): string {
  return new Decimal(one).div(base).times(100).toFixed(2, Decimal.ROUND_HALF_UP);
}

/** Last day of a month, e.g. 2024-02 -> 2024-02-29. */
export function lastDayOf(month: string): string {
  const [year = '', number = ''] = month.split('-');
  const next =
    number === '12'
      ? `${String(Number(year) + 1).padStart(4, '0')}-01-01`
      : `${year}-${String(Number(number) + 1).padStart(2, '0')}-01`;
  return addDays(next, -1);
}

const monthNames = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

function readMonth(cell: string): string | undefined {
  const iso = /^(\d{4})-(\d{1,2})(?:-(\d{1,2}))?$/.exec(cell);
  const slashed = /^(\d{1,2})\/(\d{4})$/.exec(cell);
  const named = /^([a-z]{3,9})\.?[\s-]+(\d{4})$/i.exec(cell);
  const year = iso?.[1] ?? slashed?.[2] ?? named?.[2];
  const name = named?.[1]?.toLowerCase().slice(0, 3);
  const number = iso?.[2] ?? slashed?.[1] ?? (name === undefined ? undefined : monthNames.indexOf(name) + 1);
  if (year === undefined || number === undefined) return undefined;
  const month = `${year}-${String(number).padStart(2, '0')}`;
  const day = (iso?.[3] ?? '1').padStart(2, '0');
  return isCivilDate(`${month}-${day}`) && year > '0000' ? month : undefined;
}

function readValue(cell: string): string | undefined {
  if (!/^\d{1,12}(\.\d{1,10})?$/.test(cell)) return undefined;
  const value = new Decimal(cell);
  return value.isZero() ? undefined : decimalText(value);
}

function broken(at: number, detail: string): Result<never, Problem> {
  return fail({ code: 'csv-broken', row: at + 1, detail });
}
