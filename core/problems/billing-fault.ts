import { assertNever } from '../result.ts';
import { formatUsd, type Usd } from '../units/money.ts';

/** What can go wrong with change orders, invoices and payments that a person can mend. */
export type BillingFault =
  | {
      readonly what: 'nothing-to-bill';
      readonly kind: 'deposit' | 'stage' | 'progress' | 'final';
      readonly billedUsd: Usd;
      readonly contractUsd: Usd;
      /** How far earlier bills are ahead of the work. [$] */
      readonly aheadUsd: Usd;
    }
  | {
      readonly what: 'more-than-contract';
      readonly kind: 'deposit' | 'stage' | 'progress' | 'final';
      readonly leftUsd: Usd;
    }
  | { readonly what: 'tax-over-billed'; readonly overUsd: Usd }
  | { readonly what: 'bill-moved'; readonly totalUsd: Usd }
  | { readonly what: 'credit-too-large'; readonly leftUsd: Usd; readonly invoice: number }
  | { readonly what: 'no-contract' }
  | { readonly what: 'payment-of-nothing' }
  | { readonly what: 'already-taken-back' }
  | { readonly what: 'change-is-settled'; readonly number: number; readonly state: string }
  | { readonly what: 'change-below-billed'; readonly billedUsd: Usd };

/** The sentence for it. */
export function billingSentence(fault: BillingFault): string {
  switch (fault.what) {
    case 'nothing-to-bill':
      if (fault.kind === 'deposit' || fault.kind === 'stage')
        return `Enter how much the ${fault.kind === 'stage' ? 'payment' : 'deposit'} is.`;
      if (fault.kind === 'final')
        return `All of the contract, ${formatUsd(fault.contractUsd)}, is billed already.`;
      return Number(fault.aheadUsd) === 0
        ? 'Nothing more is done than was billed. Enter how far each part is now.'
        : `${formatUsd(fault.billedUsd)} is billed already, ${formatUsd(fault.aheadUsd)} more than the work comes to. Enter how far each part is now, or wait.`;
    case 'more-than-contract':
      return fault.kind === 'deposit' || fault.kind === 'stage'
        ? `That is more than the contract has left, ${formatUsd(fault.leftUsd)}. Enter less, or add a change order first.`
        : `That is more than the contract has left, ${formatUsd(fault.leftUsd)}. Enter 100 % for each change order that takes something away, so that it comes off first.`;
    case 'tax-over-billed':
      return `${formatUsd(fault.overUsd)} of sales tax too much is billed. Credit part of a taxed invoice: its tax goes back with it. Then make the final bill, which bills that part anew.`;
    case 'bill-moved':
      return `Something else was billed or credited since this was shown: it would come to ${formatUsd(fault.totalUsd)} now. Look at it again and issue it then.`;
    case 'credit-too-large':
      return `Of invoice ${fault.invoice} there is ${formatUsd(fault.leftUsd)} left to credit, before tax. Enter more than nothing and no more than that.`;
    case 'no-contract':
      return 'This job has no accepted quote yet, so there is nothing to bill against. Mark a quote as accepted under Quote.';
    case 'payment-of-nothing':
      return 'Enter how much was paid.';
    case 'already-taken-back':
      return 'That payment was taken back already.';
    case 'change-is-settled':
      return `Change order ${fault.number} is ${fault.state} and stays as it is. Make another for what changes now.`;
    case 'change-below-billed':
      return `With this the contract would be less than the ${formatUsd(fault.billedUsd)} that is billed. Credit an invoice first.`;
    default:
      return assertNever(fault);
  }
}
