import { ownerOf, splitRef } from '../../../core/trace/ref.ts';
import type { Documents } from '../editor/documents.ts';

/** Where an entry is typed: in this job, or on one of the shop's screens. */
export type Place =
  | { readonly kind: 'entry'; readonly path: string }
  | { readonly kind: 'screen'; readonly route: string; readonly label: string };

/**
 * Finds where a figure at the end of a walk back was typed.
 * @param ref - a ref of core/trace, e.g. `reading/south/s3`.
 * @returns the entry or screen; undefined for a figure that was computed.
 */
export function placeOfRef(ref: string, documents: Documents): Place | undefined {
  const { kind, rest } = splitRef(ref);
  const { survey, design } = documents;
  switch (kind) {
    case 'reading':
      return rafterEntry(`${rest}/readingIn`, documents);
    case 'rafter':
      return rafterEntry(rest, documents);
    case 'eave': {
      const found = ownerOf(rest, survey.eaves, (eave) => eave.id);
      return found && entry('survey.eaves', survey.eaves.indexOf(found.owner), found.rest);
    }
    case 'survey':
      return { kind: 'entry', path: `survey.${rest}` };
    case 'design': {
      const extra = design.extraCosts.findIndex((one) => rest === `extraCosts/${one.id}`);
      if (extra >= 0) return entry('design.extraCosts', extra, 'unitCostUsd');
      const onHand = design.cutting.onHand.findIndex((one) => rest === `onHand/${one.id}`);
      if (onHand >= 0) return entry('design.cutting.onHand', onHand, 'valueUsd');
      const found = ownerOf(rest, design.eaves, (eave) => eave.eaveId);
      return found && entry('design.eaves', design.eaves.indexOf(found.owner), found.rest);
    }
    case 'rake':
      return rakeEntry(rest, documents);
    case 'price':
      return { kind: 'screen', route: `/prices/${encodeURIComponent(rest)}`, label: 'Go to the item' };
    case 'setting':
    case 'labour':
      return { kind: 'screen', route: '/settings', label: 'Go to Settings' };
    default:
      return undefined;
  }
}

function rafterEntry(rest: string, documents: Documents): Place | undefined {
  const eave = ownerOf(rest, documents.survey.eaves, (one) => one.id);
  if (eave === undefined) return undefined;
  const rafter = ownerOf(eave.rest, eave.owner.rafters, (one) => one.id);
  if (rafter === undefined) return undefined;
  return entry(
    `survey.eaves.${documents.survey.eaves.indexOf(eave.owner)}.rafters`,
    eave.owner.rafters.indexOf(rafter.owner),
    rafter.rest,
  );
}

/** An entry of a rake's survey or design; nothing for a figure of it. */
function rakeEntry(rest: string, { survey, design }: Documents): Place | undefined {
  const found = ownerOf(rest, survey.rakes, (rake) => rake.id);
  if (found === undefined) return undefined;
  const { kind, rest: key } = splitRef(found.rest);
  if (kind === 'survey') return entry('survey.rakes', survey.rakes.indexOf(found.owner), key);
  const at = design.rakes.findIndex(({ rakeId }) => rakeId === found.owner.id);
  return kind === 'design' && at >= 0 ? entry('design.rakes', at, key) : undefined;
}

function entry(list: string, index: number, key: string): Place {
  return { kind: 'entry', path: `${list}.${index}.${key}` };
}
