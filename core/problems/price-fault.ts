import { assertNever } from '../result.ts';

/** What can go wrong here that a person can mend. */
export type PriceFault = { readonly what: 'nothing-to-change' };

/** The sentence for it. */
export function priceSentence(fault: PriceFault): string {
  switch (fault.what) {
    case 'nothing-to-change':
      return 'No item is chosen. Choose the items whose prices change.';
    default:
      return assertNever(fault.what);
  }
}
