import { describe, expect, test } from 'vitest';
import { basketOn, basketSteps, materialBasket } from '../../../core/pricing/history/material-basket.ts';
import { sumUsd } from '../../../core/units/money.ts';
import { sampleText, soundJob, soundResult } from '../../job/example-job.ts';

const job = soundJob(sampleText());
const { estimate } = soundResult(job);
const basket = materialBasket(estimate);
const materials = estimate.lines.filter(({ kind }) => kind === 'material');

describe('the materials of a job on a past day', () => {
  test('cost on the day of the estimate what its lines say, each to the cent', () => {
    const today = basketOn(basket, job.priceList, job.asOf);
    expect(today.lines.map(({ thenUsd }) => thenUsd)).toEqual(basket.lines.map(({ costUsd }) => costUsd));
    expect(today.totalUsd).toBe(sumUsd(materials.map(({ costUsd }) => costUsd)));
  });

  test('count what is on no price list, such as a delivery, alike on every day', () => {
    const delivered = soundJob(sampleText());
    delivered.settings.suppliers.push({ name: 'Fernhollow Lumber', deliveryUsd: '65' });
    const withDelivery = materialBasket(soundResult(delivered).estimate);
    expect(withDelivery).toMatchObject({
      fixedUsd: '65.00',
      fixed: ['Delivery of lumber, Fernhollow Lumber'],
    });
    const sums = (day: string) =>
      [withDelivery, basket].map((one) => Number(basketOn(one, job.priceList, day).totalUsd));
    for (const day of ['2026-03-10', '2026-04-20']) {
      const [dearer = 0, plain = 0] = sums(day);
      expect(dearer - plain).toBeCloseTo(65, 6);
    }
  });

  test('cost by hand what one dearer item adds', () => {
    const line = basket.lines.find(({ unit }) => unit === 'each');
    const items = job.priceList.map((item) =>
      item.id === line?.itemId && item.unit === 'each'
        ? {
            ...item,
            prices: item.prices.map((price) => ({ ...price, priceUsd: String(Number(price.priceUsd) + 1) })),
          }
        : item,
    );
    const before = basketOn(basket, job.priceList, job.asOf).totalUsd;
    const after = basketOn(basket, items, job.asOf).totalUsd;
    // One dollar more for each of so many boards.
    expect(Number(after) - Number(before)).toBeCloseTo(Number(line?.quantity), 6);
  });

  test('have no sum before every item had a price, and each later change of a price is one step', () => {
    const [first] = basketSteps(basket, job.priceList);
    const used = job.priceList.filter(({ id }) => basket.lines.some(({ itemId }) => itemId === id));
    const begins = used.map(({ prices }) => prices.map(({ observedOn }) => observedOn).toSorted()[0] ?? '');
    expect(first?.from).toBe(begins.toSorted().at(-1));
    expect(basketOn(basket, job.priceList, '1999-01-01').totalUsd).toBe(null);
  });
});
