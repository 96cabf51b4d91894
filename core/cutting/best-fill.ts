/** The best content of a board for every room at once. */
export type BestFill = {
  /** Largest value that fits, by room from 0 up. */
  readonly valueForRoom: Float64Array;
  /** How many of each size make up that value. */
  countsForRoom(room: number): number[];
  /** Table cells computed, as a measure of the work done. */
  readonly cells: number;
};

/**
 * Fills a board with the most value: the bounded knapsack, by dynamic programming over the room.
 * Exact as long as values are whole numbers below 2^53 in sum.
 * @param spans - by size. [1/16 in]
 * @param most - how many of each size there are.
 * @param values - by size; sizes with no value above zero stay out.
 * @param longestRoom - largest room asked for. [1/16 in]
 * @returns best value and counts for every room; 4, 3 with values 5, 4 in a room of 10 -> 13 (one 4, two 3).
 */
export function bestFill(
  spans: readonly number[],
  most: readonly number[],
  values: ArrayLike<number>,
  longestRoom: number,
): BestFill {
  const best = new Float64Array(longestRoom + 1);
  const before = new Float64Array(longestRoom + 1);
  const rows: { readonly size: number; readonly span: number; readonly taken: Uint16Array }[] = [];
  let cells = 0;
  for (let size = 0; size < spans.length; size += 1) {
    const span = spans[size] ?? 0;
    const value = values[size] ?? 0;
    const fitting = Math.floor(longestRoom / span);
    const limit = Math.min(most[size] ?? 0, fitting);
    if (value <= 0 || limit === 0) continue;
    const taken = new Uint16Array(longestRoom + 1);
    if (limit === 1) {
      cells += longestRoom - span;
      for (let room = longestRoom; room >= span; room -= 1) {
        const candidate = (best[room - span] ?? 0) + value;
        if (candidate > (best[room] ?? 0)) {
          best[room] = candidate;
          taken[room] = 1;
        }
      }
    } else if (limit === fitting) {
      cells += longestRoom - span;
      for (let room = span; room <= longestRoom; room += 1) {
        const candidate = (best[room - span] ?? 0) + value;
        if (candidate > (best[room] ?? 0)) {
          best[room] = candidate;
          taken[room] = (taken[room - span] ?? 0) + 1;
        }
      }
    } else {
      before.set(best);
      for (let count = 1; count <= limit; count += 1) {
        const width = count * span;
        const worth = count * value;
        cells += longestRoom - width;
        for (let room = width; room <= longestRoom; room += 1) {
          const candidate = (before[room - width] ?? 0) + worth;
          if (candidate > (best[room] ?? 0)) {
            best[room] = candidate;
            taken[room] = count;
          }
        }
      }
    }
    rows.push({ size, span, taken });
  }
  return {
    valueForRoom: best,
    cells,
    countsForRoom(room) {
      const counts = spans.map(() => 0);
      let left = Math.min(room, longestRoom);
      for (let index = rows.length - 1; index >= 0; index -= 1) {
        const row = rows[index];
        if (row === undefined) continue;
        const count = row.taken[left] ?? 0;
        counts[row.size] = count;
        left -= count * row.span;
      }
      return counts;
    },
  };
}
