import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import { jobCuttingSchema, type JobCutting } from '../../core/eave/job-cutting.ts';
import { cuttingChoices, dearerBy, lumberSum, lumberWith } from '../../core/job/cutting-choices.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import type { JobResult } from '../../core/job/job-result.ts';
import { cheapestWay, supplierCost, suppliersOf, supplierWays } from '../../core/job/supplier-ways.ts';
import { explain } from '../../core/trace/explain.ts';
import { sumUsd, usd } from '../../core/units/money.ts';
import { sampleText, soundJob, soundResult } from './example-job.ts';

const job = soundJob(sampleText());
const plain = soundResult(job);

function wanting(wishes: Partial<JobCutting>): JobFile {
  const cutting = jobCuttingSchema.parse({ ...job.design.cutting, ...wishes });
  return { ...job, design: { ...job.design, cutting } };
}

function planOf2x6(result: JobResult) {
  const plan = result.cutPlans.find(({ stock }) => stock.section === '2x6');
  if (plan === undefined) throw new Error('the sample cuts 2x6');
  return plan;
}

const lumberLines = (result: JobResult) =>
  result.estimate.lines.filter(({ id }) => id.startsWith('lumber-') || id.startsWith('delivery-'));
const cost = (result: JobResult) => Number(lumberSum(result).costUsd);

describe('boards and offcuts on hand', () => {
  const offcuts = [
    { id: 'o1', section: '2x6', grade: 'No.2', lengthIn: 100, count: 2, valueUsd: '0' },
    { id: 'o2', section: '2X6 ', grade: '', lengthIn: 60, count: 1, valueUsd: '1.50' },
    { id: 'o3', section: '2x6', grade: 'select', lengthIn: 144, count: 5, valueUsd: '0' },
    { id: 'o4', section: '2x10', grade: '', lengthIn: 240, count: 5, valueUsd: '0' },
  ];
  const result = soundResult(wanting({ onHand: offcuts }));

  test('are cut where they fit the section and the grade, no more of them than there are', () => {
    const used = Map.groupBy(
      planOf2x6(result).boards.filter(({ onHand }) => onHand),
      ({ itemId }) => itemId,
    );
    expect(used.get('on-hand-o1')).toHaveLength(2);
    expect(used.get('on-hand-o2')?.length ?? 0).toBeLessThanOrEqual(1);
    expect(used.has('on-hand-o3') || used.has('on-hand-o4')).toBe(false);
    expect(cost(result)).toBeLessThan(cost(plain));
  });

  test('stand in the estimate at what they are worth, taxed by nobody, and can be walked back', () => {
    const lines = lumberLines(result).filter(({ description }) => description.endsWith('on hand'));
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) {
      expect(line.taxable).toBe(false);
      expect(line.costUsd).toBe(usd(new Decimal(line.quantity).times(line.unitCostUsd)));
    }
    expect(sumUsd(lumberLines(result).map(({ costUsd }) => costUsd))).toBe(lumberSum(result).costUsd);
    const board = planOf2x6(result).boards.find(({ onHand }) => onHand);
    const walked = explain(`board/2x6 No.2/${board?.number}`, wanting({ onHand: offcuts }), result);
    const worth = walked?.parts.find(({ ref }) => ref?.startsWith('design/onHand/'));
    expect(explain(worth?.ref ?? '', wanting({ onHand: offcuts }), result)?.title).toMatch(/on hand/);
  });

  test('are left alone where the job says so', () => {
    expect(soundResult(wanting({ onHand: offcuts, useOnHand: false })).cutPlans).toEqual(plain.cutPlans);
  });

  test('take a piece that no board to be bought is long enough for', () => {
    const short = {
      ...wanting({
        onHand: [{ id: 'o5', section: '2x6', grade: '', lengthIn: 240, count: 1, valueUsd: '4' }],
      }),
      priceList: job.priceList.map((item) =>
        item.section === '2x6' ? { ...item, retired: item.lengthFt !== 4 } : item,
      ),
    };
    const [item] = job.priceList;
    if (item === undefined) throw new Error('the sample has prices');
    const withFour = {
      ...short,
      priceList: [
        ...short.priceList,
        { ...item, id: '2x6-4', description: '2x6, 4 ft', lengthFt: 4, retired: false },
      ],
    };
    const before = soundResult({ ...withFour, design: job.design }).unplanned.flatMap(({ marks }) => marks);
    const after = soundResult(withFour).unplanned.flatMap(({ marks }) => marks);
    expect(before.length - after.length).toBe(1);
  });
});

