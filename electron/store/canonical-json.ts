import { createHash } from 'node:crypto';

/**
 * Writes a value as JSON in one way only: keys sorted, no spaces, absent keys left out, so that equal values give equal
 * text and equal hashes.
 * @throws on a number that JSON cannot carry: NaN in a record would be a bug.
 */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(value, (_key, inner: unknown) => {
    if (typeof inner === 'number' && !Number.isFinite(inner)) throw new Error('a number is not finite');
    if (typeof inner !== 'object' || inner === null || Array.isArray(inner)) return inner;
    return Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)));
  });
}

/** SHA-256 of a text in UTF-8, in hexadecimal. */
export function sha256(text: string): string {
  return createHash('sha256').update(text, 'utf8').digest('hex');
}
