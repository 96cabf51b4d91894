import type { CheckResult } from '../checks/check-types.ts';
import type { Decision } from '../eave/structure.ts';
import { standingSentence } from './check-words.ts';

/**
 * Tells a recorded decision, on screen and on paper: who, when, what, and whether the figure has moved since.
 * @param decision - as recorded.
 * @param check - what the check says now; null where it is no longer there.
 */
export function decisionText(decision: Decision, check: CheckResult | null): string {
  const note = decision.note.trim();
  return [
    `Decided by ${decision.who} on ${decision.date}${note === '' ? '.' : `: ${ended(note)}`}`,
    movedText(decision, check),
  ]
    .filter((part) => part !== '')
    .join(' ');
}

function movedText(decision: Decision, check: CheckResult | null): string {
  if (decision.figure === '') return '';
  if (check === null) return `The check is no longer made; it said then: ${decision.figure}`;
  if (standingSentence(check) === decision.figure) return '';
  return `The figure has changed since; it was then: ${decision.figure} Ask again.`;
}

function ended(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
