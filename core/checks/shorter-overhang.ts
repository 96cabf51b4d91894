import { type EaveToCheck } from './eave-to-check.ts';
import { reshaped, type Tail } from './tail-to-check.ts';
import type { ReckonedTail } from './statics/reckon-tail.ts';

/** Overhangs are tried in steps of this. [in] */
const stepIn = 0.25;
/** Shorter than this is hardly an overhang, and is not proposed. [in] */
const leastIn = 4;

/**
 * The longest overhang, a whole number of quarter inches shorter than the designed one, that keeps a ratio within 1,
 * the backspan shrinking with it by the design's own ratio.
 * @param ratioOf - value over limit of the reshaped tail, at its worst load case. [-]
 * @returns level overhang [in], or undefined where none from 4 in. up does.
 */
export function longestOverhang(
  eave: EaveToCheck,
  tail: Pick<Tail, 'shape' | 'rafter' | 'backHold'>,
  ratioOf: (reckoned: ReckonedTail) => number,
): number | undefined {
  const { shape, rafter } = tail;
  const factor = Math.hypot(1, shape.slope);
  const fits = (overhangLevelIn: number): boolean => {
    const wantedIn = overhangLevelIn * factor * eave.design.backspanRatio;
    const backspanIn =
      tail.backHold === 'ridge'
        ? shape.backspanIn
        : Math.min(wantedIn, rafter.clearBackspanIn ?? Number.POSITIVE_INFINITY);
    const changed = reshaped(
      eave,
      { ...shape, overhangLevelIn, backspanIn },
      eave.input.settings.fastening.sister,
    );
    return ratioOf(changed) <= 1;
  };
  // Loads, moments and sags all grow with the overhang, so the longest that fits is found by halving.
  let low = Math.ceil(leastIn / stepIn);
  let high = Math.ceil(shape.overhangLevelIn / stepIn - 1e-9) - 1;
  if (high < low || !fits(low * stepIn)) return undefined;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (fits(middle * stepIn)) low = middle;
    else high = middle - 1;
  }
  return low * stepIn;
}
