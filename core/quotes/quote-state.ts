import { daysBetween } from '../units/civil-date.ts';

/** What the shop file keeps of where a quote stands. */
export type KeptState = 'draft' | 'sent' | 'accepted' | 'declined';

/** Where a quote stands on a day: a sent one that nobody answered in time has lapsed. */
export type QuoteState = KeptState | 'lapsed';

/** The dates that decide where a quote stands. */
export type QuoteDates = { readonly state: KeptState; readonly validUntil: string };

/** A sent quote counts as lapsing soon when so few days are left. [d] Our own choice. */
const soonDays = 7;

/** Where a quote stands on a day; it is good through the whole of its last day. */
export function quoteStateOn({ state, validUntil }: QuoteDates, day: string): QuoteState {
  return state === 'sent' && validUntil < day ? 'lapsed' : state;
}

/**
 * Days that are left to answer a quote, where few are left.
 * @returns whole days, 0 on the last; null where it does not wait, has lapsed, or has time. [d]
 */
export function daysLeft(quote: QuoteDates, day: string): number | null {
  if (quoteStateOn(quote, day) !== 'sent') return null;
  const left = daysBetween(day, quote.validUntil);
  return left <= soonDays ? left : null;
}

/** What may be done with a quote that stands so. */
export function stepsFrom(state: QuoteState): readonly ('send' | 'accept' | 'decline' | 'renew')[] {
  switch (state) {
    case 'draft':
      return ['send', 'renew'];
    case 'sent':
      return ['accept', 'decline', 'renew'];
    case 'lapsed':
      return ['accept', 'decline', 'renew'];
    case 'accepted':
    case 'declined':
      return ['renew'];
    default:
      return state satisfies never;
  }
}
