import type { z } from 'zod';
import type { Problem } from '../core/problems/problem.ts';

/**
 * Turns what zod found wrong with an input into a problem that stands at its field.
 * @param error - zod's finding; the first issue is told, the person mends one entry at a time.
 * @returns the problem of the field where the field made one itself (lengths, pitches, money), else a plain sentence.
 */
export function entryProblem(error: z.ZodError): Problem {
  const issue = error.issues[0];
  if (issue === undefined) return { code: 'internal' };
  const field = issue.path.map(String).join('.');
  const own = issue.code === 'custom' ? problemIn(issue.params) : undefined;
  if (own !== undefined) return { ...own, field };
  return { code: 'entry-invalid', what: lastWord(issue.path), detail: detailOf(issue), field };
}

function problemIn(params: Record<string, unknown> | undefined): Problem | undefined {
  const problem = params?.['problem'];
  return typeof problem === 'object' && problem !== null && 'code' in problem ? (problem as Problem) : undefined;
}

function lastWord(path: readonly PropertyKey[]): string {
  const name = path.findLast((part) => typeof part === 'string') ?? 'The entry';
  const words = name
    .replace(/(In|Ft|Usd|Id)$/, '')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase();
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function detailOf(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'too_small':
      return issue.origin === 'string' ? 'fill this in.' : `enter at least ${String(issue.minimum)}.`;
    case 'too_big':
      return issue.origin === 'string'
        ? `keep it to ${String(issue.maximum)} characters.`
        : `enter at most ${String(issue.maximum)}.`;
    case 'invalid_value':
      return `choose one of ${issue.values.map(String).join(', ')}.`;
    case 'unrecognized_keys':
      return `${issue.keys.join(', ')} is not known here; take it out.`;
    case 'invalid_format':
      return 'is not written in the right form.';
    case 'invalid_type':
    case 'invalid_union':
      return 'is missing or not of the right kind.';
    case 'invalid_key':
    case 'invalid_element':
    case 'not_multiple_of':
      return 'is not right; enter it again.';
    case 'custom':
      return issue.message;
    default:
      return 'is not right; enter it again.';
  }
}
