import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areShorter, planOfShorter } from '../../core/cutting/shorter-pieces.ts';
import { checkPlan } from '../../core/cutting/check-plan.ts';
import type { CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import { problemKey } from '../../core/cutting/problem-key.ts';
import { boardQuestions } from '../../core/job/board-questions.ts';
import { computeJob } from '../../core/job/compute-job.ts';
import { costStaircase, overhangPlaces, withOverhang } from '../../core/job/cost-staircase.ts';
import { createOverhangLadder } from '../../core/job/overhang-ladder.ts';
import { nearestSixteenth } from '../../core/units/sixteenths.ts';
import { anyFullProblem, anyProblem, centsOf, planOf } from '../cutting/make-problem.ts';
import { cheapestByTryingAll } from '../cutting/brute-force.ts';
import { smallJob } from '../takeoff/small-job.ts';

/** The same problem with every piece shorter by so much, and the last few not asked for. [1/16 in] */
function shortened(problem: CuttingProblem, by: number, dropped: number): CuttingProblem {
  return {
    ...problem,
    items: problem.items.slice(0, Math.max(1, problem.items.length - dropped)).map((item) => ({
      ...item,
      lengthSixteenths: nearestSixteenth((item.lengthSixteenths - by) / 16),
    })),
  };
}

const feet = [8, 10, 12, 16];
const job = smallJob({
  priceList: feet.map((lengthFt) => ({
    id: `2x6-${lengthFt}`,
    category: 'lumber',
    description: `2x6 No.2 ${lengthFt} ft`,
    unit: 'each',
    section: '2x6',
    grade: 'No.2',
    lengthFt,
    prices: [{ priceUsd: lengthFt * 1.1, observedOn: '2026-04-01' }],
  })),
});
const eaveId = job.survey.eaves[0]?.id ?? '';

describe('plans carried between overhangs', () => {
  test('boards that hold longer pieces hold shorter ones, for no more money', () => {
    fc.assert(
      fc.property(
        anyFullProblem(14).map((problem) => ({ ...problem, preferences: {} })),
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: 0, max: 3 }),
        (longer, by, dropped) => {
          const shorter = shortened(longer, by, dropped);
          const plan = planOf(longer);
          const carried = planOfShorter(shorter, longer, plan);
          // A piece that gets shorter than its slant is laid as if square, and is no shorter piece of its kind.
          fc.pre(areShorter(shorter, longer));
          // Held against the shorter pieces in whole numbers by the checker, which knows nothing of the longer ones.
          checkPlan(shorter, carried?.boards ?? []);
          expect(Number(carried?.costUsd)).toBeLessThanOrEqual(Number(plan.costUsd));
        },
      ),
      { numRuns: 150 },
    );
  });

  test('pieces that are longer, of another slant or pinned are not taken for shorter ones', () => {
    fc.assert(
      fc.property(anyProblem(10), fc.integer({ min: 1, max: 60 }), (problem, by) => {
        const shorter = shortened(problem, by, 0);
        expect(areShorter(problem, shorter)).toBe(false);
        expect(areShorter({ ...shorter, kerfSixteenths: nearestSixteenth(3) }, problem)).toBe(false);
        const [first] = shorter.items;
        const pinned = {
          ...shorter,
          preferences: { pinned: [{ itemId: 'length-1', marks: [first?.mark ?? ''] }] },
        };
        expect(areShorter(pinned, problem)).toBe(false);
        expect(planOfShorter(pinned, problem, planOf(problem))).toBeUndefined();
      }),
      { numRuns: 40 },
    );
  });

  test('costs rise with the overhang, and the least cost lies between bound and cost at each', () => {
    fc.assert(
      fc.property(anyProblem(6), fc.integer({ min: 1, max: 40 }), (longest, by) => {
        const problems = [3, 2, 1, 0].map((times) => shortened(longest, by * times, 0));
        const ladder = createOverhangLadder();
        for (const [index, problem] of problems.entries()) {
          const key = problemKey(problem);
          ladder.add(12 + index, [{ key, problem }]);
          ladder.learn(key, planOf(problem));
        }
        const costs = ladder.costs();
        const dollars = costs.map(({ boardsUsd }) => Number(boardsUsd));
        const bounds = costs.map(({ boundUsd }) => Number(boundUsd));
        expect(dollars).toEqual(dollars.toSorted((a, b) => a - b));
        expect(bounds).toEqual(bounds.toSorted((a, b) => a - b));
        for (const [index, problem] of problems.entries()) {
          const least = cheapestByTryingAll(problem) / 100;
          expect(bounds[index]).toBeLessThanOrEqual(least);
          expect(dollars[index]).toBeGreaterThanOrEqual(least);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('of a house cost no more than each overhang planned by itself, and every piece is cut once', () => {
    const ladder = createOverhangLadder();
    const places = overhangPlaces({ fromIn: 14, toIn: 18, todayIn: 16 });
    for (const overhangIn of places) {
      const questions = boardQuestions(withOverhang(job, eaveId, overhangIn));
      ladder.add(overhangIn, questions);
      for (const { key, problem } of ladder.open(overhangIn)) ladder.learn(key, planOf(problem));
    }
    for (const { overhangIn, boardsUsd } of ladder.costs()) {
      const alone = computeJob(withOverhang(job, eaveId, overhangIn));
      if (!alone.ok) throw new Error(alone.problem.code);
      const solved = ladder.plans(overhangIn);
      const together = computeJob(withOverhang(job, eaveId, overhangIn), solved);
      if (!together.ok) throw new Error(together.problem.code);
      const sum = (plans: typeof alone.value.cutPlans): number =>
        plans.reduce((cents, plan) => cents + centsOf(plan).cost, 0);
      expect(sum(together.value.cutPlans)).toBe(Math.round(Number(boardsUsd) * 100));
      expect(sum(together.value.cutPlans)).toBeLessThanOrEqual(sum(alone.value.cutPlans));
      for (const [index, plan] of together.value.cutPlans.entries()) {
        const asked = together.value.cuttingProblems[index];
        if (asked !== undefined) checkPlan(asked.problem, plan.boards);
      }
    }
    const { steps } = costStaircase(ladder.costs(), 16);
    expect(steps.length).toBeGreaterThan(2);
    const dollars = steps.map(({ boardsUsd }) => Number(boardsUsd));
    expect(dollars).toEqual(dollars.toSorted((a, b) => a - b));
  });

  test('what has to be asked for boards is what the whole computation asks', () => {
    const computed = computeJob(job);
    if (!computed.ok) throw new Error(computed.problem.code);
    expect(boardQuestions(job)).toEqual(computed.value.cuttingProblems);
  });
});
