/** Median of some figures. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? Number.NaN) + upper) / 2;
}

/**
 * Runs works in turn, round after round, so that each sees the same machine, and gives each one's median time.
 * @param works - named works.
 * @param rounds - how often each is run, after one round that is not counted.
 * @returns median of each work. [ms]
 */
export async function sideBySide(
  works: Readonly<Record<string, () => unknown>>,
  rounds: number,
): Promise<Readonly<Record<string, number>>> {
  const times: Record<string, number[]> = {};
  for (let round = 0; round <= rounds; round += 1) {
    for (const [name, work] of Object.entries(works)) {
      const before = performance.now();
      await work();
      const took = performance.now() - before;
      if (round > 0) (times[name] ??= []).push(took);
    }
  }
  return Object.fromEntries(Object.entries(times).map(([name, taken]) => [name, median(taken)]));
}
