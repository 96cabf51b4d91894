import { computeJob } from '../../core/job/compute-job.ts';
import { fail, ok } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import { addEstimate, listEstimates } from '../store/estimates.ts';
import { getJob } from '../store/jobs.ts';
import type { Context } from './context.ts';
import { loadJobInput } from './job-input.ts';
import { sheetsToKeep } from './kept-sheets.ts';
import { computeProven, provenSupplierCosts } from './proven-job.ts';

const noJob = { code: 'not-found', what: 'job' } as const;

/** Frozen estimates. */
export function estimateHandlers(context: Context): Pick<Handlers, 'estimates.save' | 'estimates.list'> {
  const { store } = context;
  return {
    'estimates.save': async ({ jobId }) => {
      const today = context.today();
      const asked = store.read((db) => loadJobInput(db, jobId, today));
      if (asked === undefined) return fail(noJob);
      const computed = await computeProven(context, asked);
      if (!computed.ok) return computed;
      const { solved } = computed.value;
      const supplierCosts = await provenSupplierCosts(context, asked, computed.value.result);
      return store.write((db) => {
        // Read again, since the job may have been saved while boards were searched; plans that still fit are used.
        const input = loadJobInput(db, jobId, today);
        if (input === undefined) return fail(noJob);
        const result = computeJob(input, solved);
        if (!result.ok) return result;
        const id = context.newId();
        const number = addEstimate(db, {
          id,
          jobId,
          asOf: input.asOf,
          savedOn: today,
          totalUsd: result.value.estimate.totalUsd,
          lacks: result.value.estimate.lacks.length,
          record: {
            input,
            result: result.value,
            sheets: sheetsToKeep(input, result.value, { supplierCosts }),
          },
        });
        return ok({ id, number });
      });
    },
    'estimates.list': ({ jobId }) =>
      store.read((db) => (getJob(db, jobId) === undefined ? fail(noJob) : ok(listEstimates(db, jobId)))),
  };
}
