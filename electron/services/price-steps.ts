import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { WritableDb } from '../store/database.ts';
import { changePrices, type StoredChange } from '../store/price-changes.ts';

/** Most steps that are held to be undone, over all changes; the oldest are let go of first. */
const mostHeld = 600_000;

/** Changes of the price list that can be taken back, by number, for as long as the program runs. */
export type PriceSteps = {
  /** Makes changes and holds what undoes them. */
  readonly change: (
    db: WritableDb,
    changes: readonly StoredChange[],
  ) => Result<{ readonly stepId: number; readonly changed: number }, Problem>;
  /** Undoes steps, the last one first; what does them again is held in their place, under the number answered. */
  readonly undo: (
    db: WritableDb,
    stepIds: readonly number[],
  ) => Result<{ readonly stepId: number; readonly changed: number }, Problem>;
};

/** Holds no changes yet. */
export function createPriceSteps(): PriceSteps {
  const held = new Map<number, readonly StoredChange[]>();
  let last = 0;
  let total = 0;

  const change: PriceSteps['change'] = (db, changes) => {
    const undo = changePrices(db, changes);
    if (!undo.ok) return undo;
    last += 1;
    held.set(last, undo.value);
    total += undo.value.length;
    for (const [stepId, steps] of held) {
      if (total <= mostHeld || stepId === last) break;
      held.delete(stepId);
      total -= steps.length;
    }
    return ok({ stepId: last, changed: undo.value.length });
  };

  return {
    change,
    undo(db, stepIds) {
      const steps: StoredChange[] = [];
      for (const stepId of stepIds.toReversed()) {
        const known = held.get(stepId);
        if (known === undefined) return fail({ code: 'prices', fault: { what: 'undo-gone' } });
        for (const one of known) steps.push(one);
      }
      // The steps stay held: where the transaction behind this fails, they can be tried again.
      return change(db, steps);
    },
  };
}
