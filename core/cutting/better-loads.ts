import { centsOf, needOf, type CuttingModel, type Load } from './cutting-model.ts';

/** Text that is the same for boards cut alike. */
export function loadKey(load: Load): string {
  return `${load.stock}:${load.sizes.join()}`;
}

/**
 * Whether one set of loads is to be preferred: it costs less; or as much, with fewer boards; then fewer patterns to set
 * up at the saw; then the longest offcut.
 */
export function isBetter(model: CuttingModel, one: readonly Load[], other: readonly Load[]): boolean {
  const byCents = centsOf(model, one) - centsOf(model, other);
  if (byCents !== 0) return byCents < 0;
  if (one.length !== other.length) return one.length < other.length;
  const byPatterns = patternCount(one) - patternCount(other);
  if (byPatterns !== 0) return byPatterns < 0;
  return longestOffcut(model, one) > longestOffcut(model, other);
}

/** How many different ways to cut a board there are among loads. */
export function patternCount(loads: readonly Load[]): number {
  return new Set(loads.map(loadKey)).size;
}

function longestOffcut(model: CuttingModel, loads: readonly Load[]): number {
  return loads.reduce(
    (longest, load) => Math.max(longest, (model.stocks[load.stock]?.room ?? 0) - needOf(model, load.sizes)),
    0,
  );
}
