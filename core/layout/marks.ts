/**
 * Kinds of pieces by the letter in their mark: E extender (numbered as its rafter), T tail hung between rafters, H header
 * block, P filler, S shim or packer, B bay and its block, F fascia, U sub-fascia, L ledger, N nailer of a level soffit; at a
 * rake K lookout or rung, G barge rafter, R ladder rail.
 */
export type MarkKind = 'E' | 'T' | 'H' | 'P' | 'S' | 'B' | 'F' | 'U' | 'L' | 'N' | 'K' | 'G' | 'R';

/**
 * Mark of a piece: the eave's letter, the kind of piece, and a number of at least two digits, e.g. `A-E07`.
 * @param letter - of the eave.
 * @param kind - of piece.
 * @param number - from 1. [-]
 */
export function pieceMark(letter: string, kind: MarkKind, number: number): string {
  return `${letter}-${kind}${String(number).padStart(2, '0')}`;
}
