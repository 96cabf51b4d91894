import type { CommandOutput } from '../../../core/contract/contract.ts';
import type { QuoteState } from '../../../core/quotes/quote-state.ts';

export type ShownQuote = CommandOutput<'quotes.list'>[number];

const stateWords: Readonly<Record<QuoteState, string>> = {
  draft: 'Draft',
  sent: 'Sent',
  accepted: 'Accepted',
  declined: 'Declined',
  lapsed: 'Lapsed',
};

/** True where a quote should be looked at: it lapses soon, or has lapsed. */
export function presses({ state, daysLeft }: Pick<ShownQuote, 'state' | 'daysLeft'>): boolean {
  return daysLeft !== null || state === 'lapsed';
}

/** Where a quote stands, with its day and what presses: `Sent 2026-04-30, lapses in 3 days`. */
export function standsAt(
  quote: Pick<ShownQuote, 'state' | 'sentOn' | 'daysLeft'> & Partial<Pick<ShownQuote, 'decidedOn'>>,
): string {
  const { state, sentOn, daysLeft, decidedOn } = quote;
  const word = stateWords[state];
  if (state === 'accepted' || state === 'declined')
    return decidedOn === null || decidedOn === undefined ? word : `${word} ${decidedOn}`;
  if (state !== 'sent') return word;
  const sent = sentOn === null ? word : `${word} ${sentOn}`;
  if (daysLeft === null) return sent;
  return daysLeft === 0
    ? `${sent}, lapses today`
    : `${sent}, lapses in ${daysLeft} ${daysLeft === 1 ? 'day' : 'days'}`;
}
