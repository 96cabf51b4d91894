import { Decimal } from 'decimal.js';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeEstimate } from '../../core/pricing/estimate.ts';
import type { Estimate, EstimateTotal } from '../../core/pricing/estimate-types.ts';
import type { JobInput } from '../../core/job/job-file.ts';
import type { Takeoff } from '../../core/takeoff/takeoff-types.ts';
import type { CutPlan, UnplannedStock } from '../../core/cutting/cut-plan-types.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { decimalText, sumUsd, type Usd } from '../../core/units/money.ts';
import { priceItem } from './make-price.ts';
import { boardOf, cutPlanOf, jobOf, takeoffLine, takeoffOf } from './make-takeoff.ts';

const estimateOf = (
  input: JobInput,
  takeoff: Takeoff,
  cutPlans: readonly CutPlan[] = [],
  unplanned: readonly UnplannedStock[] = [],
): Estimate => {
  const made = makeEstimate(input, takeoff, cutPlans, unplanned);
  if (!made.ok) throw new Error(made.problem.code);
  return made.value;
};
const amounts = (estimate: Estimate) =>
  Object.fromEntries(estimate.totals.map(({ key, amountUsd }) => [key, amountUsd])) as Record<
    EstimateTotal['key'],
    Usd
  >;
const seen = (priceUsd: string, more: Record<string, unknown> = {}) => ({
  prices: [{ priceUsd, observedOn: '2026-04-13', ...more }],
});
const stock = { section: '2x6', grade: 'No.2' };
const boards = [
  priceItem({ id: 'b12', unit: 'each', ...stock, lengthFt: 12, supplier: 'The yard', ...seen('9.94') }),
  priceItem({ id: 'b16', unit: 'each', ...stock, lengthFt: 16, ...seen('13.40') }),
];
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

describe('lumber in the estimate', () => {
  const extenders = takeoffLine('extenders', { kind: 'lumber', stock, marks: ['A-E01', 'A-E02', 'A-E03'] });
  const blocks = takeoffLine(
    'blocks',
    { kind: 'lumber', stock, marks: ['A-B01'] },
    { phase: 'Fascia and trim' },
  );
  const plan = cutPlanOf('2x6 No.2', [
    boardOf(1, 'b16', 16, 1340, { 'A-E01': 90, 'A-E02': 90 }),
    boardOf(2, 'b12', 12, 994, { 'A-E03': 90, 'A-B01': 20 }),
    boardOf(3, 'b12', 12, 994, {}),
  ]);
  const estimate = estimateOf(jobOf(boards), takeoffOf([extenders, blocks]), [plan]);

  test('has one line for each length bought, at the boards bought and not the net feet', () => {
    expect(
      estimate.lines.map(({ id, quantity, unit, unitCostUsd, costUsd, supplier }) => ({
        id,
        quantity,
        unit,
        unitCostUsd,
        costUsd,
        supplier,
      })),
    ).toEqual([
      {
        id: 'lumber-2x6-No.2-b12',
        quantity: '2',
        unit: 'each',
        unitCostUsd: '9.94',
        costUsd: '19.88',
        supplier: 'The yard',
      },
      {
        id: 'lumber-2x6-No.2-b16',
        quantity: '1',
        unit: 'each',
        unitCostUsd: '13.4',
        costUsd: '13.40',
        supplier: '',
      },
    ]);
  });

  test('stands with the use that takes most of its length', () => {
    expect(estimate.lines.map(({ takeoffLineId, phase }) => [takeoffLineId, phase])).toEqual([
      ['extenders', 'Framing'],
      ['extenders', 'Framing'],
    ]);
  });

  test('moves to the other use where that takes more', () => {
    const mostlyBlocks = cutPlanOf('2x6 No.2', [boardOf(1, 'b16', 16, 1340, { 'A-E01': 50, 'A-B01': 90 })]);
    const moved = estimateOf(jobOf(boards), takeoffOf([extenders, blocks]), [mostlyBlocks]);
    expect(moved.lines.map(({ takeoffLineId, phase }) => [takeoffLineId, phase])).toEqual([
      ['blocks', 'Fascia and trim'],
    ]);
  });

  test('leads back to its boards and its price', () => {
    expect(estimate.lines[0]?.madeOf.map(({ ref }) => ref)).toEqual([
      'line/extenders',
      'line/blocks',
      'board/2x6 No.2/2',
      'board/2x6 No.2/3',
      'price/b12',
    ]);
  });
});

