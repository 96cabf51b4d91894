import { describe, expect, test } from 'vitest';
import { checkPlan } from '../../core/cutting/check-plan.ts';
import { planCuts } from '../../core/cutting/plan-cuts.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { centsOf, makeProblem, planOf } from './make-problem.ts';

describe('cut plan', () => {
  test('a piece longer than any length is named with what is missing', () => {
    const problem = makeProblem(
      [30, 100, 120.5],
      [
        [8, 700],
        [10, 900],
      ],
      { endTrimIn: 0.5 },
    );
    const plan = planCuts(problem);
    const sentence = plan.ok ? '' : problemSentence(plan.problem);
    expect(sentence).toMatch(
      /^P3 is 10' .*1\/2" long, and the longest 2x6 No\.2 on the price list gives 9' 11"\./,
    );
  });

  test('a piece exactly as long as the trimmed board is cut from it', () => {
    const plan = planOf(makeProblem([119], [[10, 900]], { endTrimIn: 0.5 }));
    expect(plan.boards).toHaveLength(1);
    expect(plan.boards[0]?.offcutSixteenths).toBe(0);
    expect(planCuts(makeProblem([119.0625], [[10, 900]], { endTrimIn: 0.5 })).ok).toBe(false);
  });

  test('with nothing to buy the price is named as missing', () => {
    const plan = planCuts(makeProblem([30], []));
    expect(plan).toEqual({ ok: false, problem: { code: 'no-price', item: '2x6 No.2' } });
  });

  test('without pieces nothing is bought', () => {
    expect(planOf(makeProblem([], [[8, 700]]))).toMatchObject({
      boards: [],
      costUsd: '0.00',
      status: 'optimal',
    });
  });

  test('a longer board that costs no more takes the place of a shorter one', () => {
    const plan = planOf(
      makeProblem(
        [90, 90],
        [
          [8, 900],
          [16, 900],
          [20, 2600],
        ],
      ),
    );
    expect(plan.boards.map((board) => board.lengthSixteenths)).toEqual([16 * 192]);
    expect(plan.costUsd).toBe('9.00');
    expect(plan.status).toBe('optimal');
  });

  test('a greedy choice of the longest board is not followed where two short ones cost less', () => {
    const plan = planOf(
      makeProblem(
        [94, 94],
        [
          [8, 700],
          [16, 1900],
        ],
      ),
    );
    expect(plan.costUsd).toBe('14.00');
    expect(plan.boards).toHaveLength(2);
    expect(plan.oneLengthUsd).toBe('14.00');
    expect(plan.oneLengthFt).toBe(8);
  });

  test('the kerf decides: four 36 in. pieces come out of 12 ft without it, and not with it', () => {
    const pieces = [36, 36, 36, 36];
    expect(planOf(makeProblem(pieces, [[12, 1100]], { kerfIn: 0 })).boards).toHaveLength(1);
    expect(planOf(makeProblem(pieces, [[12, 1100]], { kerfIn: 0.125 })).boards).toHaveLength(2);
  });

  test('boards are numbered longest first, with the longest piece first in each', () => {
    const plan = planOf(
      makeProblem(
        [20, 70, 45, 70, 20, 45, 92],
        [
          [8, 700],
          [12, 1000],
          [16, 1500],
        ],
      ),
    );
    expect(plan.boards.map((board) => board.number)).toEqual(plan.boards.map((_, index) => index + 1));
    const lengths = plan.boards.map((board) => board.lengthSixteenths);
    expect(lengths).toEqual(lengths.toSorted((a, b) => b - a));
    for (const board of plan.boards) {
      const pieces = board.items.map((item) => item.lengthSixteenths);
      expect(pieces).toEqual(pieces.toSorted((a, b) => b - a));
    }
  });

  test('pieces of one length are cut in the order of their marks', () => {
    const marks = planOf(makeProblem([40, 40, 40, 40], [[8, 700]])).boards.flatMap((board) =>
      board.items.map((item) => item.mark),
    );
    expect(marks).toEqual(['P1', 'P2', 'P3', 'P4']);
  });

  test('the yield is net length over length bought', () => {
    const plan = planOf(makeProblem([40, 40], [[8, 700]]));
    expect(plan.yield).toBeCloseTo(80 / 96, 12);
  });

  test('free boards cost nothing and are no cause for an endless gap', () => {
    const plan = planOf(makeProblem([40, 40, 40], [[8, 0]]));
    expect(plan).toMatchObject({ costUsd: '0.00', boundUsd: '0.00', gap: 0, status: 'optimal' });
  });

  test('of two plans at one price the one with fewer boards is taken', () => {
    const plan = planOf(
      makeProblem(
        [94, 94],
        [
          [8, 750],
          [16, 1500],
        ],
      ),
    );
    expect(plan.costUsd).toBe('15.00');
    expect(plan.boards).toHaveLength(1);
  });

  test('a large job of many lengths is planned within 4 % of its bound', () => {
    // 2,500 pieces of some 900 lengths.
    const pieces = Array.from({ length: 2500 }, (_, index) => 12 + ((index * 7919) % 1100) / 16);
    const problem = makeProblem(pieces, [
      [8, 780],
      [10, 975],
      [12, 1180],
      [14, 1450],
      [16, 1640],
      [20, 2260],
    ]);
    expect(new Set(pieces).size).toBeGreaterThan(800);
    const { cost, bound } = centsOf(planOf(problem));
    expect(cost / bound).toBeLessThan(1.04);
  });
});

describe('the checker', () => {
  const problem = makeProblem([40, 50], [[8, 700]]);
  const { boards } = planOf(problem);

  test('accepts the plan itself', () => {
    expect(() => checkPlan(problem, boards)).not.toThrow();
  });

  test('finds a piece that is not cut', () => {
    const short = boards.map((board) => ({ ...board, items: board.items.slice(0, 1) }));
    expect(() => checkPlan(problem, short)).toThrow(/P1 not cut|offcut/);
    expect(() => checkPlan(problem, [])).toThrow('P1, P2 not cut');
  });

  test('finds a piece cut twice', () => {
    expect(() => checkPlan(problem, [...boards, ...boards])).toThrow(/cut twice/);
  });

  test('finds an over-cut board', () => {
    const three = makeProblem([40, 50, 10], [[8, 700]]);
    const over = boards.map((board) => ({ ...board, items: three.items }));
    expect(() => checkPlan(three, over)).toThrow(/over-cut/);
  });

  test('finds a board that is not on the list, and a wrong price', () => {
    const dear = boards.map((board) => ({ ...board, priceCents: 1 }));
    expect(() => checkPlan(problem, dear)).toThrow(/not on the list/);
  });
});
