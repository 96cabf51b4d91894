import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, daysBetween, isCivilDate } from '../../core/units/civil-date.ts';

const text = (day: number): string => new Date(day * 86_400_000).toISOString().slice(0, 10);
describe('days of the calendar without a clock', () => {
  test.each([
    ['2026-04-30', '2026-05-15', 15],
    ['2026-12-25', '2027-01-09', 15],
    ['2024-02-28', '2024-03-01', 2],
    ['2026-02-28', '2026-03-01', 1],
    ['2000-02-28', '2000-03-01', 2],
    ['1900-02-28', '1900-03-01', 1],
    ['2026-05-15', '2026-04-30', -15],
  ])('from %s to %s there are %i days', (from, to, days) => {
    expect(daysBetween(from, to)).toBe(days);
    expect(addDays(from, days)).toBe(to);
  });

  test('no day is past 9999-12-31 or before 0000-01-01, so that dates compare as text', () => {
    expect(addDays('9999-12-20', 15)).toBe('9999-12-31');
    expect(addDays('9999-12-31', 1)).toBe('9999-12-31');
    expect(addDays('9999-12-20', 11)).toBe('9999-12-31');
    expect(addDays('0000-01-03', -15)).toBe('0000-01-01');
  });

  test('a day that the calendar lacks is no date', () => {
    expect(isCivilDate('2024-02-29')).toBe(true);
    expect(
      ['2026-02-29', '2026-13-01', '2026-00-10', '2026-04-31', '2026-4-3', '30.4.2026', ''].filter(
        isCivilDate,
      ),
    ).toEqual([]);
  });

  // The machine's own calendar (ECMAScript, proleptic Gregorian in UTC) as a second construction.
  test('sums and differences agree with the machine calendar over 400 years', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -73_000, max: 73_000 }),
        fc.integer({ min: -20_000, max: 20_000 }),
        (day, days) => {
          expect(addDays(text(day), days)).toBe(text(day + days));
          expect(daysBetween(text(day), text(day + days))).toBe(days);
        },
      ),
    );
  });
});
