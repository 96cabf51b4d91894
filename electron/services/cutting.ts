import type { CommandOutput } from '../../core/contract/contract.ts';
import type { HostEvent } from '../../core/contract/reply.ts';
import { problemKey } from '../../core/cutting/problem-key.ts';
import type { CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import { usdOfCents } from '../../core/cutting/with-bound.ts';
import { fail, ok } from '../../core/result.ts';
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
  const begin = (solveId: string): AbortController => {
    const controller = new AbortController();
    running.get(solveId)?.abort('superseded');
    running.set(solveId, controller);
    return controller;
  };
  const end = (solveId: string, controller: AbortController): void => {
    if (running.get(solveId) === controller) running.delete(solveId);
  };
  return {
    'cutting.solve': async ({ solveId, problems, limitMs, again }) => {
      const controller = begin(solveId);
      const tell = spaced((event: HostEvent) => publish(event));
      let done = 0;
      const solve = async (problem: CuttingProblem): Promise<SolvedPlan> => {
        const key = problemKey(problem);
        const proven = await context.prover.prove(problem, {
          limitMs,
          again,
          signal: controller.signal,
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
      const plans = await Promise.all(problems.map(solve));
      end(solveId, controller);
      return ok({ plans });
    },
    'cutting.staircase': async ({ solveId, job, eaveId, fromIn, toIn, limitMs }) => {
      const design = job.design.eaves.find((eave) => eave.eaveId === eaveId);
      if (design === undefined) return fail({ code: 'not-found', what: 'eave' });
      const controller = begin(solveId);
      const { signal } = controller;
      const tell = spaced((event: HostEvent) => publish(event));
      try {
        const { staircase, plans } = await climbStaircase(context.prover, {
          input: job,
          eaveId,
          fromIn,
          toIn,
          todayIn: design.overhangIn,
          limitMs,
          signal,
          onProgress: (progress) => tell({ kind: 'staircase', solveId, ...progress }),
        });
        return ok(
          signal.reason === 'superseded'
            ? { staircase: null, plans: [] }
            : { staircase, plans: [...plans].map(([key, plan]) => ({ key, plan })) },
        );
      } finally {
        end(solveId, controller);
      }
    },
    'cutting.cancel': ({ solveId, why }) => {
      const controller = running.get(solveId);
      controller?.abort(why);
      return ok({ wasRunning: controller !== undefined });
    },
  };
}
