import type { learningCommands } from '../../core/contract/learning-commands.ts';
import { jobReportSheet } from '../../core/documents/job-report-sheet.ts';
import { allowancesOf, closingFigures } from '../../core/jobcost/learning/close-job.ts';
import type { CloseOutWords, FinishedFigures } from '../../core/jobcost/learning/finished-job.ts';
import { jobOutcome } from '../../core/jobcost/learning/job-outcome.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import { canonicalJson } from '../store/canonical-json.ts';
import type { ReadableDb, WritableDb } from '../store/database.ts';
import { dropFinished, getFinished, putFinished } from '../store/finished-jobs.ts';
import { getJob, type StoredJob } from '../store/jobs.ts';
import { getSettings, putSettings } from '../store/settings.ts';
import type { Context } from './context.ts';
import { printSheet } from './print-sheet.ts';
import { mostReminders } from './reminders.ts';
import { standingOfJob } from './standing-of-job.ts';

type CloseOutCommands = Extract<
  keyof typeof learningCommands,
  'money.closeOut' | 'money.finish' | 'money.reopen' | 'money.jobReport'
>;

const noJob = { code: 'not-found', what: 'job' } as const;
const noQuote = { code: 'costs', fault: { what: 'no-accepted-quote' } } as const;

/** The end of a job: what it came to is kept, with what the person says of it. */
export function closeOutHandlers(context: Context): Pick<Handlers, CloseOutCommands> {
  const { store, today } = context;
  return {
    'money.closeOut': ({ jobId }) =>
      store.read((db) => {
        if (getJob(db, jobId) === undefined) return fail(noJob);
        const figures = figuresNow(db, jobId, today());
        if (!figures.ok) return figures;
        const kept = getFinished(db, jobId);
        const words = kept?.closeOut.words ?? noWords;
        return ok({
          today: today(),
          figures: figures.value,
          outcome: figures.value === null ? null : jobOutcome({ words, figures: figures.value }),
          finished:
            kept === undefined
              ? null
              : {
                  finishedOn: kept.finishedOn,
                  words,
                  outcome: jobOutcome(kept.closeOut),
                  changedSince: canonicalJson(kept.closeOut.figures) !== canonicalJson(figures.value),
                },
        });
      }),
    'money.finish': ({ jobId, finishedOn, words }) =>
      store.write((db) => {
        const job = getJob(db, jobId);
        if (job === undefined) return fail(noJob);
        const figures = figuresNow(db, jobId, today());
        if (!figures.ok) return figures;
        if (figures.value === null) return fail(noQuote);
        putFinished(db, jobId, { finishedOn, closeOut: { words, figures: figures.value } });
        keepReminder(db, job, words);
        return ok({});
      }),
    'money.reopen': ({ jobId }) =>
      store.write((db) => {
        if (getJob(db, jobId) === undefined) return fail(noJob);
        dropFinished(db, jobId);
        return ok({});
      }),
    'money.jobReport': async ({ jobId, paperSize }) => {
      const found = store.read((db) => ({
        job: getJob(db, jobId),
        finished: getFinished(db, jobId),
        settings: getSettings(db).settings,
      }));
      if (found.job === undefined) return fail(noJob);
      if (found.finished === undefined) return fail({ code: 'costs', fault: { what: 'not-finished' } });
      const sheet = jobReportSheet({ settings: found.settings, job: found.job.info, ...found.finished });
      return ok(await printSheet(context, sheet, paperSize));
    },
  };
}

const noWords: CloseOutWords = { reasons: {}, surprise: '', remind: true, willChange: '', owner: null };

function figuresNow(db: ReadableDb, jobId: string, day: string): Result<FinishedFigures | null, Problem> {
  const found = standingOfJob(db, jobId, day);
  if (!found.ok) return found;
  if (found.value === null) return ok(null);
  const { accepted, contract, money, budget, standing, times, bills, jobCost } = found.value;
  return ok(
    closingFigures({
      result: accepted.result,
      contract,
      ledger: money.ledger,
      budget,
      standing,
      times,
      bills,
      settings: jobCost,
      allowances: allowancesOf(accepted.input.settings),
    }),
  );
}

/** Puts the surprise on the shop's own list of what to ask before a quote, once a job; taken off where he wants it off. */
function keepReminder(db: WritableDb, job: StoredJob, { surprise, remind }: CloseOutWords): void {
  const { settings, revision } = getSettings(db);
  const id = `job-${job.id}`.slice(0, 40);
  const others = settings.reminders.filter((one) => one.id !== id);
  const text = surprise.trim();
  const reminders =
    remind && text !== '' && others.length < mostReminders
      ? [...others, { id, text, from: job.info.name }]
      : others;
  if (canonicalJson(reminders) !== canonicalJson(settings.reminders))
    putSettings(db, { ...settings, reminders }, revision);
}
