import type { Problem } from '../../problems/problem.ts';
import { fail, ok, type Result } from '../../result.ts';
import { isCivilDate } from '../../units/civil-date.ts';
import type { DayOrder } from './layout.ts';

const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/;
const yearLast = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4}|\d{2})$/;
const shortYearFirst = /^(\d{2})[-/.](\d{1,2})[-/.](\d{1,2})$/;

/**
 * Reads a day as a file writes it, with hyphens, strokes or points.
 *
 * The rule: a year of four digits in front is always a year; else the order is the one that is told, for the whole file,
 * and a day that has no such month stays unread: it is never turned around by a guess. A year of two digits is of this
 * century. A time behind the day is passed over.
 * @param text - what stands in the cell.
 * @param order - which part comes first.
 * @returns e.g. `4/30/26`, month first -> `2026-04-30`.
 */
export function readWrittenDay(text: string, order: DayOrder): Result<string, Problem> {
  const bare = text.trim().replace(/[T ]\d{1,2}:\d{2}.*$/, '');
  const parts = partsOf(bare, order);
  const day = parts === undefined ? '' : parts.map((part) => part.padStart(2, '0')).join('-');
  if (isCivilDate(day)) return ok(day);
  return fail({ code: 'entry-invalid', what: `"${text.slice(0, 40)}"`, detail: details[order] });
}

/** True where a day would also read, and otherwise, with month and day changed over: `4/5/2026`. */
export function isDayTwoWays(text: string): boolean {
  const month = readWrittenDay(text, 'month-first');
  const day = readWrittenDay(text, 'day-first');
  return month.ok && day.ok && month.value !== day.value;
}

/** True where a day reads in one order and not with month and day changed over: `4/30/2026`. */
export function decidesOrder(text: string, order: DayOrder): boolean {
  if (order === 'year-first' || yearFirst.test(text.trim())) return false;
  const other = order === 'month-first' ? 'day-first' : 'month-first';
  return readWrittenDay(text, order).ok && !readWrittenDay(text, other).ok;
}

/**
 * The order that the days of a file are written in, as far as they tell.
 * @returns the order; undefined where nothing tells.
 */
export function guessDayOrder(texts: readonly string[]): DayOrder | undefined {
  for (const text of texts) {
    const [, first = '', second = ''] = yearLast.exec(text.trim()) ?? [];
    if (Number(first) > 12 && Number(second) <= 12) return 'day-first';
    if (Number(second) > 12) return 'month-first';
  }
  return texts.some((text) => yearFirst.test(text.trim())) ? 'year-first' : undefined;
}

const details: Readonly<Record<DayOrder, string>> = {
  'month-first':
    'It is no day, read month first. Write it as 4/30/2026 or 2026-04-30, or choose another order.',
  'day-first': 'It is no day, read day first. Write it as 30/4/2026 or 2026-04-30, or choose another order.',
  'year-first': 'It is no day, read year first. Write it as 2026-04-30, or choose another order.',
};

function partsOf(text: string, order: DayOrder): readonly string[] | undefined {
  const first = yearFirst.exec(text);
  if (first !== null) return first.slice(1);
  if (order === 'year-first') {
    const short = shortYearFirst.exec(text);
    return short === null ? undefined : [century(short[1] ?? ''), ...short.slice(2)];
  }
  const last = yearLast.exec(text);
  if (last === null) return undefined;
  const [, one = '', two = '', year = ''] = last;
  return order === 'month-first' ? [century(year), one, two] : [century(year), two, one];
}

function century(year: string): string {
  return year.length === 2 ? `20${year}` : year;
}
