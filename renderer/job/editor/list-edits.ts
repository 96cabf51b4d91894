import { type Documents, valueAt, withMovedDrafts, withValueAt } from './documents.ts';
import { removing } from './removing.ts';

/** Adds an entry at the end of a list, e.g. of `design.extraCosts`. */
export function appendTo(documents: Documents, listPath: string, entry: unknown): Documents {
  const list = valueAt(documents, listPath);
  return Array.isArray(list) ? withValueAt(documents, listPath, [...(list as unknown[]), entry]) : documents;
}

/** Takes an entry out of a list, with what was half typed in it. */
export function removeFrom(documents: Documents, listPath: string, index: number): Documents {
  const list = valueAt(documents, listPath);
  if (!Array.isArray(list)) return documents;
  const rest = (list as unknown[]).filter((_, at) => at !== index);
  return withMovedDrafts(withValueAt(documents, listPath, rest), listPath, removing(index));
}

/** Leaves the bay right of a rafter open, or gives it a block again. */
export function openBay(
  documents: Documents,
  designIndex: number,
  rafterId: string,
  open: boolean,
): Documents {
  const design = documents.design.eaves[designIndex];
  if (design === undefined) return documents;
  const others = design.blocks.openBays.filter((bay) => bay !== rafterId);
  return withValueAt(
    documents,
    `design.eaves.${designIndex}.blocks.openBays`,
    open ? [...others, rafterId] : others,
  );
}
