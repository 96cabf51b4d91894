import { Decimal } from 'decimal.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimalText, formatUsd, splitUsd, sumUsd, usd, type Usd } from '../../core/units/money.ts';

describe('money', () => {
  it('is rounded to cents half up, which a binary float gets wrong', () => {
    expect(usd('1.005')).toBe('1.01');
    expect(usd('2.675')).toBe('2.68');
    expect(usd('-1.005')).toBe('-1.01');
    expect(usd('-0.004')).toBe('0.00');
  });

  it('adds exactly', () => {
    expect(sumUsd(['0.10', '0.20', '0.30'] as Usd[])).toBe('0.60');
    expect(sumUsd([])).toBe('0.00');
  });

  it('is written with thousands and cents', () => {
    expect(formatUsd('1234567.5' as Usd)).toBe('$1,234,567.50');
    expect(formatUsd('-12' as Usd)).toBe('-$12.00');
    expect(formatUsd('999.995' as Usd)).toBe('$1,000.00');
    expect(formatUsd('-0.001' as Usd)).toBe('$0.00');
  });

  it('writes a small quantity without an exponent', () => {
    expect(decimalText('0.00000001')).toBe('0.00000001');
  });

  it('split over weights conserves every cent', () => {
    const cents = fc.integer({ min: -10_000_000, max: 10_000_000 });
    const weights = fc.array(fc.integer({ min: 0, max: 100_000 }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(cents, weights, (total, shares) => {
        const amount = usd(new Decimal(total).div(100));
        const parts = splitUsd(amount, shares);
        expect(parts).toHaveLength(shares.length);
        expect(sumUsd(parts)).toBe(amount);
        const sum = shares.reduce((a, b) => a + b, 0);
        for (const [index, part] of parts.entries()) {
          const fair = sum === 0 ? (index === 0 ? total : 0) : (total * (shares[index] ?? 0)) / sum;
          expect(Math.abs(Number(part) * 100 - fair)).toBeLessThan(1 + 1e-6);
        }
      }),
    );
  });

  it('gives an odd cent to the first of equal shares', () => {
    expect(splitUsd('10.00' as Usd, [1, 1, 1])).toEqual(['3.34', '3.33', '3.33']);
  });
});
