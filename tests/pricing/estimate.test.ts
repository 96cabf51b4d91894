import { Decimal } from 'decimal.js';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { UnplannedStock } from '../../core/cutting/cut-plan-types.ts';
import type { EstimateTotal } from '../../core/pricing/estimate-types.ts';
import { makeEstimate } from '../../core/pricing/estimate.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { decimalText, sumUsd } from '../../core/units/money.ts';
import { amounts, estimateOf, seen } from './make-estimate-of.ts';
import { priceItem } from './make-price.ts';
import { jobOf, takeoffLine, takeoffOf } from './make-takeoff.ts';

const stock = { section: '2x6', grade: 'No.2' };
const twoSheets = (more: Record<string, unknown> = {}) => [
  priceItem({ id: 'taxed', category: 'sheet', unit: 'each', ...seen('10', more) }),
  priceItem({ id: 'exempt', category: 'sheet', unit: 'each', taxable: false, ...seen('10') }),
];
const taxedAndNot = [
  takeoffLine('taxed', { kind: 'sheets', itemId: 'taxed', sheets: 10, areaSqFt: 320 }),
  takeoffLine('exempt', { kind: 'sheets', itemId: 'exempt', sheets: 10, areaSqFt: 320 }),
];
const validUntil = (more: Record<string, unknown>) =>
  estimateOf(jobOf(twoSheets(more), { money: { quoteValidDays: 15 } }), takeoffOf(taxedAndNot)).validUntil;
const stale = (priceStaleDays: number) =>
  estimateOf(jobOf(twoSheets(), { money: { priceStaleDays } }), takeoffOf(taxedAndNot)).lines.map(
    ({ stalePriceOf }) => stalePriceOf,
  );

describe('what the estimate lacks', () => {
  const lumber = takeoffLine('extenders', { kind: 'lumber', stock, marks: ['A-E01'] });
  const unplanned: UnplannedStock = {
    group: '2x6 No.2',
    stock,
    marks: ['A-E01'],
    problem: { code: 'no-price', item: '2x6 No.2' },
  };

  test('names every item without a price, each once, and what the takeoff could not count', () => {
    const later = priceItem({
      id: 'panel',
      category: 'sheet',
      unit: 'sheet',
      description: 'Panel',
      prices: [{ priceUsd: '30', observedOn: '2026-06-01' }],
    });
    const odd = priceItem({ id: 'edge', category: 'edge', unit: 'lb', description: 'Edge', ...seen('3') });
    const estimate = estimateOf(
      jobOf([later, odd]),
      takeoffOf(
        [
          lumber,
          takeoffLine('16d', { kind: 'nails', nail: '16d common', count: 10, pounds: decimalText('0.2') }),
          takeoffLine('sheathing', { kind: 'sheets', itemId: 'panel', sheets: 2, areaSqFt: 64 }),
          takeoffLine('gone', { kind: 'planks', itemId: 'gone', lengthFt: decimalText(9), areaSqFt: 4 }),
          takeoffLine('edge', { kind: 'edge', lengthIn: 100, pieces: 1 }),
        ],
        [{ code: 'no-wage' }, { code: 'no-wage' }],
      ),
      [],
      [unplanned],
    );
    expect(estimate.lines).toEqual([]);
    expect(estimate.lacks.map((problem) => [problem.code, 'item' in problem ? problem.item : ''])).toEqual([
      ['no-wage', ''],
      ['no-price', '2x6 No.2'],
      ['no-price', '16d common nails'],
      ['price-not-yet', 'Panel'],
      ['no-price', 'gone'],
      ['unit-does-not-fit', 'Edge'],
    ]);
  });
});

const priced = (priceUsd: string, more: Record<string, unknown> = {}) =>
  priceItem({
    id: 'taxed',
    category: 'sheet',
    unit: 'each',
    description: 'Panel',
    ...seen(priceUsd),
    ...more,
  });
const bySize = (priceUsd: string) =>
  estimateOf(
    jobOf([priced(priceUsd, { unit: 'SF', widthIn: 48, lengthIn: 96 })]),
    takeoffOf(taxedAndNot.slice(0, 1)),
  );
