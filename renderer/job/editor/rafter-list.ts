import {
  type EaveSurvey,
  type RafterSurvey,
  rafterSurveySchema,
} from '../../../core/survey/survey-document.ts';
import { type Documents, withDraft, withMovedDrafts, withValueAt } from './documents.ts';
import { removing } from './removing.ts';
import { enter } from './enter.ts';
import { removeFrom } from './list-edits.ts';
import { nextId } from './next-id.ts';
import { readEntry } from './read-entry.ts';

/** The id that the next rafter of an eave gets. */
export function nextRafterId(eave: EaveSurvey): string {
  return nextId(
    'r',
    eave.rafters.map((rafter) => rafter.id),
  );
}

/**
 * Takes what was typed in the empty row under the last rafter: as soon as it reads as a length, it is the next rafter;
 * until then it is a draft.
 */
export function enterNextReading(documents: Documents, eaveIndex: number, text: string): Documents {
  const eave = documents.survey.eaves[eaveIndex];
  if (eave === undefined) return documents;
  const list = `survey.eaves.${eaveIndex}.rafters`;
  const path = `${list}.${eave.rafters.length}.readingIn`;
  if (text.trim() === '') return withDraft(documents, path, null);
  const read = readEntry(path, text);
  if (!read.ok) return withDraft(documents, path, text);
  const rafter = newRafter(nextRafterId(eave), read.value as number);
  return withValueAt(withDraft(documents, path, null), list, [...eave.rafters, rafter]);
}

/** Puts an empty row above a rafter: its reading is blank until it is typed. */
export function insertRafter(documents: Documents, eaveIndex: number, at: number): Documents {
  const eave = documents.survey.eaves[eaveIndex];
  if (eave === undefined) return documents;
  const list = `survey.eaves.${eaveIndex}.rafters`;
  const rafters = [...eave.rafters];
  rafters.splice(at, 0, newRafter(nextRafterId(eave), 0));
  const moved = withMovedDrafts(documents, list, (index) => (index >= at ? index + 1 : index));
  return withDraft(withValueAt(moved, list, rafters), `${list}.${at}.readingIn`, '');
}

/** Takes a rafter out of the survey, and what named it, such as its pin and its bay, out of survey and design. */
export function removeRafter(documents: Documents, eaveIndex: number, at: number): Documents {
  const eave = documents.survey.eaves[eaveIndex];
  const rafter = eave?.rafters[at];
  if (eave === undefined || rafter === undefined) return documents;
  const list = `survey.eaves.${eaveIndex}.rafters`;
  const moved = withMovedDrafts(documents, list, removing(at));
  const without = withValueAt(
    moved,
    list,
    eave.rafters.filter((_, index) => index !== at),
  );
  const others = (ids: readonly string[]) => ids.filter((id) => id !== rafter.id);
  const designs = without.design.eaves.map((design) =>
    design.eaveId !== eave.id
      ? design
      : {
          ...design,
          pins: design.pins.filter((pin) => pin.rafterId !== rafter.id),
          layout: { ...design.layout, baysWithoutTail: others(design.layout.baysWithoutTail) },
          blocks: { ...design.blocks, openBays: others(design.blocks.openBays) },
        },
  );
  const { asBuilt } = without.design;
  const built = asBuilt.findIndex((one) => one.eaveId === eave.id && one.extenderId === rafter.id);
  const designed = { ...without, design: { ...without.design, eaves: designs } };
  const cleared = built < 0 ? designed : removeFrom(designed, 'design.asBuilt', built);
  return withValueAt(cleared, `survey.eaves.${eaveIndex}.otherOldBlocks`, others(eave.otherOldBlocks));
}

/** Adds a column of readings at once, as pasted from a sheet; what does not read stays as a draft in its row. */
export function addReadings(documents: Documents, eaveIndex: number, texts: readonly string[]): Documents {
  let result = documents;
  for (const text of texts) {
    const eave = result.survey.eaves[eaveIndex];
    if (eave === undefined) return result;
    const path = `survey.eaves.${eaveIndex}.rafters.${eave.rafters.length}.readingIn`;
    const read = readEntry(path, text);
    const rafter = newRafter(nextRafterId(eave), read.ok ? (read.value as number) : 0);
    result = withDraft(
      withValueAt(result, `survey.eaves.${eaveIndex}.rafters`, [...eave.rafters, rafter]),
      path,
      read.ok ? null : text,
    );
  }
  return result;
}

/** Pastes readings down the column from a row on: over the rafters that are there, then as new ones. */
export function pasteReadings(
  documents: Documents,
  eaveIndex: number,
  row: number,
  texts: readonly string[],
): Documents {
  const count = documents.survey.eaves[eaveIndex]?.rafters.length ?? 0;
  const over = texts.slice(0, Math.max(0, count - row));
  const written = over.reduce<Documents>(
    (so_far, text, at) => enter(so_far, `survey.eaves.${eaveIndex}.rafters.${row + at}.readingIn`, text),
    documents,
  );
  return addReadings(written, eaveIndex, texts.slice(over.length));
}

function newRafter(id: string, readingIn: number): RafterSurvey {
  return rafterSurveySchema.parse({ id, readingIn });
}
