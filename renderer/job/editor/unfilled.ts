import { type Documents, valueAt } from './documents.ts';

/** What stands in the document under an entry that was never filled, by the entry's own name. */
const placeholders: Readonly<Record<string, unknown>> = {
  lengthIn: 12,
  pitchRisePer12: 6,
  heightAbovePlateIn: 0,
  overhangIn: 12,
  runIn: 12,
  readingIn: 0,
  fromIn: 0,
  toIn: 0,
  unitCostUsd: '0',
  priceUsd: '0',
  description: 'New cost',
};

/**
 * Whether an entry was never filled: it is blank, or half typed over a reading of nothing, and the value under it is
 * nobody's. An entry that was cleared keeps its last good value and counts as filled.
 * @param path - dotted path of the entry.
 */
export function isUnfilled(documents: Documents, path: string): boolean {
  const draft = documents.drafts[path];
  if (draft === undefined) return false;
  const name = path.split('.').at(-1) ?? '';
  const nobodys = path.startsWith('design.exclusions.')
    ? 'New exclusion'
    : path.startsWith('design.offer.assumptions.')
      ? 'New assumption'
      : placeholders[name];
  const isNobodys = Object.is(valueAt(documents, path), nobodys);
  return isNobodys && (draft.trim() === '' || name === 'readingIn');
}
