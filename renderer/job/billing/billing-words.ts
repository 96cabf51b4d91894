import type { ChangeOrderState } from '../../../core/billing/change-order.ts';
import type { InvoiceKind } from '../../../core/billing/invoice.ts';
import type { CommandOutput } from '../../../core/contract/contract.ts';
import { dollars } from '../../kit/amounts.ts';

/** All that the billing part of a job shows. */
export type Billing = CommandOutput<'billing.get'>;
export type ShownChange = Billing['changeOrders'][number];
export type ShownInvoice = Billing['invoices'][number];
export type ShownPayment = Billing['payments'][number];
export type ShownPart = Billing['parts'][number];

export const changeStateWords: Readonly<Record<ChangeOrderState, string>> = {
  draft: 'Draft',
  sent: 'Sent',
  approved: 'Approved',
  declined: 'Declined',
};

export const invoiceWords: Readonly<Record<InvoiceKind, string>> = {
  deposit: 'Deposit',
  stage: 'Stage',
  progress: 'Progress',
  final: 'Final',
  credit: 'Credit',
};

/** The same with a sign before what is added. */
export function signedDollars(amount: string): string {
  return Number(amount) > 0 ? `+${dollars(amount)}` : dollars(amount);
}

/** A percentage as it is typed, `50 %` too, as the host reads it; a blank is nothing done. */
export function typedPercent(text: string): string {
  const bare = text.trim().replace(/\s*%$/, '');
  return bare === '' ? '0' : bare;
}

/** Where a change order stands, with its day. */
export function changeStands({ state, sentOn, decidedOn }: ShownChange): string {
  const day = state === 'sent' ? sentOn : decidedOn;
  return day === null ? changeStateWords[state] : `${changeStateWords[state]} ${day}`;
}
