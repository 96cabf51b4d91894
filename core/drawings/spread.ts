/**
 * Moves labels on a line apart so that none is nearer to the next than a gap, each as little as can be: neighbours that
 * crowd one another stand about their own middle (least squares, by pooling neighbours that are out of order).
 * @param wanted - where each label would stand, in order. [px]
 * @param gap - least distance of two labels. [px]
 * @returns where each stands, in the same order. Worked: 0, 1, 30 with a gap of 10 -> -4.5, 5.5, 30.
 */
export function spread(wanted: readonly number[], gap: number): readonly number[] {
  type Pool = { readonly sum: number; readonly count: number };
  const pools: Pool[] = [];
  for (const [index, place] of wanted.entries()) {
    let pool: Pool = { sum: place - index * gap, count: 1 };
    for (let last = pools.at(-1); last !== undefined && meanOf(last) > meanOf(pool); last = pools.at(-1)) {
      pools.pop();
      pool = { sum: last.sum + pool.sum, count: last.count + pool.count };
    }
    pools.push(pool);
  }
  return pools
    .flatMap((pool) => Array.from({ length: pool.count }, () => meanOf(pool)))
    .map((mean, index) => mean + index * gap);
}

function meanOf(pool: { readonly sum: number; readonly count: number }): number {
  return pool.sum / pool.count;
}
