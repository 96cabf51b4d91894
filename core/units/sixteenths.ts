/** A whole number of sixteenths of an inch: the unit of everything that is cut. */
export type Sixteenths = number & { readonly __unit: 'sixteenths' };

/**
 * Rounds a length to the nearest sixteenth, half away from zero.
 * @param inches - length. [in]
 * @returns whole sixteenths, e.g. 66.53 in. -> 1064 (66-1/2 in.). [1/16 in]
 */
export function nearestSixteenth(inches: number): Sixteenths {
  const magnitude = Math.floor(Math.abs(inches) * 16 + 0.5);
  return (inches < 0 ? -magnitude || 0 : magnitude) as Sixteenths;
}

/**
 * Rounds a length up to a whole sixteenth, forgiving binary dust below a millionth of a sixteenth.
 * @param inches - length. [in]
 * @returns whole sixteenths not shorter than the length. [1/16 in]
 */
export function sixteenthsUp(inches: number): Sixteenths {
  return (Math.ceil(inches * 16 - 1e-6) + 0) as Sixteenths; // + 0 turns -0 into 0
}

/**
 * Rounds a length down to a whole sixteenth, forgiving binary dust above.
 * @param inches - length. [in]
 * @returns whole sixteenths not longer than the length. [1/16 in]
 */
export function sixteenthsDown(inches: number): Sixteenths {
  return Math.floor(inches * 16 + 1e-6) as Sixteenths;
}

/** Converts whole sixteenths to inches, exactly. */
export function inchesOf(sixteenths: Sixteenths): number {
  return sixteenths / 16;
}