describe('lengths that a job goes without', () => {
  test('are not bought, nor are fascia boards laid out for them', () => {
    const without = soundResult(wanting({ forbiddenLengthsFt: [12, 14] }));
    const feet = new Set(
      without.cutPlans.flatMap(({ boards }) => boards.map(({ lengthSixteenths }) => lengthSixteenths / 192)),
    );
    expect(feet.has(12) || feet.has(14)).toBe(false);
    expect(cost(without)).toBeGreaterThanOrEqual(cost(plain));
  });

  test('leave the pieces unplanned, with the way out, where nothing is left to buy', () => {
    const all = [8, 10, 12, 14, 16, 18, 20];
    const { unplanned } = soundResult(wanting({ forbiddenLengthsFt: all }));
    expect(unplanned[0]?.problem).toMatchObject({ field: 'design.cutting.forbiddenLengthsFt' });
  });
});

describe('pinned boards', () => {
  const [first] = planOf2x6(plain).boards;
  if (first === undefined) throw new Error('the sample has boards');
  const pieces = planOf2x6(plain).boards.map(({ items }) => items[0]?.mark ?? '');

  test('are cut with just the pieces that were pinned, whatever it costs', () => {
    const pin = { itemId: first.itemId, marks: [pieces[0] ?? '', pieces[1] ?? ''] };
    const plan = planOf2x6(soundResult(wanting({ pins: [pin] })));
    const pinned = plan.boards.find(
      ({ itemId, items }) =>
        itemId === pin.itemId && items.length === 2 && items.every(({ mark }) => pin.marks.includes(mark)),
    );
    expect(plan.unmetPins).toEqual([]);
    expect(pinned).toBeDefined();
    expect(Number(plan.costUsd)).toBeGreaterThanOrEqual(Number(planOf2x6(plain).costUsd));
  });

  test('of pieces that are gone are set aside and told, and the job is planned all the same', () => {
    const plan = planOf2x6(
      soundResult(wanting({ pins: [{ itemId: first.itemId, marks: [pieces[0] ?? '', 'Z-E99'] }] })),
    );
    expect(plan.unmetPins.map(({ why }) => why)).toEqual(['piece-gone']);
    expect(plan.boards).toHaveLength(planOf2x6(plain).boards.length);
  });
});

describe('what a choice costs', () => {
  test('is the lumber with it less the lumber without it', () => {
    const wished = wanting({ forbiddenLengthsFt: [12], usdPerBoard: '3' });
    const choices = cuttingChoices(wished.design.cutting);
    expect(choices.map(({ id }) => id)).toEqual(['all', 'length/12', 'fewer-boards']);
    const now = lumberSum(soundResult(wished));
    const all = choices[0];
    const cheapest = lumberWith(wished, all?.without ?? wished.design.cutting);
    if (!cheapest.ok) throw new Error(cheapest.problem.code);
    expect(cheapest.value.costUsd).toBe(lumberSum(plain).costUsd);
    expect(Number(dearerBy(now, cheapest.value))).toBeGreaterThan(0);
  });

  test('a job without wishes has none; one that uses what is on hand can be compared with leaving it', () => {
    expect(cuttingChoices(job.design.cutting)).toEqual([]);
    const onHand = [{ id: 'o1', section: '2x6', grade: '', lengthIn: 100, count: 1, valueUsd: '0' }];
    expect(cuttingChoices(wanting({ onHand }).design.cutting).map(({ id }) => id)).toEqual(['on-hand']);
  });

  test('a board fewer is worth money only where that saves boards', () => {
    const few = lumberSum(soundResult(wanting({ usdPerBoard: '50' })));
    expect(few.boards).toBeLessThanOrEqual(lumberSum(plain).boards);
    expect(Number(few.costUsd)).toBeGreaterThanOrEqual(Number(lumberSum(plain).costUsd));
  });
});

