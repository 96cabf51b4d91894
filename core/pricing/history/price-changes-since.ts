import { Decimal } from 'decimal.js';
import type { PriceItem, PriceObservation } from '../price-list.ts';

/** An item whose price is another than it was. */
export type PriceChangeSince = {
  readonly itemId: string;
  readonly description: string;
  readonly supplier: string;
  readonly unit: string;
  /** What held on the day; null where it had no price yet. */
  readonly before: PriceObservation | null;
  /** What holds now. */
  readonly after: PriceObservation;
  /** To tenths, half up; null without an earlier price, or from nothing. [%] */
  readonly percent: string | null;
};

/**
 * What changed between two days: items that cost another price, or had none before. Those that rose most come first, then
 * new ones. Retired items are left out.
 * @param earlier - the list with the price that held on the earlier day.
 * @param later - the list with the price that holds on the later.
 * @param earlierDay - the earlier day; a price of a later day is none yet.
 */
export function priceChangesSince(
  earlier: readonly PriceItem[],
  later: readonly PriceItem[],
  earlierDay: string,
  laterDay: string,
): readonly PriceChangeSince[] {
  const olds = new Map(earlier.map((item) => [item.id, heldOf(item, earlierDay)]));
  return later
    .flatMap((item): readonly PriceChangeSince[] => {
      const held = heldOf(item, laterDay);
      const old = olds.get(item.id);
      if (item.retired || held === undefined) return [];
      if (old !== undefined && new Decimal(old.priceUsd).eq(held.priceUsd)) return [];
      return [
        {
          itemId: item.id,
          description: item.description,
          supplier: item.supplier,
          unit: item.unit,
          before: old ?? null,
          after: held,
          percent: old === undefined ? null : changePercent(old.priceUsd, held.priceUsd),
        },
      ];
    })
    .toSorted(
      (a, b) =>
        new Decimal(b.percent ?? -1e9).comparedTo(a.percent ?? -1e9) ||
        a.description.localeCompare(b.description, 'en', { numeric: true }),
    );
}

/**
 * By how much a price changed.
 * @returns to tenths, half up: 10 to 10.75 -> 7.5; null where it began at nothing. [%]
 */
export function changePercent(before: Decimal.Value, after: Decimal.Value): string | null {
  if (new Decimal(before).isZero()) return null;
  const percent = new Decimal(after)
    .minus(before)
    .div(before)
    .times(100)
    .toDecimalPlaces(1, Decimal.ROUND_HALF_UP);
  return percent.isZero() ? '0.0' : percent.toFixed(1);
}

/** The one price of an item in a day's list; none where it is of a later day. */
function heldOf(item: PriceItem, day: string): PriceObservation | undefined {
  return item.prices.find(({ observedOn }) => observedOn <= day);
}
