import type { PriceItem, PriceList } from '../pricing/price-list.ts';

/** Least lap of two pieces of drip edge. [in] Source: IRC 2015, R905.2.8.5 (as seen in transcription). */
export const dripEdgeLapIn = 2;

/** Length of a piece where the price list gives none. [in] Common practice, no source: 10 ft. */
export const ordinaryEdgeIn = 120;

/**
 * Pieces of drip edge for one straight run, each lapping the last.
 * @param runIn - length of the run. [in]
 * @param pieceIn - length of one piece. [in]
 * @returns whole pieces, ceil((run - lap) / (piece - lap)); a run of 34 ft from 10 ft pieces -> 4.
 */
export function dripEdgePieces(runIn: number, pieceIn: number): number {
  if (runIn <= 0) return 0;
  return Math.max(1, Math.ceil((runIn - dripEdgeLapIn) / (pieceIn - dripEdgeLapIn) - 1e-9));
}

/** The drip edge that the price list offers: its first item of the kind that is still sold. */
export function edgeItem(priceList: PriceList): PriceItem | undefined {
  return priceList.find((item) => item.category === 'edge' && !item.retired);
}

/** Length of one piece of the price list's drip edge. [in] */
export function edgePieceIn(item: PriceItem | undefined): number {
  const lengthIn =
    item?.lengthIn ?? (item?.lengthFt === null || item === undefined ? null : item.lengthFt * 12);
  return lengthIn !== null && lengthIn > dripEdgeLapIn ? lengthIn : ordinaryEdgeIn;
}
