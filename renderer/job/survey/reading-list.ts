import { type Documents, withDraft, withValueAt } from '../editor/documents.ts';
import { nextId } from '../editor/next-id.ts';
import { readEntry } from '../editor/read-entry.ts';

/** Readings along an eave beside its rafters: how far the wall stands out, how high the plate lies. */
export type ReadingList = 'wallReadings' | 'plateReadings';

/** The entry of a reading that is not its station. */
export const offEntry = { wallReadings: 'outIn', plateReadings: 'upIn' } as const;

/** The id that the next reading of a list gets. */
export function nextReadingId(documents: Documents, eaveIndex: number, list: ReadingList): string {
  const readings = documents.survey.eaves[eaveIndex]?.[list] ?? [];
  return nextId(
    'w',
    readings.map(({ id }) => id),
  );
}

/**
 * Takes what was typed as the station of a next reading: as soon as it reads as a length, it is the next reading, on the
 * line until its own figure is typed.
 */
export function enterNextStation(
  documents: Documents,
  eaveIndex: number,
  list: ReadingList,
  text: string,
): Documents {
  const readings = documents.survey.eaves[eaveIndex]?.[list];
  if (readings === undefined) return documents;
  const at = `survey.eaves.${eaveIndex}.${list}`;
  const path = `${at}.${readings.length}.stationIn`;
  if (text.trim() === '') return withDraft(documents, path, null);
  const read = readEntry(path, text);
  if (!read.ok) return withDraft(documents, path, text);
  const reading = {
    id: nextReadingId(documents, eaveIndex, list),
    stationIn: read.value,
    [offEntry[list]]: 0,
  };
  return withValueAt(withDraft(documents, path, null), at, [...readings, reading]);
}
