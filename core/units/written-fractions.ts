/** Fractions of one character that phones and keyboards put in, as a carpenter would write them out. */
const writtenOut: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/**
 * Writes fractions of one character, and the fraction slash, out with digits: `6½` -> `6 1/2`.
 * @param text - what was typed.
 */
export function writeFractionsOut(text: string): string {
  return text
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (character) => ` ${writtenOut[character]}`)
    .replaceAll('⁄', '/')
    .replace(/\s*\/\s*/g, '/');
}
