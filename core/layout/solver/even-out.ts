/** Where a tail may stand. [in] */
export type Window = { readonly fromIn: number; readonly toIn: number };

/**
 * Spreads points between two fixed ones as evenly as their windows allow: the taut string through the windows. Of all
 * ways it has the least sum of squared gaps, and the least sum of what gaps exceed any limit by, since no way makes the
 * gaps more alike. Source: the taut string is the least majorized path (from memory: Veinott 1971).
 * Worked: one point between 0 and 48 in a window of 26 to 40 -> 26; two in 10 to 20 and 30 to 40 -> 16 and 32.
 * @param fromIn - fixed, before the first point. [in]
 * @param windows - of the points in order, none before another's reach. [in]
 * @param toIn - fixed, after the last. [in]
 * @returns the points. [in]
 */
export function evenOut(fromIn: number, windows: readonly Window[], toIn: number): readonly number[] {
  const points: number[] = [];
  let at = 0;
  let heightIn = fromIn;
  while (at <= windows.length) {
    const end = bendAfter(at, heightIn, windows, toIn);
    const step = (end.heightIn - heightIn) / (end.place - at);
    for (let place = at + 1; place <= end.place && place <= windows.length; place += 1)
      points.push(place === end.place ? end.heightIn : heightIn + step * (place - at));
    at = end.place;
    heightIn = end.heightIn;
  }
  return points;
}

type Bend = { readonly place: number; readonly heightIn: number };

/** The next place where a string drawn tight from a point bends, or its end. */
function bendAfter(at: number, heightIn: number, windows: readonly Window[], toIn: number): Bend {
  const last = windows.length + 1;
  let steepest = Number.POSITIVE_INFINITY;
  let flattest = Number.NEGATIVE_INFINITY;
  let low: Bend = { place: last, heightIn: toIn };
  let high: Bend = low;
  for (let place = at + 1; place <= last; place += 1) {
    const window = windows[place - 1] ?? { fromIn: toIn, toIn };
    const least = (window.fromIn - heightIn) / (place - at);
    const most = (window.toIn - heightIn) / (place - at);
    if (least > steepest) return high;
    if (most < flattest) return low;
    if (most <= steepest) [steepest, high] = [most, { place, heightIn: window.toIn }];
    if (least >= flattest) [flattest, low] = [least, { place, heightIn: window.fromIn }];
  }
  return { place: last, heightIn: toIn };
}
