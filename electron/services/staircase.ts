import type { CutPlan, CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import { boardQuestions } from '../../core/job/board-questions.ts';
import {
  type CostStaircase,
  costStaircase,
  overhangPlaces,
  withOverhang,
} from '../../core/job/cost-staircase.ts';
import type { JobInput } from '../../core/job/job-file.ts';
import { createOverhangLadder } from '../../core/job/overhang-ladder.ts';
import type { Prover } from '../workers/prover.ts';

/** Whose overhang is varied, between what, and how long proofs may be searched. */
export type StaircaseAsk = {
  readonly input: JobInput;
  readonly eaveId: string;
  /** [in] */
  readonly fromIn: number;
  readonly toIn: number;
  readonly todayIn: number;
  /** [ms] */
  readonly limitMs: number;
  readonly signal: AbortSignal;
  readonly onProgress: (progress: StaircaseProgress) => void;
};

/** The staircase as far as it is known. */
export type StaircaseProgress = {
  readonly staircase: CostStaircase;
  readonly stage: 'reckoning' | 'searching';
  readonly done: number;
  readonly of: number;
};

/** A staircase, and the plans of today's overhang by key. */
export type Climbed = {
  readonly staircase: CostStaircase;
  readonly plans: ReadonlyMap<string, CutPlan>;
};

/** Only what is found at once. [ms] */
const atOnceMs = 1;

/** Longest search for one proof. [ms] */
const proofMs = 800;

/**
 * Reckons the cost staircase of one eave. First every overhang is given the boards that are found at once, from coarse to
 * fine, plans and bounds carried over between neighbours, so that overhangs that are settled by their neighbours are not
 * asked about at all. Then, while time is left, proofs are searched from today's overhang outwards; each one settles
 * neighbours too. Between two overhangs the host answers others.
 */
export async function climbStaircase(
  prover: Pick<Prover, 'briefly' | 'remember'>,
  ask: StaircaseAsk,
): Promise<Climbed> {
  const { input, eaveId, todayIn, signal } = ask;
  const places = overhangPlaces(ask);
  const ladder = createOverhangLadder();
  const problems = new Map<string, CuttingProblem>();
  const tell = (stage: StaircaseProgress['stage'], done: number, of: number): void =>
    ask.onProgress({ staircase: costStaircase(ladder.costs(), todayIn), stage, done, of });
  const searchAt = async (overhangIn: number, limitMs: number): Promise<void> => {
    const found = ladder.open(overhangIn).map(async ({ key, problem }) => {
      const plan = await prover.briefly(problem, { limitMs, signal });
      if (plan !== null) ladder.learn(key, plan);
    });
    await Promise.all(found);
  };

  for (const [index, overhangIn] of places.entries()) {
    await breath();
    if (signal.aborted) break;
    const questions = boardQuestions(withOverhang(input, eaveId, overhangIn));
    ladder.add(overhangIn, questions);
    for (const { key, problem } of questions ?? []) problems.set(key, problem);
    await searchAt(overhangIn, atOnceMs);
    tell('reckoning', index + 1, places.length);
  }

  const endsAtMs = performance.now() + ask.limitMs;
  const nearestFirst = places.toSorted((a, b) => Math.abs(a - todayIn) - Math.abs(b - todayIn) || a - b);
  for (const [index, overhangIn] of nearestFirst.entries()) {
    const leftMs = endsAtMs - performance.now();
    if (signal.aborted || leftMs <= 0) break;
    await searchAt(overhangIn, Math.ceil(Math.min(proofMs, leftMs)));
    tell('searching', index + 1, places.length);
  }

  // Whoever takes one of these overhangs gets no dearer boards than he was told of.
  for (const overhangIn of places)
    for (const [key, plan] of ladder.plans(overhangIn)) {
      const problem = problems.get(key);
      if (problem !== undefined && plan.certificate !== null) prover.remember(problem, plan);
    }
  return { staircase: costStaircase(ladder.costs(), todayIn), plans: ladder.plans(todayIn) };
}

function breath(): Promise<void> {
  return new Promise((resume) => setImmediate(resume));
}
