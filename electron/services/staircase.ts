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

/** Longest search for one proof; for that of today's overhang, which all others are seen from. [ms] */
const proofMs = 800;
const todayMs = 2500;

/** Share of the time for boards that are found at once, before proofs are searched. [-] */
const quickShare = 0.6;

/**
 * Reckons the cost staircase of one eave. First every overhang's pieces are reckoned, from coarse to fine, and those half
 * an inch apart are given the boards that are found at once; the others take over plans and bounds of their neighbours.
 * Then, as long as there is time, today's is proven if it can be, each other that is not settled so is given boards of its own, and at last proofs are searched
 * from today's overhang outwards; each one settles neighbours too. Between two overhangs the host answers others.
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
    if (isCoarse(overhangIn, index)) await searchAt(overhangIn, atOnceMs);
    tell('reckoning', index + 1, places.length);
  }

  const startMs = performance.now();
  const nearestFirst = places.toSorted((a, b) => Math.abs(a - todayIn) - Math.abs(b - todayIn) || a - b);
  const search = async (inOrder: readonly number[], before: number, share: number, longestMs: number) => {
    for (const [index, overhangIn] of inOrder.entries()) {
      const leftMs = startMs + ask.limitMs * share - performance.now();
      if (signal.aborted || leftMs <= 0) return;
      await searchAt(overhangIn, Math.ceil(Math.min(longestMs, leftMs)));
      tell('searching', before + index + 1, 2 * places.length);
    }
  };
  await search([todayIn], 0, 1, todayMs);
  await search(places, 0, quickShare, atOnceMs);
  await search(nearestFirst, places.length, 1, proofMs);

  // Whoever takes one of these overhangs gets no dearer boards than he was told of.
  for (const overhangIn of places)
    for (const [key, plan] of ladder.plans(overhangIn)) {
      const problem = problems.get(key);
      if (problem !== undefined && plan.certificate !== null) prover.remember(problem, plan);
    }
  return { staircase: costStaircase(ladder.costs(), todayIn), plans: ladder.plans(todayIn) };
}

/** Whether an overhang is given boards as soon as it is reckoned: today's, both ends, and every half inch. */
function isCoarse(overhangIn: number, index: number): boolean {
  return index < 3 || (overhangIn * 2) % 1 === 0;
}

function breath(): Promise<void> {
  return new Promise((resume) => setImmediate(resume));
}
