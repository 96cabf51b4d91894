import { fail, ok, type Result } from '../result.ts';
import type { Problem } from '../problems/problem.ts';
import { writeFractionsOut } from './written-fractions.ts';

/** Steepest pitch that the program takes, as rise in 12 of run. */
export const steepestPitchRisePer12 = 24;

/**
 * Two pitches closer than this are one pitch to a level or a framing square: 33.7 deg, read off a level, is 8/12.
 * Common practice, no source. [in/12 in]
 */
export const samePitchRisePer12 = 0.01;

/** True where a pitch is steeper than another by more than is read off a level, e.g. 8.01/12 is not steeper than 8/12. */
export function isSteeper(risePer12: number, thanRisePer12: number): boolean {
  // A billionth over, so that a difference of just the limit does not hang on binary fractions.
  return risePer12 - thanRisePer12 > samePitchRisePer12 + 1e-9;
}

const tapeDenominators: ReadonlySet<string> = new Set(['2', '4', '8', '16']);

/**
 * Reads a roof pitch: `6/12`, `6 in 12`, `6:12`, `6`, `7 1/2`, `7-1/4` (rise in 12), `26.57 deg`, `26.57°`, `50 %`.
 * @param text - what was typed.
 * @returns rise in 12 of run [in/12 in]; or a problem when unreadable, 0, or above 24/12.
 */
export function parsePitch(text: string): Result<number, Problem> {
  const normal = writeFractionsOut(text.toLowerCase()).trim().replace(/["”″]/g, '').replace(/\s+/g, ' ');
  const number = String.raw`(\d+(?:\.\d+)?|\.\d+)`;
  const fractionRise = /^(\d+)[ -](\d+)\/(\d+)(?: ?(?:\/|:|in) ?12)?$/.exec(normal);
  if (fractionRise) {
    const [, whole, top = '', bottom = ''] = fractionRise;
    // `6 6/12` is a slip: no tape shows twelfths, and a fraction of 1 or more is a whole inch.
    return tapeDenominators.has(bottom) && Number(top) < Number(bottom)
      ? checkPitch(Number(whole) + Number(top) / Number(bottom), text)
      : fail({ code: 'pitch-unreadable', typed: text });
  }
  const ratio = new RegExp(String.raw`^${number} ?(?:\/|:| in ) ?${number}$`).exec(normal);
  if (ratio) {
    return Number(ratio[2]) === 0
      ? fail({ code: 'pitch-unreadable', typed: text })
      : checkPitch((Number(ratio[1]) / Number(ratio[2])) * 12, text);
  }
  const degrees = new RegExp(String.raw`^${number} ?(?:°|deg|degrees?)\.?$`).exec(normal);
  if (degrees) {
    const angle = Number(degrees[1]);
    return angle >= 90
      ? fail({ code: 'pitch-out-of-range', typed: text })
      : checkPitch(Math.tan((angle * Math.PI) / 180) * 12, text);
  }
  const percent = new RegExp(String.raw`^${number} ?%$`).exec(normal);
  if (percent) return checkPitch((Number(percent[1]) / 100) * 12, text);
  const bare = new RegExp(String.raw`^${number}$`).exec(normal);
  if (bare) return checkPitch(Number(bare[1]), text);
  return fail({ code: 'pitch-unreadable', typed: text });
}

/** Holds a pitch against the range the program takes: above 0 and at most 24/12. */
export function checkPitch(risePer12: number, typed: string): Result<number, Problem> {
  return Number.isFinite(risePer12) && risePer12 > 0 && risePer12 <= steepestPitchRisePer12 + 1e-9
    ? ok(risePer12)
    : fail({ code: 'pitch-out-of-range', typed });
}

/**
 * Slope factor: length along the slope per unit of level run, sqrt(1 + m^2).
 * @param risePer12 - pitch as rise in 12. [in/12 in]
 * @returns the factor, e.g. 6/12 -> 1.118. [-]
 */
export function slopeFactor(risePer12: number): number {
  return Math.hypot(1, risePer12 / 12);
}

/** Slope angle from level of a pitch, e.g. 6/12 -> 26.565. [deg] */
export function slopeAngleDeg(risePer12: number): number {
  return (Math.atan(risePer12 / 12) * 180) / Math.PI;
}

/** Writes a pitch as rise in 12, to two decimals at most, e.g. `6/12`, `6.25/12`. */
export function formatPitch(risePer12: number): string {
  return `${Number(risePer12.toFixed(2))}/12`;
}