describe('other lines of the estimate', () => {
  const list = [
    priceItem({
      id: 'n5',
      category: 'nails',
      unit: 'box',
      nail: '16d common',
      packageLb: 5,
      ...seen('19.80'),
    }),
    priceItem({ id: 'n1', category: 'nails', unit: 'lb', nail: '16d common', packageLb: 1, ...seen('5.49') }),
    priceItem({ id: 'panel', category: 'sheet', unit: 'sheet', ...seen('26.40') }),
    priceItem({ id: 'plank', category: 'plank', unit: 'LF', section: '1x6', ...seen('0.985') }),
    priceItem({
      id: 'plank-12',
      category: 'plank',
      unit: 'LF',
      section: '1x6',
      lengthFt: 12,
      ...seen('0.985'),
    }),
    priceItem({ id: 'edge', category: 'edge', unit: 'each', lengthIn: 120, ...seen('9.85') }),
  ];
  const shop = { labour: { wageUsdPerHour: '33.333', burdenPercent: '35' } };
  const lines = [
    takeoffLine('nails', { kind: 'nails', nail: '16d common', count: 300, pounds: decimalText('6.12') }),
    takeoffLine('sheathing', { kind: 'sheets', itemId: 'panel', sheets: 8, areaSqFt: 200 }),
    takeoffLine('planks', {
      kind: 'planks',
      itemId: 'plank',
      lengthFt: decimalText('103.13'),
      areaSqFt: 40,
    }),
    takeoffLine('planks by length', {
      kind: 'planks',
      itemId: 'plank-12',
      lengthFt: decimalText('103.13'),
      areaSqFt: 40,
    }),
    takeoffLine('edge', { kind: 'edge', lengthIn: 700, pieces: 7 }),
    takeoffLine('labour', { kind: 'labour', task: 'fascia', hours: decimalText('4.42') }),
    takeoffLine('extra-permit', { kind: 'extra', extraId: 'permit' }),
  ];
  const design = {
    extraCosts: [
      {
        id: 'permit',
        description: 'Permit',
        phase: 'Survey and permit',
        kind: 'permit',
        quantity: '1',
        unit: 'each',
        unitCostUsd: '185',
      },
    ],
  };
  const estimate = estimateOf(jobOf(list, shop, design), takeoffOf(lines));
  const line = (id: string) => estimate.lines.find((one) => one.id === id);

  test('buys nails in the cheapest packages', () => {
    expect(line('nails-n5')).toMatchObject({ quantity: '1', costUsd: '19.80', unit: 'package' });
    expect(line('nails-n1')).toMatchObject({ quantity: '2', costUsd: '10.98' });
  });

  test('weighs out nails without a package in whole pounds, and takes edge in whole rolls', () => {
    const loose = priceItem({
      id: 'loose',
      category: 'nails',
      unit: 'lb',
      nail: '16d Common',
      ...seen('3.10'),
    });
    const roll = priceItem({ id: 'roll', category: 'edge', unit: 'roll', lengthIn: 600, ...seen('41') });
    const bought = estimateOf(
      jobOf([loose, roll]),
      takeoffOf(lines.filter(({ id }) => id === 'nails' || id === 'edge')),
    );
    expect(bought.lines.map(({ quantity, unit, costUsd }) => [quantity, unit, costUsd])).toEqual([
      ['7', 'package', '21.70'],
      ['2', 'roll', '82.00'],
    ]);
  });

  test('buys whole sheets, whole edge pieces, and planks by the foot or in whole lengths', () => {
    expect(line('sheathing')).toMatchObject({ quantity: '8', costUsd: '211.20' });
    expect(line('edge')).toMatchObject({ quantity: '7', costUsd: '68.95' });
    // 103.13 x 0.985 = 101.58305.
    expect(line('planks')).toMatchObject({ quantity: '103.13', unit: 'LF', costUsd: '101.58' });
    // 103.13 / 12 = 8.6, so 9 pieces of 11.82.
    expect(line('planks by length')).toMatchObject({ quantity: '9', unit: 'each', costUsd: '106.38' });
  });

  test('works an hour at the wage with burden, to four decimals', () => {
    // 33.333 x 1.35 = 44.99955 -> 44.9996; 4.42 h -> 198.898232.
    expect(line('labour')).toMatchObject({
      unitCostUsd: '44.9996',
      costUsd: '198.90',
      kind: 'labour',
      taxable: false,
    });
  });

  test('carries entered costs in their own kind', () => {
    expect(line('extra-permit')).toMatchObject({ kind: 'permit', costUsd: '185.00' });
    expect(amounts(estimate).other).toBe('185.00');
  });

  test('carries the wording of the client on every line', () => {
    expect(
      estimate.lines.filter(({ clientWording }) => !clientWording.startsWith('What the client')),
    ).toEqual([]);
  });

  test('a quantity of zero gives no line', () => {
    const zero = estimateOf(
      jobOf(list, shop, { extraCosts: [{ ...design.extraCosts[0], quantity: '0' }] }),
      takeoffOf([
        takeoffLine('nails', { kind: 'nails', nail: '16d common', count: 0, pounds: decimalText(0) }),
        takeoffLine('sheathing', { kind: 'sheets', itemId: 'panel', sheets: 0, areaSqFt: 0 }),
        takeoffLine('labour', { kind: 'labour', task: 'fascia', hours: decimalText(0) }),
        takeoffLine('extra-permit', { kind: 'extra', extraId: 'permit' }),
      ]),
    );
    expect(zero.lines).toEqual([]);
    expect(zero.totalUsd).toBe('0.00');
  });
});

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

describe('a price of nothing', () => {
  test('keeps its line and is named, so that a blank column of prices cannot pass for a gift', () => {
    const free = priceItem({
      id: 'taxed',
      category: 'sheet',
      unit: 'each',
      description: 'Panel',
      ...seen('0'),
    });
    const estimate = estimateOf(jobOf([free]), takeoffOf(taxedAndNot.slice(0, 1)));
    expect(estimate.lines.map(({ costUsd }) => costUsd)).toEqual(['0.00']);
    expect(estimate.lacks.map(problemSentence)).toEqual([
      'Panel: its price is $0.00, so it adds nothing to the total. Enter what it costs on the price list.',
    ]);
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
