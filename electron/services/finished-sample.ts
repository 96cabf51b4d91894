import { contract } from '../../core/contract/contract.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { ReadableDb } from '../store/database.ts';
import { getInvoice } from '../store/invoices.ts';
import { listJobs } from '../store/jobs.ts';
import { getSettings, putSettings } from '../store/settings.ts';
import { billingHandlers } from './billing.ts';
import { closeOutHandlers } from './close-outs.ts';
import type { Context } from './context.ts';
import { costHandlers } from './costs.ts';
import { jobFileHandlers } from './job-files.ts';
import { jobHandlers } from './jobs.ts';
import { quoteHandlers } from './quotes.ts';
import { type SampleHistory, sampleHistorySchema, type StepCommand, withIds } from './sample-history.ts';

/**
 * Brings in the jobs that the invented shop has behind it, each made by the program's own commands on the days of the
 * fixture, in the order of the days. Boards are planned and not searched for a proof, so that it takes no longer than a
 * click may. Brought in once, the same jobs are opened the next time: a second time the people of the sample would work
 * more hours than a day has.
 * @returns the id of the first of them. Where a step is refused (a shop whose own settings leave a price open), the jobs
 * are put away, and why is answered.
 */
export async function openFinishedSample(context: Context): Promise<Result<{ id: string }, Problem>> {
  const history = sampleHistorySchema.parse(JSON.parse(await context.sampleHistory()));
  const there = context.store.read((db) => alreadyThere(db, history));
  if (there !== undefined) return ok({ id: there });
  const sample = JSON.parse(await context.sampleJob()) as Record<string, unknown>;
  const made: { readonly id: string; readonly steps: readonly Step[] }[] = [];
  for (const { steps, ...job } of history.jobs) {
    const imported = await jobFileHandlers(onDay(context, job.asOf))['jobs.import']({
      text: JSON.stringify({ ...sample, ...job }),
    });
    if (!imported.ok) return imported;
    made.push({ id: imported.value.id, steps });
  }
  namePeople(context, history.people);
  const whole = await runSteps(context, made);
  if (!whole.ok) {
    for (const { id } of made) await jobHandlers(context)['jobs.archive']({ id, archived: true });
    return whole;
  }
  return ok({ id: made[0]?.id ?? '' });
}

/** The first of the sample's jobs, where it was brought in already and not put away. */
function alreadyThere(db: ReadableDb, { jobs }: SampleHistory): string | undefined {
  const first = jobs[0]?.job;
  return listJobs(db, false).find(
    ({ name, siteAddress }) => name === first?.name && siteAddress === first.siteAddress,
  )?.id;
}

type Step = SampleHistory['jobs'][number]['steps'][number];

/** The same world on another day, in which boards are planned at once and not searched. */
function onDay(context: Context, day: string): Context {
  return {
    ...context,
    today: () => day,
    prover: {
      ...context.prover,
      prove: () => Promise.resolve(fail({ code: 'internal' })),
      close: () => Promise.resolve(),
    },
  };
}

async function runSteps(
  context: Context,
  jobs: readonly { readonly id: string; readonly steps: readonly Step[] }[],
): Promise<Result<object, Problem>> {
  const all = jobs
    .flatMap(({ id, steps }) => {
      const ids = new Map([['job', id]]);
      return steps.map((step) => ({ ids, step }));
    })
    .toSorted((a, b) => a.step.on.localeCompare(b.step.on));
  for (const { ids, step } of all) {
    const done = await runStep(onDay(context, step.on), step.command, withIds(step.input, ids));
    if (!done.ok) return done;
    if (step.as !== undefined) nameMade(context, ids, step.as, done.value);
  }
  return ok({});
}

/** Keeps the id of what a step made under its name; of a bill what it asks for too. */
function nameMade({ store }: Context, ids: Map<string, string>, name: string, made: object): void {
  if (!('id' in made) || typeof made.id !== 'string') return;
  const { id } = made;
  ids.set(name, id);
  const invoice = store.read((db) => getInvoice(db, id));
  if (invoice !== undefined) ids.set(`${name}.total`, invoice.totalUsd);
}

/** Runs a command as the dispatcher would: its input is read by the contract. */
async function runStep(
  context: Context,
  command: StepCommand,
  input: unknown,
): Promise<Result<object, Problem>> {
  switch (command) {
    case 'quotes.make':
      return await quoteHandlers(context)[command](contract[command].input.parse(input));
    case 'quotes.send':
      return await quoteHandlers(context)[command](contract[command].input.parse(input));
    case 'quotes.decide':
      return await quoteHandlers(context)[command](contract[command].input.parse(input));
    case 'billing.saveChange':
      return await billingHandlers(context)[command](contract[command].input.parse(input));
    case 'billing.moveChange':
      return await billingHandlers(context)[command](contract[command].input.parse(input));
    case 'billing.issue':
      return await billingHandlers(context)[command](contract[command].input.parse(input));
    case 'billing.pay':
      return await billingHandlers(context)[command](contract[command].input.parse(input));
    case 'costs.addTime':
      return await costHandlers(context)[command](contract[command].input.parse(input));
    case 'costs.addBill':
      return await costHandlers(context)[command](contract[command].input.parse(input));
    case 'costs.noteProgress':
      return await costHandlers(context)[command](contract[command].input.parse(input));
    case 'money.finish':
      return await closeOutHandlers(context)[command](contract[command].input.parse(input));
    default:
      return command satisfies never;
  }
}

/** The people of the sample's hours, in a shop that has named nobody yet. */
function namePeople({ store }: Context, people: SampleHistory['people']): void {
  store.write((db) => {
    const { settings, revision } = getSettings(db);
    if (settings.jobCost.people.length === 0)
      putSettings(db, { ...settings, jobCost: { ...settings.jobCost, people: [...people] } }, revision);
    return ok({});
  });
}