const nail = (id: string, priceUsd: string) =>
  priceItem({
    id,
    category: 'nails',
    unit: 'box',
    nail: '16d common',
    packageLb: 5,
    description: id,
    ...seen(priceUsd),
  });

describe('a price of nothing', () => {
  test('counts as no price, so that a blank column of prices cannot pass for a gift', () => {
    for (const priceUsd of ['0', '0.00', '0.004']) {
      const estimate = estimateOf(jobOf([priced(priceUsd)]), takeoffOf(taxedAndNot.slice(0, 1)));
      expect(estimate.lines).toEqual([]);
      expect(estimate.lacks.map(problemSentence)).toEqual([
        'Panel has a price of $0.00, which counts as no price. Enter what it costs on the price list.',
      ]);
    }
  });

  test('is one that comes to less than half a cent for a piece, whatever it is for a unit', () => {
    // A sheet of 32 sq ft: 32 x 0.0001 = 0.0032, and 32 x 0.0002 = 0.0064, which is a cent.
    expect(bySize('0.0001').lacks.map(({ code }) => code)).toEqual(['price-of-nothing']);
    expect(bySize('0.0002').lines.map(({ unitCostUsd }) => unitCostUsd)).toEqual(['0.01']);
  });

  test('of one package of nails is named even where another is bought', () => {
    const estimate = estimateOf(
      jobOf([nail('free', '0'), nail('bought', '19')]),
      takeoffOf([
        takeoffLine('16d', { kind: 'nails', nail: '16d common', count: 10, pounds: decimalText('0.2') }),
      ]),
    );
    expect(estimate.lines.map(({ description }) => description)).toEqual(['bought']);
    expect(estimate.lacks).toEqual([{ code: 'price-of-nothing', item: 'free' }]);
  });
});

describe('tax, validity and old prices', () => {
  test('the client pays tax on the price of taxable lines alone', () => {
    const money = { taxRule: 'client-pays', taxPercent: '7', contingencyPercent: '0', overheadPercent: '25' };
    const estimate = estimateOf(jobOf(twoSheets(), { money }), takeoffOf(taxedAndNot));
    // Cost 200, overhead 50, profit 25: price 275, half of it taxable.
    expect(amounts(estimate)).toMatchObject({
      price: '275.00',
      'materials-tax': '0.00',
      'client-tax': '9.63',
      total: '284.63',
    });
  });

  test('the contractor pays tax on the cost of taxable material alone', () => {
    const money = { taxRule: 'contractor-pays', taxPercent: '7' };
    const estimate = estimateOf(jobOf(twoSheets(), { money }), takeoffOf(taxedAndNot));
    expect(amounts(estimate)).toMatchObject({
      'materials-tax': '7.00',
      direct: '207.00',
      'client-tax': '0.00',
    });
  });

  test('what the takeoff marks as untaxed stays untaxed, whatever the price list says', () => {
    const untaxed = taxedAndNot.map((line) => ({ ...line, taxable: false }));
    const money = { taxRule: 'contractor-pays', taxPercent: '7' };
    const estimate = estimateOf(jobOf(twoSheets(), { money }), takeoffOf(untaxed));
    expect(amounts(estimate)['materials-tax']).toBe('0.00');
  });

  test('every step names the steps that it adds up', () => {
    const money = { taxRule: 'client-pays', taxPercent: '7', roundToUsd: '10' };
    const { totals } = estimateOf(jobOf(twoSheets(), { money }), takeoffOf(taxedAndNot));
    const step = amounts(estimateOf(jobOf(twoSheets(), { money }), takeoffOf(taxedAndNot)));
    const added = (key: EstimateTotal['key']) =>
      sumUsd(
        totals
          .filter((total) =>
            totals.find((one) => one.key === key)?.madeOf.some(({ ref }) => ref === `total/${total.key}`),
          )
          .map(({ amountUsd }) => amountUsd),
      );
    expect([added('direct'), added('price'), added('total')]).toEqual([step.direct, step.price, step.total]);
    expect(totals.find(({ key }) => key === 'materials-tax')?.madeOf.map(({ ref }) => ref)).toEqual([
      'setting/money.taxRule',
    ]);
  });

  test("a quote is good until the shop's own day, or until the first supplier lets go", () => {
    expect(validUntil({})).toBe('2026-05-15');
    expect(validUntil({ validUntil: '2026-05-09' })).toBe('2026-05-09');
    expect(validUntil({ validUntil: '2026-05-20' })).toBe('2026-05-15');
  });

  test('a quote of the last days of the calendar is good to its end, and no longer', () => {
    const late = { ...jobOf(twoSheets(), { money: { quoteValidDays: 15 } }), asOf: '9999-12-20' };
    expect(estimateOf(late, takeoffOf(taxedAndNot)).validUntil).toBe('9999-12-31');
  });

  test('a price that the supplier let go before the day of the estimate leaves the quote good for that day alone', () => {
    const lapsed = estimateOf(jobOf(twoSheets({ validUntil: '2026-04-20' })), takeoffOf(taxedAndNot));
    expect(lapsed.validUntil).toBe('2026-04-30');
    expect(lapsed.lines.map(({ stalePriceOf }) => stalePriceOf)).toEqual(['2026-04-13', null]);
  });

  test('a price older than the limit is flagged on its line with its day', () => {
    expect(stale(16)).toEqual(['2026-04-13', '2026-04-13']);
    expect(stale(17)).toEqual([null, null]);
  });

  test('a margin of 100 % is refused', () => {
    const money = { profitMethod: 'margin', profitPercent: '100' };
    expect(makeEstimate(jobOf(twoSheets(), { money }), takeoffOf(taxedAndNot), [], [])).toMatchObject({
      ok: false,
      problem: { code: 'margin-too-high' },
    });
  });
});

