/**
 * Mark of a piece: the eave's letter, the kind of piece, and a number of at least two digits, e.g. `A-E07`.
 * @param letter - of the eave.
 * @param kind - E extender (numbered as its rafter), B bay and its block, F fascia.
 * @param number - from 1. [-]
 */
export function pieceMark(letter: string, kind: 'E' | 'B' | 'F', number: number): string {
  return `${letter}-${kind}${String(number).padStart(2, '0')}`;
}
