import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkCertificate } from '../../core/cutting/check-certificate.ts';
import { checkPlan } from '../../core/cutting/check-plan.ts';
import { allOf } from '../../core/cutting/column.ts';
import { cutAgainst } from '../../core/cutting/exact/cut-against.ts';
import { relax } from '../../core/cutting/relaxation.ts';
import { boardQuestions } from '../../core/job/board-questions.ts';
import { withOverhang } from '../../core/job/cost-staircase.ts';
import { jobFileSchema } from '../../core/job/job-file.ts';
import { centsOf, modelOf, planOf } from './make-problem.ts';
import { solved } from './programs.ts';

const job = jobFileSchema.parse(
  JSON.parse(readFileSync(new URL('../../fixtures/sample-job.json', import.meta.url), 'utf8')),
);
const [eave] = job.design.eaves;
if (eave === undefined) throw new Error('the sample has no eave');

test('the boards of the sample house are shown to be the cheapest, and the certificate can be reckoned again', () => {
  const questions = boardQuestions(job) ?? [];
  expect(questions.length).toBeGreaterThan(2);
  for (const { problem } of questions) {
    const plan = solved(problem);
    checkPlan(problem, plan.boards);
    expect(plan.proof).not.toBe('none');
    expect(centsOf(plan).cost).toBeLessThanOrEqual(centsOf(planOf(problem)).cost);
    if (plan.certificate === null) throw new Error('a plan with pieces carries a certificate');
    const reckoned = checkCertificate(problem, plan.certificate, centsOf(plan).cost);
    // What a search in floating point ruled out besides is no part of the certificate.
    expect(reckoned).toBeLessThanOrEqual(centsOf(plan).cost);
    expect(plan.proof === 'exact-bound' ? reckoned : centsOf(plan).cost).toBe(centsOf(plan).cost);
  }
});

test('a sixteenth more of overhang never makes the proven boards of the sample cheaper', () => {
  const costs = [0, 1 / 16, 1 / 8].map((moreIn) => {
    const questions = boardQuestions(withOverhang(job, eave.eaveId, eave.overhangIn + moreIn)) ?? [];
    const plans = questions.map(({ problem }) => solved(problem));
    expect(plans.map(({ proof }) => proof)).not.toContain('none');
    return plans.reduce((sum, plan) => sum + centsOf(plan).cost, 0);
  });
  expect(costs).toEqual(costs.toSorted((a, b) => a - b));
});

test('numbers of boards that leave pieces over even in fractions are ruled out by worths', () => {
  const problem = (boardQuestions(job) ?? [])
    .map((one) => one.problem)
    .find(({ items }) => items.length > 60);
  if (problem === undefined) throw new Error('the sample has no large stock');
  const model = modelOf(problem);
  const { demand } = allOf(model);
  const span = (size: number): number => model.sizes[size]?.span ?? 1;
  let ruledOut = 0;
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 5 }), { minLength: 7, maxLength: 7 }), (boards) => {
      const stocks = model.stocks.map((stock, index) => ({
        ...stock,
        cents: 0,
        available: boards[index] ?? 0,
      }));
      const { columns, finished } = relax(
        { ...model, stocks, limited: true },
        { demand, supply: boards },
        [],
        { cells: 1e9 },
        span,
      );
      const over = demand.reduce((sum, wanted, size) => {
        const cut = columns.reduce(
          (pieces, { column, boards: times }) =>
            pieces + times * (column.counts[column.sizes.indexOf(size)] ?? 0),
          0,
        );
        return sum + (wanted - cut);
      }, 0);
      expect(finished).toBe(true);
      const cut = cutAgainst(model, boards, [], () => false);
      if (cut !== undefined) ruledOut += 1;
      expect(cut !== undefined).toBe(over > 1e-3);
    }),
    {
      numRuns: 60,
      seed: 1,
      examples: [[[1, 14, 4, 0, 0, 1, 0]], [[2, 8, 7, 0, 1, 1, 0]], [[4, 7, 8, 0, 0, 1, 0]]],
    },
  );
  expect(ruledOut).toBeGreaterThan(2);
});
