import { useEffect, useState } from 'react';
import type { ImportLayout } from '../../../../core/pricing/import/layout.ts';
import { problemSentence } from '../../../../core/problems/sentence.ts';
import { invoke } from '../../../bridge.ts';
import { HostLost } from '../../../host/transport.ts';
import type { Preview } from './import-preview.tsx';

/** How long nothing is changed before the file is read by a changed layout. [ms] */
const settleMs = 250;

type Read = { readonly of: ImportLayout; readonly preview: Preview | null; readonly problem: string | null };

/** Reads the file in hand by a layout, again after each change of it; `isRead` once it is read by the newest. */
export function usePreview(
  importId: string,
  layout: ImportLayout,
): Omit<Read, 'of'> & { readonly isRead: boolean } {
  const [read, setRead] = useState<Read | null>(null);
  useEffect(() => {
    let isOld = false;
    const timer = window.setTimeout(() => {
      void readBy(importId, layout).then((next) => {
        if (!isOld) setRead((last) => ({ ...next, preview: next.preview ?? last?.preview ?? null }));
        return undefined;
      });
    }, settleMs);
    return () => {
      isOld = true;
      window.clearTimeout(timer);
    };
  }, [importId, layout]);
  return { preview: read?.preview ?? null, problem: read?.problem ?? null, isRead: read?.of === layout };
}

async function readBy(importId: string, layout: ImportLayout): Promise<Read> {
  try {
    const reply = await invoke('prices.importPreview', { importId, layout });
    return reply.ok
      ? { of: layout, preview: reply.value, problem: null }
      : { of: layout, preview: null, problem: problemSentence(reply.problem) };
  } catch (error) {
    if (!(error instanceof HostLost)) throw error;
    return {
      of: layout,
      preview: null,
      problem: 'Eavewright does not answer. Change something here once it does.',
    };
  }
}
