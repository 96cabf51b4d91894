import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adoptPlan } from '../../core/cutting/adopt-plan.ts';
import { checkPlan, planFault } from '../../core/cutting/check-plan.ts';
import { planCuts } from '../../core/cutting/plan-cuts.ts';
import { problemKey } from '../../core/cutting/problem-key.ts';
import type { CuttingProblem, StockLength } from '../../core/cutting/cut-plan-types.ts';
import type { Sixteenths } from '../../core/units/sixteenths.ts';
import { anyFullProblem, centsOf, countedOf, makeProblem, planOf } from './make-problem.ts';
import { solved } from './programs.ts';

const yard = [
  [8, 700],
  [12, 1000],
  [16, 1500],
] as const;

const onHand = (feet: number, available: number, priceCents = 0): StockLength => ({
  itemId: `hand-${feet}`,
  lengthSixteenths: (feet * 192) as Sixteenths,
  priceCents,
  available,
  source: 'on-hand',
});

describe('pinned boards', () => {
  const pieces = makeProblem([70, 70, 60, 60, 20, 20], yard);
  const pinned = (marks: readonly string[], itemId = 'length-3'): CuttingProblem => ({
    ...pieces,
    preferences: { pinned: [{ itemId, marks }] },
  });

  test('hold exactly their pieces, whatever it costs', () => {
    const problem = pinned(['P1', 'P4']);
    for (const plan of [planOf(problem), solved(problem)]) {
      const board = plan.boards.find(({ items }) => items.some(({ mark }) => mark === 'P1'));
      expect(board?.itemId).toBe('length-3');
      expect(board?.items.map(({ mark }) => mark)).toEqual(['P1', 'P4']);
      expect(plan.unmetPins).toEqual([]);
      expect(centsOf(plan).cost).toBeGreaterThanOrEqual(centsOf(solved(pieces)).cost);
    }
  });

  test('are set aside, with the reason, where length or piece is gone or they do not fit', () => {
    const gone = pinned(['P1', 'P9']);
    expect(planOf(gone).unmetPins).toMatchObject([{ why: 'piece-gone' }]);
    expect(centsOf(solved(gone)).cost).toBe(centsOf(solved(pieces)).cost);
    expect(planOf(pinned(['P1'], 'length-9')).unmetPins).toMatchObject([{ why: 'length-gone' }]);
    expect(planOf(pinned(['P1', 'P2'], 'length-2')).unmetPins).toMatchObject([]);
    expect(planOf(pinned(['P1', 'P2', 'P5'], 'length-2')).unmetPins).toMatchObject([{ why: 'does-not-fit' }]);
  });

  test('any set of them keeps every piece, and costs no less than none', () => {
    fc.assert(
      fc.property(
        anyFullProblem(12),
        fc.array(fc.array(fc.nat(11), { minLength: 1, maxLength: 3 }), { maxLength: 4 }),
        (problem, picks) => {
          const pins = picks.map((pick) => ({
            itemId: 'longest',
            marks: [...new Set(pick)].flatMap((index) => problem.items[index]?.mark ?? []),
          }));
          const held: CuttingProblem = {
            ...problem,
            preferences: { ...problem.preferences, pinned: pins },
          };
          const plan = solved(held);
          checkPlan(held, plan.boards);
          expect(countedOf(plan)).toBeGreaterThanOrEqual(countedOf(solved(problem)));
          const unmet = new Set(plan.unmetPins.map(({ pin }) => pin));
          for (const pin of pins.filter((one) => !unmet.has(one)))
            expect(
              plan.boards.some(
                ({ itemId, items }) =>
                  itemId === 'longest' &&
                  items
                    .map(({ mark }) => mark)
                    .toSorted()
                    .join() === pin.marks.toSorted().join(),
              ),
            ).toBe(true);
        },
      ),
      { numRuns: 10 },
    );
  });
});

describe('boards on hand', () => {
  test('are used before anything is bought, at what they would fetch', () => {
    const problem = makeProblem([70, 70], yard);
    const plan = solved({ ...problem, lengths: [...problem.lengths, onHand(6, 1, 150)] });
    expect(centsOf(plan).cost).toBe(850);
    expect(plan.boards.map((board) => board.onHand)).toEqual([false, true]);
  });

  test('that there are no more of are not used again', () => {
    const problem = makeProblem([70, 70, 70], yard);
    const plan = solved({ ...problem, lengths: [...problem.lengths, onHand(6, 2)] });
    expect(plan.boards.filter((board) => board.onHand)).toHaveLength(2);
    expect(centsOf(plan).cost).toBe(700);
  });

  test('can be left alone', () => {
    const problem = makeProblem([70, 70], yard);
    const plan = solved({
      ...problem,
      lengths: [...problem.lengths, onHand(6, 2)],
      preferences: { useOnHand: false },
    });
    expect(plan.boards.every((board) => !board.onHand)).toBe(true);
  });

  test('that do not hold all pieces, with nothing to buy, are named as too few', () => {
    const problem = { ...makeProblem([70, 70], []), lengths: [onHand(6, 1)] };
    expect(planCuts(problem)).toEqual({
      ok: false,
      problem: { code: 'not-enough-boards', stock: '2x6 No.2' },
    });
  });
});

