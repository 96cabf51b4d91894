import type { CutPlan, CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import type { SolveProgress, SolveStrategy } from '../../core/cutting/exact/solve-control.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { newShared, sharedSlots, slotFull, type CuttingReply } from './cutting-messages.ts';
import type { CuttingEar, CuttingPort } from './cutting-port.ts';

/** What is to be solved, and how. */
export type SolveOrder = {
  readonly problem: CuttingProblem;
  readonly strategy: SolveStrategy;
  /** [ms] */
  readonly limitMs: number;
  readonly onProgress: (progress: SolveProgress) => void;
};

/** How a run ended. */
export type Outcome =
  | { readonly kind: 'plan'; readonly plan: CutPlan }
  | { readonly kind: 'problem'; readonly problem: Problem }
  | { readonly kind: 'broke'; readonly error: string }
  | { readonly kind: 'killed' };

/** One solve under way. */
export type Run = {
  /** Never rejects. */
  readonly outcome: Promise<Outcome>;
  /** Asks the worker to end with what it has. */
  readonly stop: () => void;
  /** Ends the worker; the next run starts another. */
  readonly kill: () => void;
  /** Lets the worker know what another has reached. [cent] */
  readonly tell: (costCents: number, boundCents: number) => void;
};

/** A place for one worker, started when it is first needed and used again and again. */
export type SolverSeat = {
  readonly isFree: () => boolean;
  /** Settles once no run is under way. */
  readonly whenFree: () => Promise<void>;
  /** Starts a run; the seat must be free. */
  readonly run: (order: SolveOrder) => Run;
  readonly close: () => Promise<void>;
};

/**
 * Makes a seat without a worker yet.
 * @param startPort - starts a worker.
 */
export function createSolverSeat(startPort: (ear: CuttingEar) => CuttingPort): SolverSeat {
  let port: CuttingPort | undefined;
  let lastId = 0;
  let current: {
    readonly id: number;
    readonly order: SolveOrder;
    readonly end: (o: Outcome) => void;
  } | null = null;
  let running: Promise<unknown> = Promise.resolve();

  function heard(reply: CuttingReply): void {
    if (current === null || reply.id !== current.id) return;
    if (reply.kind === 'progress') current.order.onProgress(reply.progress);
    else current.end(reply);
  }

  function open(): CuttingPort {
    const opened: CuttingPort = startPort({
      heard: (reply) => {
        if (port === opened) heard(reply);
      },
      gone: (error) => {
        if (port !== opened) return;
        port = undefined;
        current?.end({ kind: 'broke', error: error.stack ?? error.message });
      },
    });
    return opened;
  }

  function letGo(): Promise<unknown> {
    const ended = port;
    port = undefined;
    current?.end({ kind: 'killed' });
    return ended?.terminate() ?? Promise.resolve();
  }

  return {
    isFree: () => current === null,
    whenFree: async () => {
      let last: Promise<unknown> | undefined;
      // Whoever waits longest is served first, so another run may have begun meanwhile.
      while (running !== last) {
        last = running;
        await last;
      }
    },
    run(order) {
      if (current !== null) throw new Error('a solver seat runs one solve at a time');
      lastId += 1;
      const id = lastId;
      const slots = newShared();
      const { promise: outcome, resolve } = Promise.withResolvers<Outcome>();
      const used = (port ??= open());
      current = {
        id,
        order,
        end: (how) => {
          current = null;
          used.hold(false);
          resolve(how);
        },
      };
      running = outcome;
      used.hold(true);
      used.post({
        id,
        problem: order.problem,
        strategy: order.strategy,
        limitMs: order.limitMs,
        shared: slots.buffer,
      });
      return {
        outcome,
        stop: () => void Atomics.store(slots, sharedSlots.stop, 1),
        kill: () => {
          if (current?.id === id) void letGo();
        },
        tell: (costCents, boundCents) => {
          Atomics.store(slots, sharedSlots.costCents, slotOf(costCents));
          Atomics.store(slots, sharedSlots.boundCents, slotOf(boundCents));
        },
      };
    },
    close: async () => {
      await letGo();
    },
  };
}

function slotOf(cents: number): number {
  return Math.max(0, Math.min(slotFull, Number.isFinite(cents) ? Math.trunc(cents) : slotFull));
}
