import type { CommandOutput } from '../../core/contract/contract.ts';
import type { HostEvent } from '../../core/contract/reply.ts';
import { problemKey } from '../../core/cutting/problem-key.ts';
import type { CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import { usdOfCents } from '../../core/cutting/with-bound.ts';
import { fail, ok } from '../../core/result.ts';
import { zeroUsd } from '../../core/units/money.ts';
import type { Handlers } from '../handlers.ts';
import type { Prover } from '../workers/prover.ts';
import { spaced } from './spaced.ts';
import { climbStaircase } from './staircase.ts';

type SolvedPlan = CommandOutput<'cutting.solve'>['plans'][number];

/** Searches of boards that cost least: asked for by a page, told of while they run, and cancelled by it. */
export function cuttingHandlers(
  context: { readonly prover: Prover },
  publish: (event: HostEvent) => void,
): Pick<Handlers, 'cutting.solve' | 'cutting.staircase' | 'cutting.cancel'> {
  const running = new Map<string, AbortController>();
  /** Runs a search that can be cancelled by its id; one of the same id before it is given up. */
  const cancellable = async <T>(solveId: string, work: (signal: AbortSignal) => Promise<T>): Promise<T> => {
    const controller = new AbortController();
    running.get(solveId)?.abort('superseded');
    running.set(solveId, controller);
    try {
      return await work(controller.signal);
    } finally {
      if (running.get(solveId) === controller) running.delete(solveId);
    }
  };
  return {
    'cutting.solve': ({ solveId, problems, limitMs, again }) =>
      cancellable(solveId, async (signal) => {
        const tell = spaced(publish);
        let done = 0;
        const solve = async (problem: CuttingProblem): Promise<SolvedPlan> => {
          const key = problemKey(problem);
          const proven = await context.prover.prove(problem, {
            limitMs,
            again,
            signal,
            onProgress: ({ costCents, boundCents }) =>
              tell({
                kind: 'solving',
                solveId,
                key,
                costUsd: usdOfCents(costCents),
                boundUsd: usdOfCents(boundCents),
                done,
                of: problems.length,
              }),
          });
          done += 1;
          return proven.ok ? { key, ...proven.value } : { key, plan: null, ended: 'no-plan' };
        };
        return ok({ plans: await Promise.all(problems.map(solve)) });
      }),
    'cutting.staircase': ({ solveId, job, eaveId, fromIn, toIn, limitMs }) =>
      cancellable(solveId, async (signal) => {
        if (!job.design.eaves.some((eave) => eave.eaveId === eaveId))
          return fail({ code: 'not-found', what: 'eave' });
        const tell = spaced(publish);
        const staircase = await climbStaircase(context.prover, {
          input: job,
          eaveId,
          fromIn,
          toIn,
          limitMs,
          signal,
          onProgress: (done, { boardsUsd }) =>
            tell({
              kind: 'solving',
              solveId,
              key: 'staircase',
              costUsd: boardsUsd ?? zeroUsd,
              boundUsd: boardsUsd ?? zeroUsd,
              done,
              of: 0,
            }),
        });
        return ok({ staircase });
      }),
    'cutting.cancel': ({ solveId, why }) => {
      const controller = running.get(solveId);
      controller?.abort(why);
      return ok({ wasRunning: controller !== undefined });
    },
  };
}
