import type { learningCommands } from '../../core/contract/learning-commands.ts';
import { estimateAccuracy } from '../../core/jobcost/learning/estimate-accuracy.ts';
import { allowancesOf } from '../../core/jobcost/learning/close-job.ts';
import { jobOutcome } from '../../core/jobcost/learning/job-outcome.ts';
import { materialUse } from '../../core/jobcost/learning/material-use.ts';
import { learnRates } from '../../core/jobcost/learning/production-rates.ts';
import { fail, ok } from '../../core/result.ts';
import type { ShopSettings } from '../../core/pricing/shop-settings.ts';
import { findLabourTask, labourTasks } from '../../core/takeoff/labour-tasks.ts';
import type { Handlers } from '../handlers.ts';
import { getFinished, listFinished, listLeftOut, setLeftOut } from '../store/finished-jobs.ts';
import { getJob } from '../store/jobs.ts';
import { getSettings, putSettings } from '../store/settings.ts';
import { closeOutHandlers } from './close-outs.ts';
import type { Context } from './context.ts';
import { openFinishedSample } from './finished-sample.ts';
import { reminderHandlers } from './reminders.ts';
import { shopMoney } from './shop-money.ts';
import { exportYear } from './year-export.ts';

/** Finished jobs, what they teach, and the money of the whole shop. */
export function learningHandlers(context: Context): Pick<Handlers, keyof typeof learningCommands> {
  const { store, today } = context;
  return {
    ...closeOutHandlers(context),
    ...reminderHandlers(context),
    'jobs.openFinishedSample': () => openFinishedSample(context),
    'money.shop': () => store.read((db) => shopMoney(db, today())),
    'money.exportYear': ({ year }) => store.read((db) => exportYear(db, year)),
    'learning.get': () =>
      store.read((db) => {
        const finished = listFinished(db);
        const { settings } = getSettings(db);
        return ok({
          finished: finished.map(({ jobId, name, finishedOn, closeOut }) => ({
            jobId,
            name,
            finishedOn,
            outcome: jobOutcome(closeOut),
          })),
          reminders: settings.reminders,
          rates: learnRates(finished, usedRates(settings), listLeftOut(db)).map((rate) => ({
            ...rate,
            jobs: [...rate.jobs],
          })),
          materials: materialUse(finished, allowancesOf(settings)).map((use) => ({
            ...use,
            jobs: [...use.jobs],
          })),
          accuracy: estimateAccuracy(finished).map((one) => ({ ...one, jobs: [...one.jobs] })),
        });
      }),
    'learning.takeRate': ({ task, hoursPerUnit }) =>
      store.write((db) => {
        if (findLabourTask(task) === undefined) return fail({ code: 'not-found', what: 'task' });
        const { settings, revision } = getSettings(db);
        const others = settings.labour.rates.filter((rate) => rate.task !== task);
        const rates = [...others, { task, hoursPerUnit, mark: 'own' as const }];
        putSettings(db, { ...settings, labour: { ...settings.labour, rates } }, revision);
        return ok({});
      }),
    'learning.takeAllowance': ({ group, percent }) =>
      store.write((db) => {
        const { settings, revision } = getSettings(db);
        const fastening = { ...settings.fastening, lossPercent: percent };
        const changed =
          group === 'nails' ? { ...settings, fastening } : { ...settings, plankWastePercent: percent };
        putSettings(db, changed, revision);
        return ok({});
      }),
    'learning.leaveOut': ({ jobId, phase, leftOut }) =>
      store.write((db) => {
        if (getJob(db, jobId) === undefined) return fail({ code: 'not-found', what: 'job' });
        const finished = getFinished(db, jobId);
        if (finished === undefined) return fail({ code: 'costs', fault: { what: 'not-finished' } });
        setLeftOut(db, { jobId, phase }, leftOut);
        return ok({});
      }),
  };
}

/** The rate in use of each task: the shop's own, else the placeholder. [h/unit] */
function usedRates({ labour }: ShopSettings): ReadonlyMap<string, number> {
  const own = new Map(labour.rates.map(({ task, hoursPerUnit }) => [task, hoursPerUnit]));
  return new Map(labourTasks.map(({ key, hoursPerUnit }) => [key, own.get(key) ?? hoursPerUnit]));
}
