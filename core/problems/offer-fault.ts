import { assertNever } from '../result.ts';
import { formatUsd, type Usd, usd } from '../units/money.ts';

/** What can go wrong with an offer to a client that a person can mend. */
export type OfferFault =
  /** `leftUsd`: of the total; less than nothing where the payments come to more. [$] */
  | { readonly what: 'payments-do-not-add-up'; readonly leftUsd: Usd }
  | { readonly what: 'two-rests' }
  | { readonly what: 'not-all-asked'; readonly questions: readonly string[] }
  | { readonly what: 'no-such-way' }
  | { readonly what: 'picture-unreadable' }
  | { readonly what: 'picture-too-large'; readonly mostKb: number }
  | { readonly what: 'picture-too-wide'; readonly mostPx: number };

/** The sentence for it. */
export function offerSentence(fault: OfferFault): string {
  switch (fault.what) {
    case 'payments-do-not-add-up':
      return fault.leftUsd.startsWith('-')
        ? `The payments come to ${formatUsd(usd(fault.leftUsd.slice(1)))} more than the price. Lower one of them.`
        : `${formatUsd(fault.leftUsd)} of the price is in no payment. Raise one, or let the last take the rest.`;
    case 'two-rests':
      return 'Only one payment can take the rest. Give this one a percentage or a sum.';
    case 'not-all-asked':
      return `The quote does not say yet: ${fault.questions.join('; ')}. Answer each under "Is anything forgotten?" and make the draft anew, or say that you send it knowing this.`;
    case 'no-such-way':
      return 'The quote offers no such choice. Pick one of those that it names.';
    case 'picture-unreadable':
      return 'That file is no PNG or JPEG picture that can be printed. Save the logo as PNG or JPEG and choose it again.';
    case 'picture-too-large':
      return `The picture is larger than ${fault.mostKb} KB. Save it smaller and choose it again.`;
    case 'picture-too-wide':
      return `The picture is more than ${fault.mostPx} points wide or high. Scale it down and choose it again.`;
    default:
      return assertNever(fault);
  }
}