describe('a board fewer', () => {
  test('is worth so much: two boards of 8 ft give way to one of 16 ft that costs a dollar more', () => {
    const problem = makeProblem([90, 90], yard);
    const cheapest = solved(problem);
    expect(cheapest.boards).toHaveLength(2);
    const fewer = solved({ ...problem, preferences: { centsPerBoard: 101 } });
    expect(fewer.boards).toHaveLength(1);
    expect(centsOf(fewer)).toEqual({ cost: 1500, bound: 1500 });
    expect(solved({ ...problem, preferences: { centsPerBoard: 99 } }).boards).toHaveLength(2);
  });
});

describe('the key of a problem', () => {
  const problem = makeProblem([70, 60, 60, 20], yard);

  test('does not heed what pieces are called, nor their order, nor that of the lengths', () => {
    const renamed = {
      ...problem,
      items: problem.items.map((item) => ({ ...item, mark: `other-${item.mark}` })).toReversed(),
      lengths: problem.lengths.toReversed(),
    };
    expect(problemKey(renamed)).toBe(problemKey(problem));
  });

  test('changes with whatever changes the plan', () => {
    const changed: readonly CuttingProblem[] = [
      { ...problem, items: problem.items.slice(1) },
      { ...problem, kerfSixteenths: 3 as Sixteenths },
      { ...problem, endTrimSixteenths: 8 as Sixteenths },
      { ...problem, lengths: problem.lengths.slice(1) },
      {
        ...problem,
        lengths: problem.lengths.map((length) => ({ ...length, priceCents: 1 + length.priceCents })),
      },
      { ...problem, lengths: problem.lengths.map((length) => ({ ...length, available: 3 })) },
      { ...problem, preferences: { centsPerBoard: 1 } },
      { ...problem, preferences: { pinned: [{ itemId: 'length-1', marks: ['P1'] }] } },
      {
        ...problem,
        items: problem.items.map((item) => ({ ...item, slantSixteenths: 44 as Sixteenths })),
      },
    ];
    const keys = [problem, ...changed].map(problemKey);
    expect(new Set(keys).size).toBe(keys.length);
  });

  test('is the same for pins of pieces alike, and without a pin that cannot be', () => {
    const pin = (marks: readonly string[]): CuttingProblem => ({
      ...problem,
      preferences: { pinned: [{ itemId: 'length-1', marks }] },
    });
    expect(problemKey(pin(['P2']))).toBe(problemKey(pin(['P3'])));
    expect(problemKey(pin(['P9']))).toBe(problemKey(problem));
  });
});

describe('a plan made before', () => {
  test('is taken over by any problem with the same key, under its own marks and pins', () => {
    fc.assert(
      fc.property(anyFullProblem(15), (problem) => {
        const first = problem.items[0]?.mark ?? '';
        const pinned = { ...problem, preferences: { pinned: [{ itemId: 'longest', marks: [first] }] } };
        for (const one of [problem, pinned]) {
          const other: CuttingProblem = {
            ...one,
            stock: { section: '2x8', grade: '' },
            items: one.items.map((item) => ({ ...item, mark: `new-${item.mark}` })).toReversed(),
            ...(one === pinned
              ? { preferences: { pinned: [{ itemId: 'longest', marks: [`new-${first}`] }] } }
              : {}),
          };
          expect(problemKey(other)).toBe(problemKey(one));
          const plan = planOf(one);
          const adopted = adoptPlan(other, plan);
          expect(adopted?.costUsd).toBe(plan.costUsd);
          expect(adopted?.group).toBe('2x8');
          expect(planFault(other, adopted?.boards ?? [])).toBeUndefined();
          const pinHeld = adopted?.boards.some(
            ({ itemId, items }) =>
              itemId === 'longest' && items.length === 1 && items[0]?.mark === `new-${first}`,
          );
          expect(pinHeld || one !== pinned).toBe(true);
        }
      }),
      { numRuns: 25 },
    );
  });

  test('is not taken over where it does not fit', () => {
    const problem = makeProblem([70, 60, 60, 20], yard);
    const plan = planOf(problem);
    expect(adoptPlan(makeProblem([70, 60, 60, 21], yard), plan)).toBeUndefined();
    expect(adoptPlan({ ...problem, lengths: [] }, plan)).toBeUndefined();
    expect(adoptPlan(makeProblem([70, 60, 60, 20, 20], yard), plan)).toBeUndefined();
    const lied = { ...plan, costUsd: planOf(makeProblem([70], yard)).costUsd };
    expect(adoptPlan(problem, lied)).toBeUndefined();
  });
});
