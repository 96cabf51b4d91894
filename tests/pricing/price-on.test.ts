import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { priceOn } from '../../core/pricing/price-on.ts';
import { addDays } from '../../core/units/civil-date.ts';
import { priceItem } from './make-price.ts';

const seen = (priceUsd: string, observedOn: string, validUntil: string | null = null) => ({
  priceUsd,
  observedOn,
  validUntil,
});

describe('the price of a day', () => {
  const item = priceItem({
    unit: 'each',
    description: '2x6 of 16 ft',
    prices: [seen('12.10', '2026-03-16'), seen('12.90', '2026-04-13'), seen('11.80', '2026-02-09')],
  });
  const on = (asOf: string) => priceOn(item, asOf, 45);

  test('is the newest that was seen on or before it, whatever the order of the list', () => {
    expect(on('2026-04-30')).toMatchObject({
      ok: true,
      value: { observation: { priceUsd: '12.90' }, ageDays: 17 },
    });
    expect(on('2026-04-13')).toMatchObject({
      ok: true,
      value: { observation: { priceUsd: '12.90' }, ageDays: 0 },
    });
    expect(on('2026-04-12')).toMatchObject({ ok: true, value: { observation: { priceUsd: '12.10' } } });
    expect(on('2026-02-09')).toMatchObject({ ok: true, value: { observation: { priceUsd: '11.80' } } });
  });

  test('of two prices of one day is the later in the list', () => {
    const twice = priceItem({ unit: 'each', prices: [seen('1', '2026-04-13'), seen('2', '2026-04-13')] });
    expect(priceOn(twice, '2026-04-30', 45)).toMatchObject({
      ok: true,
      value: { observation: { priceUsd: '2' } },
    });
  });

  test('is not there before the first one was seen, and the problem names that day', () => {
    expect(on('2026-02-08')).toEqual({
      ok: false,
      problem: { code: 'price-not-yet', item: '2x6 of 16 ft', asOf: '2026-02-08', firstOn: '2026-02-09' },
    });
    expect(priceOn(priceItem({ unit: 'each', description: 'Bare' }), '2026-04-30', 45)).toEqual({
      ok: false,
      problem: { code: 'no-price', item: 'Bare' },
    });
  });

  test('is flagged once it is older than the limit, not on the last day of it', () => {
    const one = priceItem({ unit: 'each', prices: [seen('5', '2026-03-01')] });
    const stale = (asOf: string) => {
      const price = priceOn(one, asOf, 45);
      return price.ok && price.value.stale;
    };
    expect(stale('2026-04-15')).toBe(false);
    expect(stale('2026-04-16')).toBe(true);
  });

  test('is flagged once the supplier no longer holds it', () => {
    const held = priceItem({ unit: 'each', prices: [seen('5', '2026-04-01', '2026-04-20')] });
    expect(priceOn(held, '2026-04-20', 45)).toMatchObject({ ok: true, value: { stale: false } });
    expect(priceOn(held, '2026-04-21', 45)).toMatchObject({ ok: true, value: { stale: true } });
  });

  test('never goes back to an older sight as days pass, and does not heed later ones', () => {
    const offsets = fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(offsets, fc.integer({ min: 60, max: 80 }), (days, later) => {
        const prices = days.map((day, index) => seen(String(index), addDays('2026-01-01', day)));
        const plain = priceItem({ unit: 'each', prices });
        const more = priceItem({
          unit: 'each',
          prices: [...prices, seen('999', addDays('2026-01-01', later + 1))],
        });
        let last = '';
        for (let day = Math.min(...days); day <= later; day += 1) {
          const asOf = addDays('2026-01-01', day);
          const price = priceOn(plain, asOf, 45);
          expect(price.ok && price.value.observation.observedOn >= last).toBe(true);
          if (price.ok) last = price.value.observation.observedOn;
          expect(priceOn(more, asOf, 45)).toEqual(price);
        }
      }),
    );
  });
});
