/** A length that can be bought, as much of it as is wanted. */
export type BuyableLength = { readonly roomSixteenths: number; readonly priceCents: number };

/** More pieces than this are not packed by trying all ways. */
export const mostPiecesPacked = 9;

/**
 * The least that boards for a few pieces cost, by trying every way to share them out (dynamic programming over sets of
 * pieces). A piece takes its length and one kerf; a board's room is its length without end trim and one kerf more.
 * @param spans - of the pieces, kerf in it. [1/16 in]
 * @param lengths - that can be bought. [1/16 in, cent]
 * @returns null where some piece fits no board. Worked: pieces of 100 and 120 with boards of 130 at 3 and 230 at 5: 5. [cent]
 */
export function cheapestBoards(spans: readonly number[], lengths: readonly BuyableLength[]): number | null {
  const count = spans.length;
  if (count > mostPiecesPacked) throw new Error('too many pieces to try every way');
  const all = 2 ** count;
  const board = new Float64Array(all).fill(Number.POSITIVE_INFINITY);
  for (let set = 1; set < all; set += 1) {
    let span = 0;
    for (let piece = 0; piece < count; piece += 1) if ((set >> piece) & 1) span += spans[piece] ?? 0;
    for (const { roomSixteenths, priceCents } of lengths)
      if (span <= roomSixteenths && priceCents < (board[set] ?? 0)) board[set] = priceCents;
  }
  const best = new Float64Array(all).fill(Number.POSITIVE_INFINITY);
  best[0] = 0;
  for (let set = 1; set < all; set += 1) {
    const first = set & -set;
    for (let part = set; part > 0; part = (part - 1) & set) {
      if ((part & first) === 0) continue;
      const cents = (board[part] ?? 0) + (best[set ^ part] ?? 0);
      if (cents < (best[set] ?? 0)) best[set] = cents;
    }
  }
  const least = best[all - 1] ?? 0;
  return Number.isFinite(least) ? least : null;
}
