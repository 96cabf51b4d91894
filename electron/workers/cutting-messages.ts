import type { CutPlan, CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import type { SolveProgress, SolveStrategy } from '../../core/cutting/exact/solve-control.ts';
import type { Problem } from '../../core/problems/problem.ts';

/** What the host asks of a cutting worker; it asks for one thing at a time. */
export type CuttingRequest = {
  readonly id: number;
  readonly problem: CuttingProblem;
  readonly strategy: SolveStrategy;
  /** After this the best plan so far is wanted. [ms] */
  readonly limitMs: number;
  /** The slots below; shared, since the solver hears no messages while it works. */
  readonly shared: SharedArrayBuffer;
};

/** What a cutting worker says: how far it is, and at last the plan, a person's problem, or what broke (a bug). */
export type CuttingReply =
  | { readonly id: number; readonly kind: 'progress'; readonly progress: SolveProgress }
  | { readonly id: number; readonly kind: 'plan'; readonly plan: CutPlan }
  | { readonly id: number; readonly kind: 'problem'; readonly problem: Problem }
  | { readonly id: number; readonly kind: 'broke'; readonly error: string };

/** Slots of the shared memory, each an Int32: 1 to stop; and what the other worker has reached. [-, cent, cent] */
export const sharedSlots = { stop: 0, costCents: 1, boundCents: 2 } as const;

/** Highest that a slot holds; stands for "nothing reached". */
export const slotFull = 2_147_483_647;

/** Shared memory for one run: not stopped, nothing reached elsewhere. */
export function newShared(): Int32Array<SharedArrayBuffer> {
  const slots = new Int32Array(new SharedArrayBuffer(3 * Int32Array.BYTES_PER_ELEMENT));
  slots[sharedSlots.costCents] = slotFull;
  return slots;
}
