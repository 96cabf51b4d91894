import { describe, expect, test } from 'vitest';
import { decimalText } from '../../core/units/money.ts';
import { amounts, estimateOf, seen } from './make-estimate-of.ts';
import { priceItem } from './make-price.ts';
import { boardOf, cutPlanOf, jobOf, takeoffLine, takeoffOf } from './make-takeoff.ts';

const labourNeed = (hours: string, rateMark: 'own' | 'placeholder' = 'own') =>
  ({ kind: 'labour', task: 'fascia', hours: decimalText(hours), unitHours: 0.08, rateMark }) as const;
const stock = { section: '2x6', grade: 'No.2' };
const boards = [
  priceItem({ id: 'b12', unit: 'each', ...stock, lengthFt: 12, supplier: 'The yard', ...seen('9.94') }),
  priceItem({ id: 'b16', unit: 'each', ...stock, lengthFt: 16, ...seen('13.40') }),
];

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
    takeoffLine('labour', labourNeed('4.42')),
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

  const marked = (rateMark: 'own' | 'placeholder') => {
    const made = estimateOf(jobOf(list, shop), takeoffOf([takeoffLine('l', labourNeed('4.42', rateMark))]));
    return made.lines.map((one) => [one.rateMark, one.madeOf.find(({ ref }) => ref === 'labour/fascia')]);
  };

  test("says of every hour whether the shop's own rate or a placeholder stands behind it", () => {
    expect(marked('placeholder')).toEqual([
      ['placeholder', { label: 'Hours for one, placeholder rate', value: '0.08 h', ref: 'labour/fascia' }],
    ]);
    expect(marked('own')).toEqual([
      ['own', { label: "Hours for one, the shop's own rate", value: '0.08 h', ref: 'labour/fascia' }],
    ]);
    expect(line('sheathing')?.rateMark).toBeNull();
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
        takeoffLine('labour', labourNeed('0')),
        takeoffLine('extra-permit', { kind: 'extra', extraId: 'permit' }),
      ]),
    );
    expect(zero.lines).toEqual([]);
    expect(zero.totalUsd).toBe('0.00');
  });
});

describe('what is sold in packs', () => {
  const need = { kind: 'lumber', stock, marks: ['A-E01'] } as const;

  test('is bought in whole packs, though fewer boards are cut', () => {
    const packed = priceItem({
      ...boards[0],
      id: 'b12',
      unit: 'each',
      ...stock,
      lengthFt: 12,
      minimumPack: 5,
    });
    const plan = cutPlanOf(
      '2x6 No.2',
      [1, 2, 3, 4, 5, 6].map((number) => boardOf(number, 'b12', 12, 994, { [`A-E0${number}`]: 90 })),
    );
    const line = takeoffLine('extenders', { ...need, marks: [1, 2, 3, 4, 5, 6].map((at) => `A-E0${at}`) });
    const [made] = estimateOf(jobOf([packed]), takeoffOf([line]), [plan]).lines;
    // 6 boards out of packs of 5: 10 boards at $9.94.
    expect(made).toMatchObject({ quantity: '10', unitCostUsd: '9.94', costUsd: '99.40' });
    expect(made?.madeOf).toContainEqual({
      label: 'Sold in packs of 5',
      value: '6 each needed, 10 bought',
      ref: 'price/b12',
    });
  });

  test('costs the same as before where it is sold singly', () => {
    const single = priceItem({ id: 'b12', unit: 'each', ...stock, lengthFt: 12, ...seen('9.94') });
    const plan = cutPlanOf('2x6 No.2', [boardOf(1, 'b12', 12, 994, { 'A-E01': 90 })]);
    const [made] = estimateOf(jobOf([single]), takeoffOf([takeoffLine('extenders', need)]), [plan]).lines;
    expect(made).toMatchObject({ quantity: '1', costUsd: '9.94' });
    expect(made?.madeOf.some(({ label }) => label.startsWith('Sold in packs'))).toBe(false);
  });

  test('nails in a carton of six boxes are weighed against a single box by what the whole carton costs', () => {
    const offers = jobOf([boxOfNails('carton', '10.00', 6), boxOfNails('single', '14.00', 1)]);
    const few = estimateOf(offers, takeoffOf([nailLine('8', 360)]), []).lines;
    expect(few.map(({ id, quantity, costUsd }) => [id, quantity, costUsd])).toEqual([
      ['nails-single', '2', '28.00'],
    ]);
    const many = estimateOf(offers, takeoffOf([nailLine('29', 1300)]), []).lines;
    expect(many.map(({ id, quantity, costUsd }) => [id, quantity, costUsd])).toEqual([
      ['nails-carton', '6', '60.00'],
    ]);
  });
});

function boxOfNails(id: string, usd: string, minimumPack: number) {
  return priceItem({
    id,
    category: 'nails',
    unit: 'box',
    nail: '16d common',
    packageLb: 5,
    minimumPack,
    ...seen(usd),
  });
}

function nailLine(pounds: string, number: number) {
  return takeoffLine('nails', {
    kind: 'nails',
    nail: '16d common',
    count: number,
    pounds: decimalText(pounds),
  });
}
