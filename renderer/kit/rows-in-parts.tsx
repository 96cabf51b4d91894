import { type ReactNode, useState } from 'react';
import { Button } from './button.tsx';

/**
 * The rows of a long table in parts, so that typing beside it stays quick: those in view so far, and a button that shows
 * more, null where all are shown.
 * @param atOnce - rows that each press adds.
 */
export function useRowsInParts<R>(
  rows: readonly R[],
  atOnce: number,
): { readonly shown: readonly R[]; readonly more: ReactNode } {
  const [count, setCount] = useState(atOnce);
  if (rows.length <= count) return { shown: rows, more: null };
  return {
    shown: rows.slice(0, count),
    more: (
      <div className="more-rows">
        <Button onPress={() => setCount(count + atOnce)}>
          {`Show ${Math.min(atOnce, rows.length - count)} more`}
        </Button>
      </div>
    ),
  };
}
