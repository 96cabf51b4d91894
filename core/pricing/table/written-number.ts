import type { Problem } from '../../problems/problem.ts';
import { fail, ok, type Result } from '../../result.ts';

/** What stands before the fraction of a number: `1,234.56` or `1.234,56`. */
export type DecimalSign = 'point' | 'comma';

/** Thousands either all marked off or none: `1,234,567.5`, `1234567.5`, `.75`. */
const withPoint = /^-?(?:\d{1,3}(?:,\d{3})+(?:\.\d*)?|\d+\.?\d*|\.\d+)$/;
const withComma = /^-?(?:\d{1,3}(?:\.\d{3})+(?:,\d*)?|\d+,?\d*|,\d+)$/;

/**
 * Reads a number or an amount as it is written; a dollar sign and blanks around and between digits are passed over.
 * @param text - what stands in the cell.
 * @param sign - which sign stands before the fraction; the other one marks off thousands. Nothing is guessed: `1,234` is
 * 1234 by point and 1.234 by comma.
 * @returns exact decimal text, e.g. `$1,234.50` by point and `1.234,50` by comma -> `1234.50`.
 */
export function readNumber(text: string, sign: DecimalSign): Result<string, Problem> {
  const bare = text.replace(/[\s\u00a0\u202f]/g, '').replace(/^(-?)\$(-?)/, '$1$2');
  if (!(sign === 'point' ? withPoint : withComma).test(bare))
    return fail({ code: 'number-unreadable', typed: text });
  const plain = sign === 'point' ? bare.replaceAll(',', '') : bare.replaceAll('.', '').replace(',', '.');
  return ok(plain.replace(/^(-?)\./, '$10.').replace(/\.$/, ''));
}

/** True where a number says something else by the other sign: `1,234`, `12.500`. */
export function isTwoWays(text: string): boolean {
  const point = readNumber(text, 'point');
  const comma = readNumber(text, 'comma');
  return point.ok && comma.ok && Number(point.value) !== Number(comma.value);
}
