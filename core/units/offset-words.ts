import { formatInches } from './format-length.ts';

/**
 * Writes how far something stands out of or in from a line.
 * @param outIn - outward is positive. [in]
 * @returns e.g. `3/4" out`, `1/2" in`, `0`.
 */
export function outText(outIn: number): string {
  const text = formatInches(Math.abs(outIn));
  if (text === '0"') return '0';
  return outIn > 0 ? `${text} out` : `${text} in`;
}
