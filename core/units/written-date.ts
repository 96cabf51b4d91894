/** Month, day and year with strokes, as spreadsheets of the United States write a day: `4/30/2026`, `04/30/2026`. */
const monthFirst = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/;

/** True where a day is written with strokes, and so is read month first. */
export function isMonthFirst(text: string): boolean {
  return monthFirst.test(text);
}

/**
 * Reads a day as a spreadsheet writes it.
 *
 * The rule: strokes are month first (common practice in the United States, no source), with the year in four digits. So
 * `4/5/2026` is April 5, and `30/4/2026` stays as it is, which no calendar has: it is never turned around by a guess.
 * @param text - what stands in the cell.
 * @returns e.g. `4/30/2026` -> `2026-04-30`; any other text unchanged, to be held against the calendar.
 */
export function readDay(text: string): string {
  const [, month = '', day = '', year = ''] = monthFirst.exec(text) ?? [];
  return year === '' ? text : `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
}
