import { useCallback, useMemo } from 'react';
import { useTailHand } from './tail-hand.ts';
import type { TailMove, Tails } from './tail-moves.ts';

/** The tails as they stand, for working out moves, and a function that makes one; null while there are no figures. */
export function useTailMoves(): {
  readonly tails: Tails | null;
  readonly go: (move: TailMove | null) => void;
} {
  const { designIndex, design, layout, make } = useTailHand();
  const go = useCallback(
    (move: TailMove | null) => {
      if (move !== null) make(move.what, move.edit, move.thenTake);
    },
    [make],
  );
  const tails = useMemo(
    () => (layout === null ? null : { designIndex, design, layout }),
    [designIndex, design, layout],
  );
  return { tails, go };
}
