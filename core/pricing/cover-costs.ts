import { Decimal } from 'decimal.js';
import { ok, type Result } from '../result.ts';
import type { Problem } from '../problems/problem.ts';
import { edgeOffer, edgePieceIn } from '../takeoff/drip-edge.ts';
import type { Need, TakeoffLine } from '../takeoff/takeoff-types.ts';
import { formatLength } from '../units/format-length.ts';
import { boughtDraft, type Costed, lineTrace, nothingCosted } from './cost-draft.ts';
import type { PriceItem } from './price-list.ts';
import { type DatedPrice, priceOn } from './price-on.ts';
import type { PriceQuestion } from './stock-lengths.ts';
import { footUsd, pieceUsd, sheetUsd } from './unit-conversion.ts';

/** How many of a unit are bought, and for how much each. */
type Purchase = { readonly quantity: Decimal; readonly unit: string; readonly unitCostUsd: Decimal.Value };

/** Cost line of whole sheets. A line without a chosen item is already among what the takeoff lacks. */
export function sheetCosts(input: PriceQuestion, line: TakeoffLine): Costed {
  const { need } = line;
  if (need.kind !== 'sheets' || need.sheets <= 0 || need.itemId === '') return nothingCosted;
  return buyItem(input, line, need.itemId, (item, price) => {
    const each = sheetUsd(item, price.observation.priceUsd);
    return each.ok
      ? ok({ quantity: new Decimal(need.sheets), unit: 'sheet', unitCostUsd: each.value })
      : each;
  });
}

/** Cost line of planks: whole stock lengths where the item has a length, else running feet. */
export function plankCosts(input: PriceQuestion, line: TakeoffLine): Costed {
  const { need } = line;
  if (need.kind !== 'planks' || new Decimal(need.lengthFt).lte(0) || need.itemId === '') return nothingCosted;
  return buyItem(input, line, need.itemId, (item, price) => plankPurchase(need, item, price));
}

/** Cost line of roof edge, in whole pieces or rolls of the edge item on the list. */
export function edgeCosts(input: PriceQuestion, line: TakeoffLine): Costed {
  const { need } = line;
  if (need.kind !== 'edge' || need.pieces <= 0) return nothingCosted;
  const offer = edgeOffer(input);
  if (offer === undefined) return { drafts: [], lacks: [{ code: 'no-price', item: line.description }] };
  const { item, price } = offer;
  if (!price.ok) return { drafts: [], lacks: [price.problem] };
  const roll = item.unit === 'roll';
  return bought(line, item, price.value.dated, {
    quantity: roll ? new Decimal(need.lengthIn).div(edgePieceIn(item)).ceil() : new Decimal(need.pieces),
    unit: roll ? 'roll' : 'piece',
    unitCostUsd: price.value.eachUsd,
  });
}

function plankPurchase(
  need: Extract<Need, { kind: 'planks' }>,
  item: PriceItem,
  price: DatedPrice,
): Result<Purchase, Problem> {
  if (item.lengthFt === null) {
    const foot = footUsd(item, price.observation.priceUsd);
    return foot.ok ? ok({ quantity: new Decimal(need.lengthFt), unit: 'LF', unitCostUsd: foot.value }) : foot;
  }
  const piece = pieceUsd(item, price.observation.priceUsd);
  return piece.ok
    ? ok({
        quantity: new Decimal(need.lengthFt).div(item.lengthFt).ceil(),
        unit: 'each',
        unitCostUsd: piece.value,
      })
    : piece;
}

/**
 * Cost line of one item of the price list that a takeoff line names.
 * @param purchase - how many of a unit are bought, and for how much each.
 */
export function buyItem(
  input: PriceQuestion,
  line: TakeoffLine,
  itemId: string,
  purchase: (item: PriceItem, price: DatedPrice) => Result<Purchase, Problem>,
): Costed {
  const item = input.priceList.find(({ id }) => id === itemId);
  if (item === undefined) return { drafts: [], lacks: [{ code: 'no-price', item: line.description }] };
  const price = priceOn(item, input.asOf, input.settings.money.priceStaleDays);
  if (!price.ok) return { drafts: [], lacks: [price.problem] };
  const purchased = purchase(item, price.value);
  return purchased.ok
    ? bought(line, item, price.value, purchased.value)
    : { drafts: [], lacks: [purchased.problem] };
}

function bought(line: TakeoffLine, item: PriceItem, price: DatedPrice, purchase: Purchase): Costed {
  const size = item.lengthFt ?? (item.lengthIn === null ? null : formatLength(item.lengthIn));
  const draft = boughtDraft({
    id: line.id,
    line,
    item,
    price,
    description: item.description,
    quantity: purchase.quantity,
    unit: purchase.unit,
    unitCostUsd: purchase.unitCostUsd,
    parts: [
      lineTrace(line),
      ...(size === null
        ? []
        : [{ label: 'Length of one', value: typeof size === 'number' ? `${size} ft` : size }]),
    ],
  });
  return { drafts: [draft], lacks: [] };
}
