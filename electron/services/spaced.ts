/** A page that shows progress needs no more than a few steps a second. [ms] */
const spaceMs = 150;

/**
 * Passes on what is told, but no more often than a person can read; what comes in between is dropped.
 * @param tell - hears it.
 */
export function spaced<T>(tell: (value: T) => void): (value: T) => void {
  let lastMs = Number.NEGATIVE_INFINITY;
  return (value) => {
    const nowMs = performance.now();
    if (nowMs - lastMs < spaceMs) return;
    lastMs = nowMs;
    tell(value);
  };
}
