import { assertNever } from '../result.ts';

/** What can go wrong here that a person can mend. */
export type OfferFault = { readonly what: 'payments-do-not-add-up' };

/** The sentence for it. */
export function offerSentence(fault: OfferFault): string {
  switch (fault.what) {
    case 'payments-do-not-add-up':
      return 'The payments do not add up to the price. Change one of them, or let the last take the rest.';
    default:
      return assertNever(fault.what);
  }
}