describe('where to buy', () => {
  /** Every 2x6 and 1x8 a second time at another yard: long ones cheaper, short ones dearer, and no 8 ft 2x6. */
  const two: JobFile = {
    ...job,
    settings: { ...job.settings, suppliers: [{ name: 'Hollin Yard', deliveryUsd: '45' }] },
    priceList: [
      ...job.priceList,
      ...job.priceList
        .filter(({ section, id }) => section !== '' && id !== '2x6-8')
        .map((item) => ({
          ...item,
          id: `hollin-${item.id}`,
          supplier: 'Hollin Yard',
          prices: item.prices.map((price) => ({
            ...price,
            priceUsd: new Decimal(price.priceUsd)
              .times((item.lengthFt ?? 0) >= 14 ? '0.8' : '1.2')
              .toString(),
          })),
        })),
    ],
  };
  const suppliers = suppliersOf(two, soundResult(two).cutPlans);
  const costOf = (names: readonly string[]) => {
    const sum = lumberWith(two, { ...two.design.cutting, suppliers: [...names] });
    if (!sum.ok) throw new Error(sum.problem.code);
    return supplierCost(two, { suppliers: names }, sum.value);
  };

  test('suppliers are those that sell the lumber of the job; nails are bought elsewhere', () => {
    expect(suppliers).toEqual(['Fernhollow Lumber', 'Hollin Yard']);
  });

  test('every set of suppliers is a way to buy, each alone first', () => {
    expect(supplierWays(['a', 'b', 'c']).map((way) => way.suppliers.join(''))).toEqual([
      'a',
      'b',
      'c',
      'ab',
      'ac',
      'bc',
      'abc',
    ]);
    expect(supplierWays(['a', 'b', 'c', 'd', 'e', 'f'])).toHaveLength(6 + 15 + 1);
    expect(supplierWays([])).toEqual([]);
  });

  test('buying at one supplier buys only there, and its delivery is charged once', () => {
    const one = costOf(['Hollin Yard']);
    expect([one.deliveryUsd, one.unplanned]).toEqual(['45.00', 0]);
    expect(one.totalUsd).toBe(sumUsd([one.lumberUsd, usd(45)]));
    const bought = soundResult({
      ...two,
      design: { ...two.design, cutting: { ...two.design.cutting, suppliers: ['Hollin Yard'] } },
    });
    const ids = bought.cutPlans.flatMap(({ boards }) => boards.map(({ itemId }) => itemId));
    expect(ids.every((id) => id.startsWith('hollin-'))).toBe(true);
    const delivery = lumberLines(bought).filter(({ id }) => id.startsWith('delivery-'));
    expect(delivery.map(({ costUsd, supplier }) => [costUsd, supplier])).toEqual([['45.00', 'Hollin Yard']]);
  });

  test('the split is never dearer in lumber than either alone, and the cheapest way counts deliveries', () => {
    const costs = supplierWays(suppliers).map((way) => costOf(way.suppliers));
    const [alone, other, both] = costs;
    expect(Number(both?.lumberUsd)).toBeLessThanOrEqual(Number(alone?.lumberUsd));
    expect(Number(both?.lumberUsd)).toBeLessThanOrEqual(Number(other?.lumberUsd));
    const best = cheapestWay(costs);
    expect(Number(best?.totalUsd)).toBe(Math.min(...costs.map(({ totalUsd }) => Number(totalUsd))));
  });

  test('a supplier that lacks a length which the job needs is no way to buy', () => {
    const lacking = {
      suppliers: ['a'],
      lumberUsd: usd(1),
      deliveryUsd: usd(0),
      totalUsd: usd(1),
      unplanned: 3,
    };
    expect(cheapestWay([lacking])).toBeNull();
    const { unplanned } = soundResult(wanting({ suppliers: ['Nobody'] }));
    expect(unplanned[0]?.problem).toMatchObject({ field: 'design.cutting.suppliers' });
  });
});
