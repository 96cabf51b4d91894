import { useEffect, useRef, useState } from 'react';
import type { CutPlan } from '../../../core/cutting/cut-plan-types.ts';
import type { Documents } from '../editor/documents.ts';
import { type Computation, computeNext, nothingComputed, type Surroundings } from './computation.ts';

/** Above this, a computation waits for a pause in the typing; what stands alone, such as undo, waits for nothing. [ms] */
const noticeableMs = 40;
const pauseMs = 250;
/** A half-typed length is no reason to call the figures old: they are called so after this. [ms] */
const patienceMs = 600;

/** A computation and what it was made of. */
type Made = {
  readonly computation: Computation;
  readonly documents: Documents | null;
  readonly surroundings: Surroundings | null;
};

/**
 * Keeps the figures up with what is typed: at once while that takes no time that a person notices, else at the next
 * pause in the typing.
 * @param isTyping - whether the last change was a keystroke in an entry, so that more may follow.
 * @param solved - cut plans that were searched; where one comes in, the figures are worked out with it.
 * @returns the figures, and whether newer ones are on their way.
 */
export function useComputation(
  documents: Documents,
  surroundings: Surroundings,
  isTyping: boolean,
  solved?: ReadonlyMap<string, CutPlan>,
): { readonly computation: Computation; readonly isWorking: boolean } {
  const [made, setMade] = useState<Made>({
    computation: nothingComputed,
    documents: null,
    surroundings: null,
  });
  const tookMs = useRef(0);
  const newest = useRef(made.computation);
  const typing = useRef(isTyping);
  useEffect(() => {
    typing.current = isTyping;
  });
  useEffect(() => {
    let timer = window.setTimeout(
      () => {
        const startMs = performance.now();
        const next = computeNext(newest.current, documents, surroundings, solved);
        tookMs.current = performance.now() - startMs;
        const show = (): void => {
          newest.current = next;
          setMade({ computation: next, documents, surroundings });
        };
        if (newest.current.current && !next.current) timer = window.setTimeout(show, patienceMs);
        else show();
      },
      typing.current && tookMs.current > noticeableMs ? pauseMs : 0,
    );
    return () => window.clearTimeout(timer);
  }, [documents, surroundings, solved]);
  const isWorking = made.documents !== documents || made.surroundings !== surroundings;
  return { computation: made.computation, isWorking };
}
