import { createContext, useContext } from 'react';
import type { Computation, Surroundings } from './compute/computation.ts';
import type { Documents } from './editor/documents.ts';
import type { JobEditor } from './editor/job-editor.ts';

/** What every part of the workspace works with. */
export type Job = {
  readonly jobId: string;
  readonly editor: JobEditor;
  readonly documents: Documents;
  readonly surroundings: Surroundings;
  readonly computation: Computation;
  /** True from a change until the figures that follow from it are there. */
  readonly isWorking: boolean;
  /** Eave in view on Survey and Design; null shows the job and house. */
  readonly eaveId: string | null;
  readonly showEave: (eaveId: string | null) => void;
  /** Opens the walk back at a figure. */
  readonly walkBack: (ref: string) => void;
  /** Shows the section of the program where an entry is typed, and puts the cursor there. */
  readonly goTo: (path: string) => void;
};

export const JobContext = createContext<Job | null>(null);

/** The job in view; only inside the workspace. */
export function useJob(): Job {
  const job = useContext(JobContext);
  if (job === null) throw new Error('useJob outside of the job workspace');
  return job;
}
