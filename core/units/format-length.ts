import { nearestSixteenth } from './sixteenths.ts';

/**
 * Writes a length as a carpenter reads a tape: feet, inches and a reduced fraction to the nearest sixteenth.
 * @param inches - length. [in]
 * @returns e.g. 66.5 -> `5' 6-1/2"`, 60.5 -> `5' 0-1/2"`, 7.25 -> `7-1/4"`, 96 -> `8' 0"`.
 */
export function formatLength(inches: number): string {
  const total = nearestSixteenth(inches);
  const feet = Math.floor(Math.abs(total) / 192);
  const rest = inchesAndFraction(Math.abs(total) - feet * 192, feet > 0);
  const sign = total < 0 ? '-' : '';
  return feet === 0 ? `${sign}${rest}"` : `${sign}${feet}' ${rest}"`;
}

/**
 * Writes a length in inches and a reduced fraction, without feet.
 * @param inches - length. [in]
 * @returns e.g. 66.5 -> `66-1/2"`.
 */
export function formatInches(inches: number): string {
  const total = nearestSixteenth(inches);
  return `${total < 0 ? '-' : ''}${inchesAndFraction(Math.abs(total), false)}"`;
}

/** Behind feet the inches are always said, as `0-1/2`, so that no fraction is taken for one of a foot. */
function inchesAndFraction(sixteenths: number, behindFeet: boolean): string {
  const whole = Math.floor(sixteenths / 16);
  let numerator = sixteenths - whole * 16;
  if (numerator === 0) return String(whole);
  let denominator = 16;
  while (numerator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  return whole === 0 && !behindFeet ? `${numerator}/${denominator}` : `${whole}-${numerator}/${denominator}`;
}
