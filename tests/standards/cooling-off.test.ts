import { describe, expect, it, test } from 'vitest';
import { earliestWorkDay, federalHolidays, lastDayToCallOff } from '../../core/offer/cooling-off.ts';
import { depositLimitUsd, stateRulesToVerify } from '../../core/offer/state-rules.ts';
import { usd } from '../../core/units/money.ts';

describe('federal holidays (5 USC 6103(a); the days of 2025 and 2026 as the federal pay calendar lists them, from memory)', () => {
  it('of 2025', () => {
    expect(federalHolidays(2025)).toEqual([
      '2025-01-01',
      '2025-01-20',
      '2025-02-17',
      '2025-05-26',
      '2025-06-19',
      '2025-07-04',
      '2025-09-01',
      '2025-10-13',
      '2025-11-11',
      '2025-11-27',
      '2025-12-25',
    ]);
  });

  it('of 2026', () => {
    expect(federalHolidays(2026)).toEqual([
      '2026-01-01',
      '2026-01-19',
      '2026-02-16',
      '2026-05-25',
      '2026-06-19',
      '2026-07-04',
      '2026-09-07',
      '2026-10-12',
      '2026-11-11',
      '2026-11-26',
      '2026-12-25',
    ]);
  });
});

/** 16 CFR 429.0(f) and 429.1(a): midnight of the third business day; all days but Sundays and federal holidays. From memory. */
test.each([
  // Friday: Saturday, Monday, Tuesday.
  ['2026-05-01', '2026-05-05'],
  // Monday: Tuesday, Wednesday, Thursday.
  ['2026-05-04', '2026-05-07'],
  // Saturday before Memorial Day: Tuesday, Wednesday, Thursday.
  ['2026-05-23', '2026-05-28'],
  // Wednesday before Thanksgiving Day: Friday, Saturday, Monday.
  ['2026-11-25', '2026-11-30'],
  // July 4, 2027 is a Sunday: the Monday after is left out, so Tuesday, Wednesday, Thursday.
  ['2027-07-03', '2027-07-08'],
  // Over the turn of the year: January 1 is a Friday; Thursday December 31, then Saturday, then Monday.
  ['2026-12-30', '2027-01-04'],
])('a contract signed at the home on %s may be called off until %s', (signed, last) => {
  expect(lastDayToCallOff(signed, 3)).toBe(last);
});

test('lumber is ordered and cut from the day after on, and at once where there is no right to cancel', () => {
  expect(earliestWorkDay('2026-05-01', 3)).toBe('2026-05-06');
  expect(earliestWorkDay('2026-05-01', 0)).toBe('2026-05-01');
});

test('the lesser of 10 % and $1,000 holds where a rule has both; a rule that is not known limits nothing (job.md 2.4)', () => {
  expect(depositLimitUsd(ruleOf('ca'), usd('7570'))).toBe('757.00');
  expect(depositLimitUsd(ruleOf('ca'), usd('25000'))).toBe('1000.00');
  expect(depositLimitUsd(ruleOf('none'), usd('25000'))).toBeNull();
  expect(depositLimitUsd(undefined, usd('25000'))).toBeNull();
  expect(stateRulesToVerify.every(({ verified }) => !verified)).toBe(true);
});

function ruleOf(id: string) {
  return stateRulesToVerify.find((one) => one.id === id);
}
