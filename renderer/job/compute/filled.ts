import type { Documents } from '../editor/documents.ts';
import { isUnfilled } from '../editor/unfilled.ts';

/**
 * The job as far as it was filled: what was added and not typed yet is left out, so that the other figures can be
 * worked out when a job is opened.
 * @returns null where that cannot be: an eave without its length, pitch, height or overhang, or a blank bay between
 * others, on which all later stations rest.
 */
export function withoutUnfilled(documents: Documents): Documents | null {
  const unfilled = Object.keys(documents.drafts).filter(
    (path) => !areWords(path) && isUnfilled(documents, path),
  );
  const entries = new Set<string>();
  for (const path of unfilled) {
    const entry = listEntryOf(path, documents);
    if (entry === null) return null;
    entries.add(entry);
  }
  if (entries.size === 0) return documents;
  const kept = <T>(list: readonly T[], path: string): T[] =>
    list.filter((_, index) => !entries.has(`${path}.${index}`));
  const { survey, design } = documents;
  return {
    ...documents,
    survey: {
      ...survey,
      eaves: survey.eaves.map((eave, at) => ({
        ...eave,
        rafters: kept(eave.rafters, `survey.eaves.${at}.rafters`),
        obstructions: kept(eave.obstructions, `survey.eaves.${at}.obstructions`),
      })),
    },
    design: {
      ...design,
      extraCosts: kept(design.extraCosts, 'design.extraCosts'),
      cutting: { ...design.cutting, onHand: kept(design.cutting.onHand, 'design.cutting.onHand') },
    },
  };
}

/** Words change no figure. */
function areWords(path: string): boolean {
  return (
    path.endsWith('.description') ||
    path.startsWith('design.exclusions.') ||
    // Of an offer only the changes of its choices move figures, and these are no figures of the design.
    path.startsWith('design.offer.')
  );
}

/** The entry of a list that can be left out as a whole; null where there is none. */
function listEntryOf(path: string, documents: Documents): string | null {
  const keys = path.split('.');
  if (path.startsWith('design.extraCosts.')) return keys.slice(0, 3).join('.');
  if (path.startsWith('design.cutting.onHand.')) return keys.slice(0, 4).join('.');
  if (!path.startsWith('survey.eaves.')) return null;
  if (keys[3] === 'obstructions') return keys.slice(0, 5).join('.');
  const eave = documents.survey.eaves[Number(keys[2])];
  return keys[3] === 'rafters' && eave?.readingMode === 'running' ? keys.slice(0, 5).join('.') : null;
}
