import { assertNever } from '../result.ts';

/** What can go wrong here that a person can mend. */
export type BillingFault = { readonly what: 'nothing-to-bill' };

/** The sentence for it. */
export function billingSentence(fault: BillingFault): string {
  switch (fault.what) {
    case 'nothing-to-bill':
      return 'There is nothing left to bill on this job. Enter progress, or add a change order.';
    default:
      return assertNever(fault.what);
  }
}
