import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkCertificate } from '../../core/cutting/check-certificate.ts';
import type { BoundCertificate, CutPlan, CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import { cheapestByTryingAll } from './brute-force.ts';
import { anyFullProblem, centsOf, countedOf, makeProblem, planOf } from './make-problem.ts';
import { solved } from './programs.ts';

function certificateOf(plan: CutPlan): BoundCertificate {
  if (plan.certificate === null) throw new Error('a plan with pieces carries a certificate');
  return plan.certificate;
}

/** The bound that a plan's certificate proves, nothing above the plan itself looked at. [cents] */
function proven(problem: CuttingProblem, plan: CutPlan): number {
  return checkCertificate(problem, certificateOf(plan), countedOf(plan));
}

describe('the certificate of a bound', () => {
  test('proves no more than the cheapest that there is', () => {
    fc.assert(
      fc.property(anyFullProblem(7), (problem) => {
        const cheapest = cheapestByTryingAll(problem);
        expect(checkCertificate(problem, certificateOf(planOf(problem)), 1e7)).toBeLessThanOrEqual(cheapest);
        expect(checkCertificate(problem, certificateOf(solved(problem)), 1e7)).toBeLessThanOrEqual(cheapest);
      }),
      { numRuns: 60 },
    );
  });

  test('proves the whole cost of a plan that is called proven in whole numbers', () => {
    let exact = 0;
    fc.assert(
      fc.property(anyFullProblem(30), (problem) => {
        const plan = solved(problem);
        if (plan.proof !== 'exact-bound') return;
        exact += 1;
        expect(proven(problem, plan)).toBe(countedOf(plan));
      }),
      { numRuns: 40, seed: 20_260_501 },
    );
    expect(exact).toBeGreaterThan(15);
  });

  test('proves at least the bound that a quick plan states', () => {
    fc.assert(
      fc.property(anyFullProblem(30), (problem) => {
        const plan = planOf(problem);
        const stated = centsOf(plan).bound + plan.centsPerBoard * plan.boards.length;
        expect(proven(problem, plan)).toBeGreaterThanOrEqual(stated);
      }),
      { numRuns: 40 },
    );
  });

  test('is refused where a worth is too high for a board, missing, or no whole number', () => {
    const problem = makeProblem(
      [40, 40, 50, 30, 30],
      [
        [8, 700],
        [12, 1000],
      ],
    );
    const certificate = certificateOf(planOf(problem));
    const changed = (change: (parts: number) => number): BoundCertificate => ({
      ...certificate,
      worths: certificate.worths.map((worth) => ({ ...worth, parts: change(worth.parts) })),
    });
    expect(checkCertificate(problem, certificate)).toBeGreaterThan(1000);
    expect(() =>
      checkCertificate(
        problem,
        changed((parts) => parts * 2),
      ),
    ).toThrow(/more than its price/);
    expect(() =>
      checkCertificate(
        problem,
        changed((parts) => parts + 0.5),
      ),
    ).toThrow(/whole number/);
    expect(() =>
      checkCertificate(
        problem,
        changed((parts) => -parts),
      ),
    ).toThrow(/whole number/);
    expect(() => checkCertificate(problem, { ...certificate, worths: certificate.worths.slice(1) })).toThrow(
      /no worth for/,
    );
  });

  test('of two boards that one scarce length holds, the worth of a third one is asked for', () => {
    // Two 90 in. pieces: one fits the only offcut at nothing, the other needs a board of 8 ft.
    const offcut = {
      itemId: 'offcut',
      lengthSixteenths: (92 * 16) as CuttingProblem['endTrimSixteenths'],
      priceCents: 0,
      available: 1,
      source: 'on-hand' as const,
    };
    const bought = makeProblem([90, 90], [[8, 700]]);
    const problem = { ...bought, lengths: [...bought.lengths, offcut] };
    const plan = planOf(problem);
    expect(centsOf(plan)).toEqual({ cost: 700, bound: 700 });
    const certificate = certificateOf(plan);
    expect(checkCertificate(problem, certificate)).toBe(700);
    expect(() => checkCertificate(problem, { ...certificate, supplies: [] })).toThrow(/offcut/);
  });
});
