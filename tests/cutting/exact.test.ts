import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkPlan } from '../../core/cutting/check-plan.ts';
import type { CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import { cheapestByTryingAll } from './brute-force.ts';
import { anyFullProblem, anyProblem, centsOf, countedOf, planOf } from './make-problem.ts';
import { solved } from './programs.ts';

describe('the exact plan', () => {
  test('of a handful of pieces costs what trying every way finds, with scarce boards, offcuts, slants and weights', () => {
    fc.assert(
      fc.property(anyFullProblem(7), (problem) => {
        const plan = solved(problem);
        checkPlan(problem, plan.boards);
        expect(countedOf(plan)).toBe(cheapestByTryingAll(problem));
        expect(plan).toMatchObject({ status: 'optimal', gap: 0 });
        expect(plan.proof).not.toBe('none');
      }),
      { numRuns: 120 },
    );
  });

  test('never costs more than the quick one, and its bound is never lower', () => {
    fc.assert(
      fc.property(anyFullProblem(40), (problem) => {
        const quick = planOf(problem);
        const plan = solved(problem);
        expect(countedOf(plan)).toBeLessThanOrEqual(countedOf(quick));
        expect(plan.status).toBe('optimal');
        expect(countedOf(plan)).toBeGreaterThanOrEqual(
          centsOf(quick).bound + quick.centsPerBoard * quick.boards.length,
        );
      }),
      { numRuns: 25 },
    );
  });

  test('does not get cheaper with more kerf, more trim, more pieces or fewer boards on hand', () => {
    fc.assert(
      fc.property(anyFullProblem(20), (problem) => {
        const cost = countedOf(solved(problem));
        const more = (kerf: number, trim: number): CuttingProblem => ({
          ...problem,
          kerfSixteenths: (problem.kerfSixteenths + kerf) as typeof problem.kerfSixteenths,
          endTrimSixteenths: (problem.endTrimSixteenths + trim) as typeof problem.endTrimSixteenths,
        });
        expect(countedOf(solved(more(1, 0)))).toBeGreaterThanOrEqual(cost);
        expect(countedOf(solved(more(0, 2)))).toBeGreaterThanOrEqual(cost);
        const items = [
          ...problem.items,
          ...problem.items.slice(0, 1).map((item) => ({ ...item, mark: 'one more' })),
        ];
        expect(countedOf(solved({ ...problem, items }))).toBeGreaterThanOrEqual(cost);
        const bought = problem.lengths.filter(({ source }) => source !== 'on-hand');
        expect(countedOf(solved({ ...problem, lengths: bought }))).toBeGreaterThanOrEqual(cost);
        expect(
          countedOf(solved({ ...problem, preferences: { ...problem.preferences, useOnHand: false } })),
        ).toBe(countedOf(solved({ ...problem, lengths: bought })));
      }),
      { numRuns: 15 },
    );
  });

  test('does not get dearer with one more length on the list, or with an offcut for nothing', () => {
    fc.assert(
      fc.property(anyProblem(20), fc.integer({ min: 300, max: 2000 }), (problem, length) => {
        const cost = centsOf(solved(problem)).cost;
        const offered = {
          itemId: 'more',
          lengthSixteenths: length as (typeof problem.lengths)[0]['lengthSixteenths'],
          priceCents: 700,
        };
        expect(
          centsOf(solved({ ...problem, lengths: [...problem.lengths, offered] })).cost,
        ).toBeLessThanOrEqual(cost);
        const free = { ...offered, priceCents: 0, available: 1, source: 'on-hand' as const };
        expect(centsOf(solved({ ...problem, lengths: [...problem.lengths, free] })).cost).toBeLessThanOrEqual(
          cost,
        );
      }),
      { numRuns: 20 },
    );
  });

  test('is the same again, and costs the same in whatever order pieces and lengths stand', () => {
    fc.assert(
      fc.property(anyFullProblem(25), (problem) => {
        const plan = solved(problem);
        expect(solved(problem)).toEqual(plan);
        const turned = {
          ...problem,
          items: problem.items.toReversed(),
          lengths: problem.lengths.toReversed(),
        };
        expect(countedOf(solved(turned))).toBe(countedOf(plan));
      }),
      { numRuns: 12 },
    );
  });
});
