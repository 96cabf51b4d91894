import { describe, expect, it } from 'vitest';
import type { CutPlan } from '../../core/cutting/cut-plan-types.ts';
import { thumbPurchase } from '../../core/cutting/thumb-rule.ts';
import {
  buyList,
  comparisonSentences,
  howProven,
  onHandList,
  pinSentences,
  proofSentence,
} from '../../core/documents/plan-words.ts';
import { usd } from '../../core/units/money.ts';
import { makeProblem, planOf } from '../cutting/make-problem.ts';

const problem = makeProblem(
  [44, 44, 44, 44],
  [
    [8, 600],
    [16, 1300],
  ],
);
const plan = planOf(problem);
const open: CutPlan = { ...plan, proof: 'none', boundUsd: usd('11.00'), gap: 1 / 11, status: 'best-found' };

describe('what is said of a plan', () => {
  it('names boards and cost, and that nothing costs less, where that is shown', () => {
    expect(proofSentence({ ...plan, proof: 'exact-bound' })).toBe(
      '2 boards for $12.00; no purchase from this list costs less.',
    );
  });

  it('names the bound and what is left to gain, where it is not', () => {
    expect(proofSentence(open)).toBe(
      '2 boards for $12.00, the best found. No purchase from this list can cost less than $11.00, so at most $1.00 (9.1 %) is left to gain.',
    );
  });

  it('says what a board fewer was counted for', () => {
    expect(proofSentence({ ...plan, proof: 'exact-bound', centsPerBoard: 250 })).toContain(
      'counting $2.50 for each board to carry',
    );
  });

  it('tells each kind of proof apart', () => {
    const words = (['exact-bound', 'solver-tree', 'none'] as const).map((proof) =>
      howProven({ ...plan, proof }),
    );
    expect(new Set(words).size).toBe(3);
    expect(words[0]).toMatch(/whole numbers/);
    expect(words[1]).toMatch(/search/);
  });

  it('lists what to buy and what to take of the boards on hand apart', () => {
    const [first, ...others] = plan.boards;
    if (first === undefined) throw new Error('the plan has boards');
    const mixed = { ...plan, boards: [{ ...first, onHand: true }, ...others] };
    expect([buyList(mixed), onHandList(mixed), onHandList(plan)]).toEqual([`1 of 8' 0"`, `1 of 8' 0"`, '']);
  });

  it('says why a pinned board is not cut as pinned, and the way out', () => {
    const pin = { itemId: 'x', marks: ['P1', 'P2'] };
    const words = pinSentences({
      ...plan,
      unmetPins: [
        { pin, why: 'length-gone' },
        { pin, why: 'piece-gone' },
        { pin, why: 'does-not-fit' },
      ],
    });
    expect(new Set(words).size).toBe(3);
    for (const word of words) expect(word).toMatch(/^The board pinned for P1, P2 .* Release the pin/);
  });
});

describe('simpler ways to buy', () => {
  it('a rule of thumb buys the net length and some more, in the one length where that costs least', () => {
    // By hand: 4 x 44 = 176 in.; 10 % more is 193.6 in.; in 8 ft boards 2.02, so 3 for $18.00.
    expect(thumbPurchase(problem, plan, 10)).toEqual({
      boardFt: 8,
      boards: 3,
      costUsd: '18.00',
      tooFew: 0,
    });
    // Without waste, 1.83: 2 boards.
    expect(thumbPurchase(problem, plan, 0)?.boards).toBe(2);
  });

  it('is told where the rule of thumb would not have held all pieces', () => {
    // By hand: 50 in. fits an 8 ft board once; three boards are needed, and 165 in. with 10 % more are 1.72 boards.
    const long = makeProblem([50, 50, 50], [[8, 600]]);
    const thumb = thumbPurchase(long, planOf(long), 10);
    expect(thumb).toMatchObject({ boards: 2, tooFew: 1 });
    expect(comparisonSentences(planOf(long), thumb, 10).at(-1)).toBe(
      'By the rule of thumb, 10 % over the net length, one would buy 2 of 8 ft for $12.00, and find 1 too few at the saw.',
    );
  });

  it('has nothing to compare with where no one length holds every piece', () => {
    expect(thumbPurchase(problem, { oneLengthUsd: null, oneLengthFt: null }, 10)).toBeNull();
  });
});
