import { addDays, daysBetween } from '../units/civil-date.ts';

/** Days of the week, Monday first. */
const monday = 0;
const thursday = 3;
const sunday = 6;

/**
 * Federal holidays of a year, each on its own day. Source: 5 USC 6103(a), from memory: verify.
 * @returns eleven days, e.g. of 2026 Memorial Day on 2026-05-25 and Thanksgiving Day on 2026-11-26.
 */
export function federalHolidays(year: number): readonly string[] {
  const on = (month: number, day: number): string =>
    `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  return [
    on(1, 1),
    nthOf(on(1, 1), monday, 3),
    nthOf(on(2, 1), monday, 3),
    // The last Monday of May lies within its last seven days.
    nthOf(on(5, 25), monday, 1),
    on(6, 19),
    on(7, 4),
    nthOf(on(9, 1), monday, 1),
    nthOf(on(10, 1), monday, 2),
    on(11, 11),
    nthOf(on(11, 1), thursday, 4),
    on(12, 25),
  ];
}

/**
 * The last day on which a contract that was signed at the home may be called off, until midnight.
 *
 * Business days are all but Sundays and federal holidays; Saturdays count. Where a holiday falls on a Sunday the Monday
 * after it is left out too, which only makes the day later. Source: 16 CFR 429.0 and 429.1, from memory: verify.
 * @param signedOn - day of signing, which does not count.
 * @param businessDays - as the rule says; 3 by the federal one. [d]
 * @returns e.g. signed on Friday 2026-05-01 -> Tuesday 2026-05-05 (Saturday, Monday, Tuesday).
 */
export function lastDayToCallOff(signedOn: string, businessDays: number): string {
  let day = signedOn;
  for (let left = businessDays; left > 0; ) {
    day = addDays(day, 1);
    if (isBusinessDay(day)) left -= 1;
  }
  return day;
}

/**
 * The first day on which lumber may be ordered or cut and work begin without risk that the contract is called off.
 * @param signedOn - day of signing.
 * @param businessDays - as the rule says. [d]
 * @returns the day after the last one to call it off, e.g. signed on 2026-05-01 with 3 days -> 2026-05-06.
 */
export function earliestWorkDay(signedOn: string, businessDays: number): string {
  return businessDays === 0 ? signedOn : addDays(lastDayToCallOff(signedOn, businessDays), 1);
}

function isBusinessDay(day: string): boolean {
  if (weekday(day) === sunday || isHoliday(day)) return false;
  const before = addDays(day, -1);
  return !(weekday(before) === sunday && isHoliday(before));
}

function isHoliday(day: string): boolean {
  return federalHolidays(Number(day.slice(0, 4))).includes(day);
}

/** The n-th such weekday from a day on, that day included. */
function nthOf(from: string, wanted: number, count: number): string {
  return addDays(from, ((wanted - weekday(from) + 7) % 7) + 7 * (count - 1));
}

/** 0 is Monday: 1970-01-05 was one. */
function weekday(day: string): number {
  return ((daysBetween('1970-01-05', day) % 7) + 7) % 7;
}
