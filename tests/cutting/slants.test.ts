import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { kerfAlong, usedSixteenths } from '../../core/cutting/board-use.ts';
import { checkPlan, planFault } from '../../core/cutting/check-plan.ts';
import type { CutItem, CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import type { Sixteenths } from '../../core/units/sixteenths.ts';
import { shortestUse } from './brute-force.ts';
import { anyFullProblem, makeProblem, planOf } from './make-problem.ts';
import { solved } from './programs.ts';

/** Pieces of one length with plumb ends of a 6/12 roof, from 2x6: slant 5.5 x 0.5 = 2-3/4 in. */
function plumbEnded(count: number, lengthIn: number, lengths: readonly (readonly [number, number])[]) {
  const problem = makeProblem(Array<number>(count).fill(lengthIn), lengths);
  return {
    ...problem,
    items: problem.items.map((item): CutItem => ({ ...item, slantSixteenths: 44 as Sixteenths })),
  };
}

describe('pieces with parallel plumb ends', () => {
  test('nest: each takes its mid-line length, and the slant is lost once a board', () => {
    // 40 in. overall, 37-1/4 in. mid-line; kerf 1/8 x sqrt(1.25) = 0.14, up to 3/16 in.
    // Two: 37-1/4 + 3/16 + 37-1/4 + 2-3/4 = 77-7/16 in.
    const { items, ...saw } = plumbEnded(2, 40, [[8, 700]]);
    expect(usedSixteenths(saw, items) / 16).toBe(77.4375);
  });

  test('five of 40 in. come out of 16 ft that holds four square ones', () => {
    // 5 x 37-1/4 + 4 x 3/16 + 2-3/4 = 189-3/4 in.; square: 5 x 40 + 4 x 1/8 = 200-1/2 in. of 192.
    expect(planOf(plumbEnded(5, 40, [[16, 1600]])).boards).toHaveLength(1);
    const square = makeProblem(Array<number>(5).fill(40), [[16, 1600]]);
    expect(planOf(square).boards).toHaveLength(2);
  });

  test('take no less than they do in the best of all orders', () => {
    fc.assert(
      fc.property(anyFullProblem(6), (problem) => {
        const used = shortestUse(problem);
        for (const [set, least] of used.entries()) {
          const items = problem.items.filter((_, index) => (set & (1 << index)) !== 0);
          expect(usedSixteenths(problem, items)).toBe(least);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('the kerf along a slanted cut is the least whole sixteenth that covers it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 16 }),
        fc.integer({ min: 24, max: 200 }),
        fc.integer({ min: 0, max: 200 }),
        (kerf, depth, slant) => {
          const saw = {
            kerfSixteenths: kerf as Sixteenths,
            endTrimSixteenths: 0 as Sixteenths,
            depthSixteenths: depth as Sixteenths,
          };
          const along = kerfAlong(saw, slant);
          const exact = kerf * Math.hypot(1, slant / depth);
          expect(along).toBeGreaterThanOrEqual(exact - 1e-9);
          expect(along).toBeLessThan(exact + 1);
        },
      ),
    );
  });

  test('stand in each board by slant, square ones first', () => {
    fc.assert(
      fc.property(anyFullProblem(20), (problem) => {
        for (const board of planOf(problem).boards) {
          const slants = board.items.map(({ slantSixteenths = 0 }) => slantSixteenths);
          expect(slants).toEqual(slants.toSorted((a, b) => a - b));
        }
      }),
      { numRuns: 20 },
    );
  });

  test('do not fit with a square piece between two of them, and the checker says so', () => {
    // Three of 30 in. without kerf, two of them with a slant of 5-1/2 in.: 24-1/2 + 24-1/2 + 30 + 5-1/2 = 84-1/2 in. With
    // the square one in the middle a wedge of 2-3/4 in. is lost on both its sides, and so the slant twice.
    const base = makeProblem([30, 30, 30], [[8, 700]], { kerfIn: 0 });
    const problem: CuttingProblem = {
      ...base,
      items: base.items.map((item, index) =>
        index === 1 ? item : { ...item, slantSixteenths: 88 as Sixteenths },
      ),
      lengths: [{ itemId: 'just', lengthSixteenths: (84.5 * 16) as Sixteenths, priceCents: 700 }],
    };
    const plan = planOf(problem);
    expect(plan.boards).toHaveLength(1);
    expect(planFault(problem, plan.boards)).toBeUndefined();
    const [board] = plan.boards;
    const [square, one, other] = board?.items ?? [];
    if (board === undefined || square === undefined || one === undefined || other === undefined)
      throw new Error('one board with three pieces');
    expect(planFault(problem, [{ ...board, items: [one, square, other] }])).toMatch(/over-cut by 88/);
  });

  test('a slant that spans the whole piece is laid as if it were square', () => {
    const base = makeProblem([4, 4, 30], [[8, 700]]);
    const problem: CuttingProblem = {
      ...base,
      items: base.items.map((item, index) =>
        index < 2 ? { ...item, slantSixteenths: 88 as Sixteenths } : item,
      ),
    };
    const plan = solved(problem);
    checkPlan(problem, plan.boards);
    expect(plan.boards[0]?.offcutSixteenths).toBe((96 - 4 - 4 - 30) * 16 - 3 * 2);
  });
});
