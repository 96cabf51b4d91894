import { useCallback } from 'react';
import { useLocation } from 'wouter';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import type { Documents } from '../editor/documents.ts';
import { focusEntry } from './focus-entry.ts';
import { screenOfField } from './shop-places.ts';

/**
 * Gives a function that shows where an entry is typed and puts the cursor there, on the shop's screens too.
 * @param read - gives the documents as they stand when it is called.
 * @param showEave - brings an eave in view on Survey and Design; null for the job and house.
 */
export function useGoTo(options: {
  readonly jobId: string;
  readonly read: () => Documents;
  readonly prices: readonly PriceItem[];
  readonly showEave: (eaveId: string | null) => void;
}): (path: string) => void {
  const { jobId, read, prices, showEave } = options;
  const [, navigate] = useLocation();
  return useCallback(
    (path) => {
      const screen = screenOfField(path, prices);
      if (screen !== undefined) {
        navigate(screen);
        focusEntry(path.slice(path.indexOf('.') + 1));
        return;
      }
      const { section, eaveId } = whereIs(path, read());
      // The quote is of the whole job: the eave in view stays in view on the other sections.
      if (section !== 'quote') showEave(eaveId);
      navigate(`/jobs/${jobId}/${section}`);
      focusEntry(path);
    },
    [jobId, read, prices, showEave, navigate],
  );
}

/** The section and eave in which an entry stands. */
export function whereIs(
  path: string,
  documents: Documents,
): {
  readonly section: 'survey' | 'design' | 'checks' | 'cut-plan' | 'estimate' | 'quote';
  readonly eaveId: string | null;
} {
  const [root, list, index, key] = path.split('.');
  const at = Number(index);
  if (list === 'rakes') return whereRakeIs(root === 'survey' ? 'survey' : 'design', at, key, documents);
  if (root === 'survey')
    return { section: 'survey', eaveId: list === 'eaves' ? (documents.survey.eaves[at]?.id ?? null) : null };
  if (root === 'design' && list === 'cutting') return { section: 'cut-plan', eaveId: null };
  if (root === 'design' && ['offer', 'exclusions', 'scopeNote'].includes(list ?? ''))
    return { section: 'quote', eaveId: null };
  if (path === 'design.notchRule') return { section: 'checks', eaveId: null };
  if (root === 'design')
    return {
      section: 'design',
      eaveId:
        list === 'eaves'
          ? (documents.design.eaves[at]?.eaveId ?? null)
          : list === 'asBuilt'
            ? (documents.design.asBuilt[at]?.eaveId ?? null)
            : null,
    };
  return { section: root === 'estimateOn' ? 'estimate' : 'survey', eaveId: null };
}

/** A rake stands with its eave, and one that rises from none with the house; a rake as a whole is started in Design. */
function whereRakeIs(
  root: 'survey' | 'design',
  at: number,
  key: string | undefined,
  { survey, design }: Documents,
): { readonly section: 'survey' | 'design'; readonly eaveId: string | null } {
  const rakeId = root === 'survey' ? survey.rakes[at]?.id : design.rakes[at]?.rakeId;
  const rake = survey.rakes.find(({ id }) => id === rakeId);
  const eave = survey.eaves.find(({ id }) => id === rake?.eaveId);
  return {
    section: eave === undefined ? 'survey' : key === undefined ? 'design' : root,
    eaveId: eave?.id ?? null,
  };
}
