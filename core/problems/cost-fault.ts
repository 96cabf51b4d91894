import { assertNever } from '../result.ts';

/** What can go wrong here that a person can mend. */
export type CostFault = { readonly what: 'no-accepted-quote' };

/** The sentence for it. */
export function costSentence(fault: CostFault): string {
  switch (fault.what) {
    case 'no-accepted-quote':
      return 'This job has no accepted quote, so there is no budget yet. Mark a quote as accepted under Estimate.';
    default:
      return assertNever(fault.what);
  }
}
