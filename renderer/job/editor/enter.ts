import type { Problem } from '../../../core/problems/problem.ts';
import { type Documents, withDraft, withValueAt } from './documents.ts';
import { readEntry } from './read-entry.ts';

/**
 * Takes what was typed at an entry: the value where it reads as one, else the raw text as a draft, so that the last
 * good value stays in the document and nothing typed is lost.
 */
export function enter(documents: Documents, path: string, text: string): Documents {
  const read = readEntry(path, text);
  return read.ok
    ? withDraft(withValueAt(documents, path, read.value), path, null)
    : withDraft(documents, path, text);
}

/** The problems of all entries that do not read yet, in the order in which they stand in the job. */
export function draftProblems(documents: Documents): readonly (Problem & { readonly field: string })[] {
  const problems: (Problem & { readonly field: string })[] = [];
  for (const [path, text] of Object.entries(documents.drafts)) {
    const read = readEntry(path, text);
    if (!read.ok) problems.push({ ...read.problem, field: path });
  }
  return problems.sort(
    (a, b) => rankOf(a.field) - rankOf(b.field) || a.field.localeCompare(b.field, 'en', { numeric: true }),
  );
}

/** The order of the work: the job and what was measured come before what is designed. */
const roots = ['info', 'survey', 'design', 'estimateOn'];

function rankOf(path: string): number {
  return roots.indexOf(path.split('.')[0] ?? '');
}
