import { daysBetween } from '../../core/units/civil-date.ts';

/** How many daily backups are kept as they are, then one a week, then one a month. Our own choice. */
export const keptDays = 7;
export const keptWeeks = 5;
export const keptMonths = 12;

/**
 * Which daily backups the rotation keeps: the newest of each of the last `keptDays` days that have one, of the last
 * `keptWeeks` weeks that have one and of the last `keptMonths` months that have one.
 * @param days - civil days with a daily backup, in any order.
 * @returns the days to keep; 40 days in a row keep 7 days, the newest of 5 weeks and of the months they reach into.
 */
export function daysToKeep(days: readonly string[]): ReadonlySet<string> {
  const newestFirst = [...new Set(days)].toSorted((a, b) => (a < b ? 1 : -1));
  return new Set([
    ...newestFirst.slice(0, keptDays),
    ...newestOfEach(newestFirst, weekOf).slice(0, keptWeeks),
    ...newestOfEach(newestFirst, (day) => day.slice(0, 7)).slice(0, keptMonths),
  ]);
}

function newestOfEach(newestFirst: readonly string[], groupOf: (day: string) => string): readonly string[] {
  const newest = new Map<string, string>();
  for (const day of newestFirst) if (!newest.has(groupOf(day))) newest.set(groupOf(day), day);
  return [...newest.values()];
}

/** Weeks run from Monday, as in ISO 8601; 2024-01-01 was one. */
function weekOf(day: string): string {
  return String(Math.floor(daysBetween('2024-01-01', day) / 7));
}
