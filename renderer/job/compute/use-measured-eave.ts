import { useMemo } from 'react';
import { useJob } from '../job-context.ts';
import { type MeasuredEave, measuredEave } from './measured-eave.ts';

/** The eave as far as it was measured, live, whatever the design still lacks. */
export function useMeasuredEave(eaveId: string): MeasuredEave | undefined {
  const { documents } = useJob();
  return useMemo(
    () =>
      measuredEave(
        documents,
        documents.survey.eaves.findIndex((eave) => eave.id === eaveId),
      ),
    [documents, eaveId],
  );
}
