import type { Board, CutPlan, CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import { centsOfUsd, gapOf, usdOfCents } from '../../core/cutting/with-bound.ts';
import type { Sixteenths } from '../../core/units/sixteenths.ts';
import type { CuttingReply, CuttingRequest } from '../../electron/workers/cutting-messages.ts';
import { sharedSlots } from '../../electron/workers/cutting-messages.ts';
import type { CuttingEar, CuttingPort } from '../../electron/workers/cutting-port.ts';
import { makeProblem, planOf } from '../cutting/make-problem.ts';

/** A worker that does as the test says: keeps what it was asked, and answers nothing by itself. */
export type DoubledWorker = {
  readonly asked: CuttingRequest[];
  /** Answers the last request. */
  readonly say: (reply: CuttingSaid) => void;
  /** Breaks down by itself. */
  readonly die: () => void;
  readonly isTold: () => { readonly stop: boolean; readonly costCents: number; readonly boundCents: number };
  isHeld: boolean;
  isEnded: boolean;
};

type WithoutId<T> = T extends unknown ? Omit<T, 'id'> : never;
export type CuttingSaid = WithoutId<CuttingReply>;

/**
 * A starter of doubled workers, and every worker that it started, in order.
 * @param atOnce - what each says as soon as it is asked.
 */
export function doubledWorkers(atOnce: readonly CuttingSaid[] = []) {
  const workers: DoubledWorker[] = [];
  const startPort = (ear: CuttingEar): CuttingPort => {
    const asked: CuttingRequest[] = [];
    const last = (): CuttingRequest => {
      const request = asked.at(-1);
      if (request === undefined) throw new Error('the worker was not asked yet');
      return request;
    };
    const worker: DoubledWorker = {
      asked,
      say: (reply) => ear.heard({ id: last().id, ...reply }),
      die: () => ear.gone(new Error('out of memory')),
      isTold() {
        const slots = new Int32Array(last().shared);
        return {
          stop: slots[sharedSlots.stop] === 1,
          costCents: slots[sharedSlots.costCents] ?? -1,
          boundCents: slots[sharedSlots.boundCents] ?? -1,
        };
      },
      isHeld: false,
      isEnded: false,
    };
    workers.push(worker);
    return {
      post(request) {
        asked.push(structuredClone(request));
        for (const said of atOnce) worker.say(said);
      },
      hold: (held) => {
        worker.isHeld = held;
      },
      terminate: () => {
        worker.isEnded = true;
        ear.gone(new Error('terminated'));
        return Promise.resolve(1);
      },
    };
  };
  return { workers, startPort };
}

/** Four pieces of 44 in. out of 8 ft boards at $6.00 or 16 ft at $13.00: two and two in 8 ft boards for $12.00. */
export const fourPieces: CuttingProblem = makeProblem(
  [44, 44, 44, 44],
  [
    [8, 600],
    [16, 1300],
  ],
);

/**
 * A plan of 8 ft boards with these pieces in each.
 * @param boundCents - what it is told that nothing can cost less than. [cent]
 */
export function planWith(
  problem: CuttingProblem,
  groups: readonly (readonly string[])[],
  boundCents: number,
  proof: CutPlan['proof'] = 'none',
): CutPlan {
  const [short] = problem.lengths;
  if (short === undefined) throw new Error('no length');
  const boards = groups.map((marks, index): Board => {
    const items = problem.items.filter(({ mark }) => marks.includes(mark));
    const used = items.reduce((sum, item) => sum + item.lengthSixteenths + problem.kerfSixteenths, 0);
    return {
      number: index + 1,
      itemId: short.itemId,
      lengthSixteenths: short.lengthSixteenths,
      priceCents: short.priceCents,
      onHand: false,
      items,
      offcutSixteenths: Math.max(0, short.lengthSixteenths - used) as Sixteenths,
    };
  });
  const cents = boards.length * short.priceCents;
  return {
    ...planOf(problem),
    boards,
    costUsd: usdOfCents(cents),
    boundUsd: usdOfCents(boundCents),
    ...gapOf(cents, boundCents),
    proof,
    certificate: null,
  };
}

/** A progress as a worker tells it. */
export function progressOf(plan: CutPlan): CuttingSaid {
  return {
    kind: 'progress',
    progress: {
      phase: 'search',
      costCents: centsOfUsd(plan.costUsd),
      boundCents: centsOfUsd(plan.boundUsd),
      plan,
    },
  };
}
