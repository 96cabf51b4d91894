import type { EaveSurvey } from '../../../core/survey/survey-document.ts';
import { type Documents, withDraft } from '../editor/documents.ts';
import { appendTo } from '../editor/list-edits.ts';
import { nextId } from '../editor/next-id.ts';

/** A thing that stands on the plate besides rafters and joists. */
export type ObstructionSurvey = EaveSurvey['obstructions'][number];

/** Adds a thing in the way; where it stands is blank until it is measured. */
export function addObstruction(documents: Documents, eaveIndex: number): Documents {
  const list = documents.survey.eaves[eaveIndex]?.obstructions;
  if (list === undefined) return documents;
  const path = `survey.eaves.${eaveIndex}.obstructions`;
  const id = nextId(
    'o',
    list.map((one) => one.id),
  );
  const added = appendTo(documents, path, { id, label: '', fromIn: 0, toIn: 0 } satisfies ObstructionSurvey);
  return withDraft(withDraft(added, `${path}.${list.length}.fromIn`, ''), `${path}.${list.length}.toIn`, '');
}
