/**
 * Days of the civil calendar as text, `2026-04-30`, without zone or clock.
 * Day numbers count from 1970-01-01 by the proleptic Gregorian calendar (leap years: every 4th, not every 100th, but
 * every 400th), so that differences and sums of days need no clock of the machine.
 */

const daysBeforeMonth = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334] as const;

/** Number of days from 0000-01-01 to 1970-01-01. */
const epoch = 719528;

type Parts = { readonly year: number; readonly month: number; readonly day: number };

/** True where the text is a day that the calendar has, e.g. `2024-02-29` but not `2026-02-29`. */
export function isCivilDate(text: string): boolean {
  const parts = partsOf(text);
  return (
    parts !== undefined &&
    parts.month >= 1 &&
    parts.month <= 12 &&
    parts.day >= 1 &&
    parts.day <= daysInMonth(parts.year, parts.month)
  );
}

/**
 * Days from one civil date to another.
 * @param from - earlier day.
 * @param to - later day; before `from` gives a negative number.
 * @returns whole days, e.g. 2026-04-30 to 2026-05-15 -> 15. [d]
 */
export function daysBetween(from: string, to: string): number {
  return dayNumber(to) - dayNumber(from);
}

/**
 * The civil date so many days later.
 * @param date - the day to start from.
 * @param days - whole days, negative for earlier. [d]
 * @returns e.g. 2026-12-25 and 15 -> 2027-01-09; never past 9999-12-31 nor before 0000-01-01, since dates are written
 * with four digits for the year and compared as text.
 */
export function addDays(date: string, days: number): string {
  const target = Math.min(Math.max(dayNumber(date) + days, firstDayOf(0)), firstDayOf(10_000) - 1);
  // A first guess that is never late, then up to the year that holds the day.
  let year = Math.floor((target + epoch) / 366);
  while (firstDayOf(year + 1) <= target) year += 1;
  let rest = target - firstDayOf(year);
  let month = 1;
  while (rest >= daysInMonth(year, month)) {
    rest -= daysInMonth(year, month);
    month += 1;
  }
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(rest + 1).padStart(2, '0')}`;
}

/** The earliest of some civil dates; the text form sorts as the calendar does. */
export function earliestDate(first: string, others: Iterable<string>): string {
  let earliest = first;
  for (const other of others) if (other < earliest) earliest = other;
  return earliest;
}

function dayNumber(date: string): number {
  const parts = partsOf(date);
  if (parts === undefined) throw new Error(`not a civil date: ${date}`);
  const leapDay = parts.month > 2 && isLeap(parts.year) ? 1 : 0;
  return firstDayOf(parts.year) + (daysBeforeMonth[parts.month - 1] ?? 0) + leapDay + parts.day - 1;
}

function firstDayOf(year: number): number {
  const before = year - 1;
  const leaps = Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400) + 1;
  return year * 365 + leaps - epoch;
}

function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeap(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

function isLeap(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

function partsOf(text: string): Parts | undefined {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  return match === null
    ? undefined
    : { year: Number(match[1]), month: Number(match[2]), day: Number(match[3]) };
}
