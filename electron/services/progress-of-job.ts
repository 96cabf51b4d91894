import { type Countable, countedFromLayout } from '../../core/jobcost/countable.ts';
import type { Progress } from '../../core/jobcost/standing.ts';
import type { ReadableDb } from '../store/database.ts';
import { getDocuments } from '../store/documents.ts';
import { listProgress } from '../store/progress.ts';

/** Tails that were typed back into the layout as set. */
export function framedInPlace(db: ReadableDb, jobId: string): number {
  return getDocuments(db, jobId).design.asBuilt.filter(({ inPlace }) => inPlace).length;
}

/** How far each phase is: the person's newest words, and where he said none, the tails typed back into the layout. */
export function progressOfJob(
  db: ReadableDb,
  jobId: string,
  countable: ReadonlyMap<string, Countable>,
): readonly Progress[] {
  return countedFromLayout(listProgress(db, jobId), countable, framedInPlace(db, jobId));
}
