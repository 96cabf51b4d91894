import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planFault } from '../../core/cutting/check-plan.ts';
import type { CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import { solveExactly } from '../../core/cutting/exact/solve-exactly.ts';
import type { SolveProgress } from '../../core/cutting/exact/solve-control.ts';
import type { Sixteenths } from '../../core/units/sixteenths.ts';
import { cheapestByTryingAll } from './brute-force.ts';
import { cheapestByArcFlow } from './independent-arc-flow.ts';
import { anyFullProblem, anyProblem, centsOf, countedOf, makeProblem, planOf } from './make-problem.ts';
import { programs, solved } from './programs.ts';

/** Few lengths in large numbers, as a house has them. */
const anyHouse: fc.Arbitrary<CuttingProblem> = fc
  .record({
    problem: anyProblem(1),
    kinds: fc.array(
      fc.record({ length: fc.integer({ min: 240, max: 1440 }), count: fc.integer({ min: 2, max: 12 }) }),
      { minLength: 2, maxLength: 5 },
    ),
  })
  .map(({ problem, kinds }) => ({
    ...problem,
    items: kinds.flatMap(({ length, count }, kind) =>
      Array.from({ length: count }, (_, index) => ({
        mark: `${kind}-${index}`,
        lengthSixteenths: length as Sixteenths,
      })),
    ),
  }));

/**
 * Three pieces that fill a board to the last sixteenth, so many times over: the cheapest is a full board for each three,
 * since no inch is dearer or cheaper than another. Built from a seed, so that the answer is known.
 */
function tripletProblem(seed: number, boards: number): CuttingProblem {
  let state = seed;
  const next = (least: number, most: number): number => {
    state = (state * 48271) % 2147483647;
    return least + (state % (most - least + 1));
  };
  const length = 16 * 192;
  const pieces = Array.from({ length: boards }, () => {
    const first = next(800, 1300);
    const second = next(800, 1200);
    return [first, second, length - first - second];
  }).flat();
  return makeProblem(
    pieces.map((sixteenths) => sixteenths / 16),
    [
      [8, 900],
      [16, 1700],
    ],
    { kerfIn: 0 },
  );
}

describe('the exact plan, written as a flow along arcs', () => {
  test('of a handful of pieces costs what trying every way finds', () => {
    fc.assert(
      fc.property(anyFullProblem(7), (problem) => {
        const plan = solved(problem, 'arc-flow');
        expect(countedOf(plan)).toBe(cheapestByTryingAll(problem));
        expect(plan.status).toBe('optimal');
      }),
      { numRuns: 50 },
    );
  });

  test('costs the same as by patterns', () => {
    fc.assert(
      fc.property(anyFullProblem(25), (problem) => {
        expect(countedOf(solved(problem, 'arc-flow'))).toBe(countedOf(solved(problem)));
      }),
      { numRuns: 12 },
    );
  });
});

describe('the exact plan of a house', () => {
  test('costs what a plain flow model of its own finds', () => {
    fc.assert(
      fc.property(anyHouse, (problem) => {
        expect(centsOf(solved(problem)).cost).toBe(cheapestByArcFlow(problem, programs));
      }),
      { numRuns: 15 },
    );
  });

  test.each([1, 2, 3, 4])(
    'made of threes that fill a board, seed %i, is as many full boards as there are threes',
    (seed) => {
      const plan = solved(tripletProblem(seed * 7919, 12));
      expect(plan.boards).toHaveLength(12);
      expect(centsOf(plan)).toEqual({ cost: 12 * 1700, bound: 12 * 1700 });
      expect(plan.yield).toBe(1);
      expect(plan.proof).toBe('exact-bound');
    },
  );
});

describe('an exact solve that is stopped', () => {
  const problem = tripletProblem(31, 10);

  test('at once answers the quick plan with its bound', () => {
    const stopped = solveExactly(problem, programs, { stopped: () => true, onProgress: () => {} });
    expect(stopped.ok && stopped.value.costUsd).toBe(planOf(problem).costUsd);
    expect(stopped.ok && stopped.value.boundUsd).toBe(planOf(problem).boundUsd);
  });

  test('at any moment answers a plan that holds, and tells plans that get better, none below its bound', () => {
    fc.assert(
      fc.property(anyFullProblem(25), fc.integer({ min: 1, max: 60 }), (one, asks) => {
        let asked = 0;
        const told: SolveProgress[] = [];
        const plan = solveExactly(one, programs, {
          stopped: () => {
            asked += 1;
            return asked > asks;
          },
          onProgress: (progress) => told.push(progress),
        });
        if (!plan.ok) throw new Error(plan.problem.code);
        expect(planFault(one, plan.value.boards)).toBeUndefined();
        const counted = told.flatMap((progress) =>
          progress.plan === undefined ? [] : countedOf(progress.plan),
        );
        expect(counted).toEqual(counted.toSorted((a, b) => b - a));
        expect(countedOf(plan.value)).toBeLessThanOrEqual(counted.at(-1) ?? 0);
        for (const { costCents, boundCents } of told) expect(boundCents).toBeLessThanOrEqual(costCents);
      }),
      { numRuns: 30 },
    );
  });

  test('ends once another solve has proven as much', () => {
    const cost = centsOf(planOf(problem)).cost;
    const plan = solveExactly(problem, programs, {
      stopped: () => false,
      onProgress: () => {},
      elsewhere: () => ({ costCents: cost, boundCents: cost }),
    });
    expect(plan.ok && plan.value.status).toBe('optimal');
  });
});

describe('plans that cost as little', () => {
  test('are told apart by boards: one of 16 ft rather than two of 8 ft at the same price', () => {
    const plan = solved(
      makeProblem(
        [94, 94, 94, 94],
        [
          [8, 750],
          [16, 1500],
        ],
      ),
    );
    expect(plan.boards).toHaveLength(2);
    expect(plan.tiesProven).toBe(true);
  });

  test('are told apart by patterns: the same cut twice rather than two different ones', () => {
    // 8 ft each: 60 + 30 twice, or 60 + 30 and 60 + 30 in any other way; 4 boards of 3 kinds come in 2 patterns.
    const plan = solved(makeProblem([60, 60, 30, 30, 45, 45, 45, 45], [[8, 700]]));
    const patterns = new Set(
      plan.boards.map(({ items }) => items.map((item) => item.lengthSixteenths).join()),
    );
    expect(plan.boards).toHaveLength(4);
    expect(patterns.size).toBe(2);
    expect(plan.tiesProven).toBe(true);
  });
});
