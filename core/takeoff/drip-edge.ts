import { Decimal } from 'decimal.js';
import type { JobInput } from '../job/job-file.ts';
import type { PriceItem } from '../pricing/price-list.ts';
import { type DatedPrice, priceOn } from '../pricing/price-on.ts';
import { edgeUsd } from '../pricing/unit-conversion.ts';
import type { Problem } from '../problems/problem.ts';
import { fail, ok, type Result } from '../result.ts';
import type { Usd } from '../units/money.ts';

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

/** The drip edge that is bought, and what a piece or roll of it costs; or what stands in the way. */
export type EdgeOffer = {
  readonly item: PriceItem;
  readonly price: Result<{ readonly dated: DatedPrice; readonly eachUsd: Usd }, Problem>;
};

/**
 * The drip edge that covers a foot for the least money: price over the length a piece covers once lapped. Of equals the
 * first on the list; where none has a usable price, the first that is still sold, with its problem.
 * @param input - day, price list and settings.
 * @returns undefined where the list has no edge that is still sold. Worked: 10 ft at $9.85 (9.85 / 118 in. = 8.3 cents
 * an inch) before 12 ft 6 in. at $12.60 (12.60 / 148 in. = 8.5).
 */
export function edgeOffer(input: Pick<JobInput, 'asOf' | 'priceList' | 'settings'>): EdgeOffer | undefined {
  let best: { readonly offer: EdgeOffer; readonly usdPerIn: Decimal } | undefined;
  let first: EdgeOffer | undefined;
  for (const item of input.priceList) {
    if (item.category !== 'edge' || item.retired) continue;
    const offer: EdgeOffer = { item, price: edgePrice(input, item) };
    first ??= offer;
    if (!offer.price.ok) continue;
    const usdPerIn = new Decimal(offer.price.value.eachUsd).div(coveredIn(item));
    if (best === undefined || usdPerIn.lt(best.usdPerIn)) best = { offer, usdPerIn };
  }
  return best?.offer ?? first;
}

function edgePrice(input: Pick<JobInput, 'asOf' | 'settings'>, item: PriceItem): EdgeOffer['price'] {
  const price = priceOn(item, input.asOf, input.settings.money.priceStaleDays);
  if (!price.ok) return price;
  const lengthIn = ownLengthIn(item);
  if (lengthIn === null)
    return fail({
      code: 'unit-does-not-fit',
      item: item.description,
      unit: item.unit,
      needs: item.unit === 'roll' ? 'the length of a roll' : 'the length of a piece',
    });
  const each = edgeUsd(item, price.value.observation.priceUsd, lengthIn);
  return each.ok ? ok({ dated: price.value, eachUsd: each.value }) : each;
}

/** A roll is lapped only where it ends, which is not counted here. [in] */
function coveredIn(item: PriceItem): number {
  return item.unit === 'roll' ? edgePieceIn(item) : edgePieceIn(item) - dripEdgeLapIn;
}

/** Length of one piece of the price list's drip edge, or the ordinary one where it has none. [in] */
export function edgePieceIn(item: PriceItem | undefined): number {
  return (item === undefined ? null : ownLengthIn(item)) ?? ordinaryEdgeIn;
}

/** What the item says of its length; null where it says nothing, or less than a lap. [in] */
function ownLengthIn(item: PriceItem): number | null {
  const lengthIn = item.lengthIn ?? (item.lengthFt === null ? null : item.lengthFt * 12);
  return lengthIn !== null && lengthIn > dripEdgeLapIn ? lengthIn : null;
}
