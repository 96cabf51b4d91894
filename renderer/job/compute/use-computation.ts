import { useEffect, useRef, useState } from 'react';
import type { Documents } from '../editor/documents.ts';
import { type Computation, computeNext, nothingComputed, type Surroundings } from './computation.ts';

/** Above this, a computation waits for a pause in the typing. [ms] */
const noticeableMs = 40;
const pauseMs = 250;

/**
 * Keeps the figures up with what is typed: at once while that takes no time that a person notices, else at the next
 * pause in the typing.
 */
export function useComputation(documents: Documents, surroundings: Surroundings): Computation {
  const [computation, setComputation] = useState<Computation>(nothingComputed);
  const tookMs = useRef(0);
  const newest = useRef(computation);
  useEffect(() => {
    const timer = window.setTimeout(
      () => {
        const startMs = performance.now();
        newest.current = computeNext(newest.current, documents, surroundings);
        tookMs.current = performance.now() - startMs;
        setComputation(newest.current);
      },
      tookMs.current > noticeableMs ? pauseMs : 0,
    );
    return () => window.clearTimeout(timer);
  }, [documents, surroundings]);
  return computation;
}
