import { fail, ok, type Result } from '../result.ts';
import type { Problem } from '../problems/problem.ts';
import { daysBetween } from '../units/civil-date.ts';
import type { PriceItem, PriceObservation } from './price-list.ts';

/** What an item costs on a day, and where that is known from. */
export type DatedPrice = {
  readonly observation: PriceObservation;
  /** Days from the observation to the day asked for. [d] */
  readonly ageDays: number;
  /** Older than the shop's limit, or past the supplier's own date. */
  readonly stale: boolean;
};

/**
 * The price of an item on a day: its newest observation on or before that day; of two on one day, the later in the list.
 * @param item - the price list item.
 * @param asOf - the day.
 * @param staleDays - age above which a price is flagged. [d]
 * @returns the observation and its age, e.g. observed 2026-03-01, asked for 2026-04-30 -> 60 days; or `no-price`, or
 * `price-not-yet` where every observation is of a later day.
 */
export function priceOn(item: PriceItem, asOf: string, staleDays: number): Result<DatedPrice, Problem> {
  let newest: PriceObservation | undefined;
  let first: PriceObservation | undefined;
  for (const observation of item.prices) {
    if (
      observation.observedOn <= asOf &&
      (newest === undefined || observation.observedOn >= newest.observedOn)
    )
      newest = observation;
    if (first === undefined || observation.observedOn < first.observedOn) first = observation;
  }
  if (first === undefined) return fail({ code: 'no-price', item: item.description });
  if (newest === undefined)
    return fail({ code: 'price-not-yet', item: item.description, asOf, firstOn: first.observedOn });
  const ageDays = daysBetween(newest.observedOn, asOf);
  const lapsed = newest.validUntil !== null && newest.validUntil < asOf;
  return ok({ observation: newest, ageDays, stale: ageDays > staleDays || lapsed });
}