describe('an estimate adds up by hand', () => {
  const extra = fc.record({
    kind: fc.constantFrom('material', 'equipment', 'sub', 'permit', 'disposal', 'allowance'),
    quantity: fc.integer({ min: 0, max: 5000 }).map((value) => String(value / 100)),
    unitCostUsd: fc.integer({ min: 0, max: 300_000 }).map((value) => String(value / 1000)),
    taxable: fc.boolean(),
  });
  const shop = fc.record({
    taxRule: fc.constantFrom('contractor-pays', 'client-pays', 'none'),
    taxPercent: fc.integer({ min: 0, max: 1500 }).map((value) => String(value / 100)),
    profitMethod: fc.constantFrom('markup', 'margin'),
    profitPercent: fc.integer({ min: 0, max: 60 }).map(String),
    roundToUsd: fc.constantFrom('0', '1', '5', '10', '50'),
  });

  test('whatever its lines: sums, steps and shares agree to the cent', () => {
    fc.assert(
      fc.property(fc.array(extra, { maxLength: 30 }), shop, (extras, money) => {
        const extraCosts = extras.map((one, index) => ({
          ...one,
          id: `x${index}`,
          description: 'x',
          phase: 'Framing',
          unit: 'lot',
        }));
        const estimate = estimateOf(
          jobOf([], { money }, { extraCosts }),
          takeoffOf(extraCosts.map(({ id }) => takeoffLine(id, { kind: 'extra', extraId: id }))),
        );
        const step = amounts(estimate);
        const cost = (wanted: (kind: string) => boolean) =>
          sumUsd(estimate.lines.filter(({ kind }) => wanted(kind)).map(({ costUsd }) => costUsd));
        expect(step.materials).toBe(cost((kind) => kind === 'material'));
        expect(step.other).toBe(cost((kind) => kind !== 'material'));
        expect(step.direct).toBe(sumUsd([step.materials, step.labour, step.other, step['materials-tax']]));
        expect(step.price).toBe(
          sumUsd([step.direct, step.contingency, step.overhead, step.profit, step.rounding]),
        );
        expect(step.total).toBe(sumUsd([step.price, step['client-tax']]));
        expect(estimate.totalUsd).toBe(step.total);
        const shares = sumUsd(estimate.lines.map(({ priceUsd }) => priceUsd));
        expect(shares).toBe(step.price);
        for (const line of estimate.lines)
          expect(
            new Decimal(line.quantity).times(line.unitCostUsd).minus(line.costUsd).abs().lte('0.005'),
          ).toBe(true);
      }),
    );
  });
});
