import type { AsBuilt } from '../../../core/eave/design-document.ts';
import { type Documents, withValueAt } from './documents.ts';
import { removeFrom } from './list-edits.ts';

const list = 'design.asBuilt';

/** What was typed back of a tail; undefined where nothing was. */
export function asBuiltOf(documents: Documents, eaveId: string, extenderId: string): AsBuilt | undefined {
  return documents.design.asBuilt.find((one) => one.eaveId === eaveId && one.extenderId === extenderId);
}

/**
 * Takes what was built of a tail, as read off the tape on site. An entry that says nothing any more goes: not in place,
 * as laid out, without a note.
 */
export function setAsBuilt(
  documents: Documents,
  eaveId: string,
  extenderId: string,
  change: Partial<Pick<AsBuilt, 'inPlace' | 'stationIn' | 'note'>>,
): Documents {
  const { asBuilt } = documents.design;
  const at = asBuilt.findIndex((one) => one.eaveId === eaveId && one.extenderId === extenderId);
  const before = asBuilt[at] ?? { eaveId, extenderId, inPlace: false, stationIn: null, note: '' };
  const entry: AsBuilt = { ...before, ...change };
  const saysNothing = !entry.inPlace && entry.stationIn === null && entry.note === '';
  if (saysNothing) return at < 0 ? documents : removeFrom(documents, list, at);
  return at < 0
    ? withValueAt(documents, list, [...asBuilt, entry])
    : withValueAt(documents, `${list}.${at}`, entry);
}
