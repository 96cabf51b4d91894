import { settingsForFile } from '../../core/job/file-problems.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import { readJobFile } from '../../core/job/read-job-file.ts';
import { withBoardsOfOthers } from '../../core/stock/leave-stock.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Problem } from '../../core/problems/problem.ts';
import type { Handlers } from '../handlers.ts';
import { putDocuments } from '../store/documents.ts';
import type { WritableDb } from '../store/database.ts';
import { addJob, type Stamp } from '../store/jobs.ts';
import { addPrices, hasPriceItem, putPriceItem } from '../store/prices.ts';
import { getSettings, putSettings } from '../store/settings.ts';
import { plainFileName } from './app.ts';
import type { Context } from './context.ts';
import { loadJobInput } from './job-input.ts';

/** Jobs as files: taking one in, giving one out, and the sample. */
export function jobFileHandlers(
  context: Context,
): Pick<Handlers, 'jobs.import' | 'jobs.openSample' | 'jobs.export'> {
  const takeIn = (text: string): Result<{ id: string }, Problem> => {
    const file = readJobFile(text);
    if (!file.ok) return fail(asOne(file.problem));
    const stamp = { today: context.today(), newId: context.newId };
    return context.store.write((db) => ok({ id: addJobFile(db, file.value, stamp) }));
  };
  return {
    'jobs.import': ({ text }) => takeIn(text),
    'jobs.openSample': async () => takeIn(await context.sampleJob()),
    'jobs.export': ({ id }) => {
      const input = context.store.read((db) => loadJobInput(db, id, context.today()));
      if (input === undefined) return fail({ code: 'not-found', what: 'job' });
      const settings = settingsForFile(input.settings);
      const file = { format: 'eavewright-job', version: 1, ...input, settings } satisfies JobFile;
      return ok({
        fileName: `${plainFileName(input.job.name)}.eavewright-job.json`,
        text: `${JSON.stringify(file, null, 2)}\n`,
      });
    },
  };
}

/** The most faults that are told at once: by then it is another file, or one that no one mends by hand. */
const mostFaults = 50;

/** The faults of a file as one problem; a file that is no job file at all is told as that. */
function asOne(faults: readonly Problem[]): Problem {
  const [first] = faults;
  return first?.code === 'file-not-json' || first?.code === 'file-not-a-job'
    ? first
    : { code: 'file-faults', faults: faults.slice(0, mostFaults), count: faults.length };
}

/**
 * Adds a job with its documents. Price items that the shop's list lacks are added with their prices; the shop's own are
 * left alone. The file's settings are taken only by a shop that has never saved its own.
 */
function addJobFile(db: WritableDb, file: JobFile, stamp: Stamp): string {
  const id = addJob(db, file.job, file.asOf, stamp);
  const design = { ...file.design, cutting: withBoardsOfOthers(file.design.cutting) };
  putDocuments(db, id, { survey: file.survey, design, drafts: {} });
  for (const { prices, ...item } of file.priceList) {
    if (hasPriceItem(db, item.id)) continue;
    putPriceItem(db, item);
    addPrices(db, item.id, prices);
  }
  const stored = getSettings(db);
  if (stored.revision === 0) putSettings(db, file.settings, 0);
  return id;
}
