import { assertNever } from '../result.ts';

/** What can go wrong with time, receipts and progress that a person can mend. */
export type CostFault =
  | { readonly what: 'no-accepted-quote' }
  | { readonly what: 'already-replaced' }
  | { readonly what: 'too-many-hours'; readonly person: string; readonly day: string; readonly hours: string }
  | { readonly what: 'not-a-picture'; readonly fileName: string }
  | { readonly what: 'file-too-large'; readonly fileName: string; readonly mostMb: number }
  | { readonly what: 'file-gone'; readonly fileName: string }
  | { readonly what: 'not-finished' }
  | { readonly what: 'too-many-reminders'; readonly most: number }
  | { readonly what: 'no-hours' }
  | { readonly what: 'return-adds-cost' };

/** The sentence for it. */
export function costSentence(fault: CostFault): string {
  switch (fault.what) {
    case 'no-accepted-quote':
      return 'This job has no accepted quote, so there is no budget yet. Mark a quote as accepted under Quote.';
    case 'already-replaced':
      return 'That entry was corrected already. Correct the newer one.';
    case 'too-many-hours':
      return `${fault.person} would have ${fault.hours} hours on ${fault.day}. A day has 24; check the hours.`;
    case 'not-a-picture':
      return `${fault.fileName} is neither a photo (JPEG, PNG) nor a PDF. Choose another file.`;
    case 'file-too-large':
      return `${fault.fileName} is larger than ${fault.mostMb} MB. Take a smaller picture of it.`;
    case 'file-gone':
      return `${fault.fileName} is not where it was kept, or was changed there. Put it back from a backup of the folder.`;
    case 'not-finished':
      return 'This job is not finished yet. Mark it as finished first, at the end of Job cost.';
    case 'too-many-reminders':
      return `${fault.most} questions are asked before each quote already. Take one off the list first.`;
    case 'no-hours':
      return 'No hours are entered yet. Enter them for one person at least.';
    case 'return-adds-cost':
      return 'What comes back to you on a return is entered below zero, as -26.40. Put a minus before the amount.';
    default:
      return assertNever(fault);
  }
}
