import type { CutPlan } from '../../core/cutting/cut-plan-types.ts';
import { computeJob } from '../../core/job/compute-job.ts';
import {
  type CostStaircase,
  costStaircase,
  type OverhangCost,
  overhangCost,
  withOverhang,
} from '../../core/job/cost-staircase.ts';
import { lumberSum } from '../../core/job/cutting-choices.ts';
import type { JobInput } from '../../core/job/job-file.ts';
import type { Prover } from '../workers/prover.ts';

/** Whose overhang is varied, between what, and how long each stock may be searched. */
export type StaircaseAsk = {
  readonly input: JobInput;
  readonly eaveId: string;
  /** [in] */
  readonly fromIn: number;
  readonly toIn: number;
  /** [ms] */
  readonly limitMs: number;
  readonly signal: AbortSignal;
  /** Hears of each overhang as it is computed: how many there were, and what it costs. */
  readonly onProgress: (done: number, cost: OverhangCost) => void;
};

/**
 * Climbs the cost staircase of one eave, each step with boards searched by the workers. Between two overhangs the host
 * answers others.
 * @returns the staircase; null where it was given up.
 */
export async function climbStaircase(prover: Prover, ask: StaircaseAsk): Promise<CostStaircase | null> {
  const { input, eaveId, fromIn, toIn, signal } = ask;
  const todayIn = input.design.eaves.find((eave) => eave.eaveId === eaveId)?.overhangIn ?? fromIn;
  const climb = costStaircase({ fromIn, toIn, todayIn });
  const solved = new Map<string, CutPlan>();
  let done = 0;
  for (let next = climb.next(); ; ) {
    if (next.done === true) return next.value;
    await new Promise((resume) => setImmediate(resume));
    if (signal.aborted) return null;
    const cost = await costAt(prover, withOverhang(input, eaveId, next.value), ask, solved);
    if (signal.aborted) return null;
    done += 1;
    ask.onProgress(done, cost);
    next = climb.next(cost);
  }
}

async function costAt(
  prover: Prover,
  input: JobInput,
  { limitMs, signal }: StaircaseAsk,
  solved: Map<string, CutPlan>,
): Promise<OverhangCost> {
  const quick = computeJob(input, solved);
  if (!quick.ok) return overhangCost(undefined);
  const { open } = lumberSum(quick.value);
  for (const { key, problem } of open) {
    const proven = await prover.prove(problem, { limitMs, signal });
    if (proven.ok && proven.value.plan !== null) solved.set(key, proven.value.plan);
  }
  const computed = open.length === 0 ? quick : computeJob(input, solved);
  return overhangCost(computed.ok ? computed.value : undefined);
}
