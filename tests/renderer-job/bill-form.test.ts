import { describe, expect, test } from 'vitest';
import { percentInPlace, inPlaceAt } from '../../renderer/job/billing/bill-form.ts';
import { typedPercent } from '../../renderer/job/billing/billing-words.ts';
import { typedDays, typedLineUsd } from '../../renderer/job/billing/change-form.ts';

describe('a bill as it is typed', () => {
  test('takes 14 of 42 tails as 33.33 percent, and shows 14 beside it again', () => {
    expect(percentInPlace('14', '42')).toBe('33.33');
    expect(inPlaceAt('33.33', '42')).toBe('14');
  });

  test.each(['', 'ten', '43', '-1'])('takes no percentage from "%s" of 42 tails', (typed) => {
    expect(percentInPlace(typed, '42')).toBeNull();
  });

  test('reads a percentage with its sign, and a blank as nothing done', () => {
    expect(typedPercent(' 50 % ')).toBe('50');
    expect(typedPercent('')).toBe('0');
  });
});

describe('a change order as it is typed', () => {
  const line = {
    id: 'line-1',
    phase: 'Framing',
    kind: 'labour',
    description: 'Rotted tail repaired',
    quantity: '3',
    unit: 'each',
    unitPriceUsd: '$1,145.50',
    unitCostUsd: '0',
    unitHours: '0',
    taxable: false,
  } as const;

  test('adds a line up while it reads, and not while it does not', () => {
    expect(typedLineUsd(line)).toBe('3436.50');
    expect(typedLineUsd({ ...line, quantity: 'three' })).toBeNull();
  });

  test('reads days with and without their word, earlier ones below zero', () => {
    expect([typedDays('2 days'), typedDays('-1'), typedDays('soon')]).toEqual([2, -1, null]);
  });
});
