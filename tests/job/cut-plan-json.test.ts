import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import { cutPlanJson } from '../../core/job/cut-plan-json.ts';
import { usd } from '../../core/units/money.ts';
import { sampleText, soundJob, soundResult } from './example-job.ts';

const job = soundJob(sampleText());
const result = soundResult(job);
const plans = result.cutPlans.map((plan, index) =>
  cutPlanJson(plan, result.cuttingProblems[index]?.problem, job),
);

describe('the cut plans in the results', () => {
  test('give the worths behind the bound whole, so that it can be reckoned again from them', () => {
    for (const [index, { certificate, boundUsd }] of plans.entries()) {
      const plan = result.cutPlans[index];
      const worths = new Map(
        certificate?.worths.map((one) => [`${one.lengthSixteenths}/${one.slantSixteenths}`, one.worthUsd]),
      );
      // Whole parts of a cent, 2^20 to the cent, come back from the text without loss.
      for (const worth of worths.values())
        expect(new (Decimal.clone({ precision: 60 }))(worth).times(100 * 2 ** 20).isInteger()).toBe(true);
      const together = plan?.boards
        .flatMap(({ items }) => items)
        .reduce(
          (sum, { lengthSixteenths, slantSixteenths = 0 }) =>
            sum.plus(worths.get(`${lengthSixteenths}/${slantSixteenths}`) ?? 0),
          new Decimal(0),
        );
      // All pieces together cost at least their worth; the bound is that, up to a whole cent, or better.
      expect(Number(boundUsd)).toBeGreaterThanOrEqual(Number(usd(together ?? 0)) - 0.01);
    }
  });

  test('tell what simpler ways to buy would have cost', () => {
    const [first] = plans;
    expect(first?.thumbRule).toMatchObject({
      wastePercent: '10',
      countBoards: expect.any(Number) as unknown,
    });
    expect(first?.oneLengthUsd).toMatch(/^\d+\.\d\d$/);
  });

  test('tell boards on hand and pins that cannot be', () => {
    const cutting = {
      ...job.design.cutting,
      pins: [{ itemId: '2x6-12', marks: ['Z-E99', 'A-E01'] }],
      onHand: [{ id: 'o', section: '2x6', grade: '', lengthIn: 120, count: 1, valueUsd: '2.50' }],
      usdPerBoard: '1.25',
    };
    const wished = { ...job, design: { ...job.design, cutting } };
    const changed = soundResult(wished);
    const [plan] = changed.cutPlans.map((one, index) =>
      cutPlanJson(one, changed.cuttingProblems[index]?.problem, wished),
    );
    expect(plan?.unmetPins).toEqual([{ itemId: '2x6-12', marks: ['Z-E99', 'A-E01'], why: 'piece-gone' }]);
    expect(plan?.boardFewerUsd).toBe('1.25');
    expect(plan?.boards.filter(({ onHand }) => onHand).map(({ priceUsd }) => priceUsd)).toEqual(['2.50']);
  });
});
