import { useCallback, useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import type { Documents } from '../editor/documents.ts';

/**
 * Gives a function that shows where an entry is typed and puts the cursor there.
 * @param showEave - brings an eave in view on Survey and Design; null for the job and house.
 */
export function useGoTo(options: {
  readonly jobId: string;
  readonly documents: Documents;
  readonly showEave: (eaveId: string | null) => void;
}): (path: string) => void {
  const { jobId, documents, showEave } = options;
  const [, navigate] = useLocation();
  const [wanted, setWanted] = useState<string | null>(null);
  useEffect(() => {
    if (wanted === null) return undefined;
    const frame = window.requestAnimationFrame(() => {
      focusEntry(wanted);
      setWanted(null);
    });
    return () => window.cancelAnimationFrame(frame);
  }, [wanted]);
  return useCallback(
    (path) => {
      const { section, eaveId } = whereIs(path, documents);
      showEave(eaveId);
      navigate(`/jobs/${jobId}/${section}`);
      setWanted(path);
    },
    [jobId, documents, showEave, navigate],
  );
}

/** The section and eave in which an entry stands. */
export function whereIs(
  path: string,
  documents: Documents,
): { readonly section: 'survey' | 'design' | 'checks' | 'estimate'; readonly eaveId: string | null } {
  const [root, list, index] = path.split('.');
  const at = Number(index);
  if (root === 'survey')
    return { section: 'survey', eaveId: list === 'eaves' ? (documents.survey.eaves[at]?.id ?? null) : null };
  if (path === 'design.notchRule') return { section: 'checks', eaveId: null };
  if (root === 'design')
    return {
      section: 'design',
      eaveId: list === 'eaves' ? (documents.design.eaves[at]?.eaveId ?? null) : null,
    };
  return { section: root === 'estimateOn' ? 'estimate' : 'survey', eaveId: null };
}

/** Puts the cursor in the entry at a path, or in the nearest thing that holds it. */
function focusEntry(path: string): void {
  for (let at = path; at !== ''; at = at.slice(0, Math.max(0, at.lastIndexOf('.')))) {
    const entry = document.querySelector<HTMLElement>(`[data-path="${CSS.escape(at)}"]`);
    if (entry === null) continue;
    entry.scrollIntoView({ block: 'center' });
    entry.focus();
    if (entry instanceof HTMLInputElement) entry.select();
    return;
  }
}
