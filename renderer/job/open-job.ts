import { useEffect, useState } from 'react';
import type { CommandOutput } from '../../core/contract/contract.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { invoke, subscribe } from '../bridge.ts';
import { onConnection } from '../host/connection.ts';
import { queryClient } from '../host/queries.ts';
import type { Documents } from './editor/documents.ts';
import { type JobEditor, openEditor } from './editor/job-editor.ts';

/** A job on its way to the screen. */
export type Opening =
  | { readonly kind: 'opening' }
  | { readonly kind: 'problem'; readonly problem: Problem }
  | { readonly kind: 'open'; readonly editor: JobEditor; readonly today: string };

type Open = { readonly editor: JobEditor; readonly today: string };

/** Editors whose last change is not saved yet live on when their screen is left. */
const editors = new Map<string, Open>();

/**
 * Opens a job for editing, or goes on with the editor that still has something to save.
 * @param jobId - the job.
 * @param again - a number that is raised to open it afresh, dropping what is on the screen.
 */
export function useOpenJob(jobId: string, again: number): Opening {
  const [opening, setOpening] = useState<Opening>({ kind: 'opening' });
  useEffect(() => {
    let left = false;
    const show = (next: Opening): void => {
      if (!left) setOpening(next);
    };
    const kept = editors.get(jobId);
    if (kept !== undefined && again === 0 && !kept.editor.isSaved()) {
      show({ kind: 'open', ...kept });
    } else {
      kept?.editor.stop();
      const stopWaiting = onConnection(() => void open());
      const open = async (): Promise<void> => {
        try {
          const reply = await invoke('jobs.get', { id: jobId });
          stopWaiting();
          if (left) return;
          if (!reply.ok) {
            show({ kind: 'problem', problem: reply.problem });
            return;
          }
          const opened = { editor: editorOf(jobId, reply.value), today: reply.value.today };
          editors.set(jobId, opened);
          show({ kind: 'open', ...opened });
        } catch {
          // The frame says that the host is lost; opening goes on when it is back.
        }
      };
      void open();
    }
    const stopHearing = subscribe((event) => {
      if (event.kind === 'changed' && event.what === 'jobs') editors.get(jobId)?.editor.heard();
    });
    return () => {
      left = true;
      stopHearing();
      editors.get(jobId)?.editor.flush();
      void queryClient.invalidateQueries({ queryKey: ['jobs.list'] });
    };
  }, [jobId, again]);
  return opening;
}

function editorOf(jobId: string, job: CommandOutput<'jobs.get'>): JobEditor {
  return openEditor(
    {
      jobId,
      send: (input) => invoke('jobs.save', input),
      fetchAgain: async () => {
        const reply = await invoke('jobs.get', { id: jobId });
        return reply.ok
          ? { ok: true, value: { revision: reply.value.revision, documents: documentsOf(reply.value) } }
          : reply;
      },
      later: (act, afterMs) => window.setTimeout(act, afterMs),
    },
    documentsOf(job),
    job.revision,
  );
}

function documentsOf(job: CommandOutput<'jobs.get'>): Documents {
  const { estimateOn, info, survey, design, drafts } = job;
  return { estimateOn, info, survey, design, drafts };
}
