import { Decimal } from 'decimal.js';
import type { costCommands } from '../../core/contract/cost-commands.ts';
import {
  type Bill,
  billTotalUsd,
  type KeptBill,
  type KeptTime,
  personHourUsd,
  standingEntries,
  timeCostUsd,
  type TimeEntry,
} from '../../core/jobcost/cost-entries.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok } from '../../core/result.ts';
import { decimalText, usd } from '../../core/units/money.ts';
import type { Handlers } from '../handlers.ts';
import { addAttachment, getAttachment, listAttachments } from '../store/attachments.ts';
import { addBill, getBill, listBills } from '../store/bills.ts';
import { takeNumber } from '../store/counters.ts';
import type { WritableDb } from '../store/database.ts';
import { getJob } from '../store/jobs.ts';
import { addPrices, hasPriceItem } from '../store/prices.ts';
import { addProgress } from '../store/progress.ts';
import { getSettings } from '../store/settings.ts';
import { addTime, getTime, hoursOfDay, listTimes } from '../store/time-entries.ts';
import { keepAttachment, readAttachment } from './attachment-files.ts';
import type { Context } from './context.ts';
import { costsOfJob } from './costs-of-job.ts';

const noJob = { code: 'not-found', what: 'job' } as const;
const noEntry = { code: 'not-found', what: 'entry' } as const;
const alreadyReplaced = { code: 'costs', fault: { what: 'already-replaced' } } as const;

/** Time, receipts, orders, progress: what a job really takes. Entries are added, never changed. */
export function costHandlers(context: Context): Pick<Handlers, keyof typeof costCommands> {
  const { store, today, newId } = context;
  const head = (db: WritableDb, replaces: string | null, takesBack: boolean) => ({
    id: newId(),
    sequence: takeNumber(db, 'cost-entry'),
    enteredOn: today(),
    replaces,
    takesBack,
  });
  return {
    'costs.get': ({ jobId }) =>
      store.read((db) => (getJob(db, jobId) === undefined ? fail(noJob) : costsOfJob(db, jobId, today()))),
    'costs.addTime': ({ jobId, entries }) =>
      store.write((db) => {
        if (getJob(db, jobId) === undefined) return fail(noJob);
        const worked = entries.filter(({ hours }) => Number(hours) > 0);
        if (worked.length === 0) return fail({ code: 'costs', fault: { what: 'no-hours' } });
        for (const entry of worked) addTime(db, jobId, costed(db, head(db, null, false), entry));
        const tooMany = overfullDay(db, worked);
        return tooMany === undefined ? ok({ added: worked.length }) : fail(tooMany);
      }),
    'costs.correctTime': ({ id, entry }) =>
      store.write((db) => {
        const jobId = getTime(db, id)?.jobId;
        if (jobId === undefined) return fail(noEntry);
        const old = standingEntries(listTimes(db, jobId)).find((time) => time.id === id);
        if (old === undefined) return fail(alreadyReplaced);
        const at = head(db, id, entry === null);
        addTime(
          db,
          jobId,
          entry === null ? { ...old, ...at, hours: '0', costUsd: usd(0) } : costed(db, at, entry),
        );
        const tooMany = entry === null ? undefined : overfullDay(db, [entry]);
        return tooMany === undefined ? ok({}) : fail(tooMany);
      }),
    'costs.addBill': ({ jobId, bill }) =>
      store.write((db) => {
        if (getJob(db, jobId) === undefined) return fail(noJob);
        const refused = refusedBill(db, jobId, bill);
        if (refused !== undefined) return fail(refused);
        const kept: KeptBill = { ...head(db, null, false), bill };
        addBill(db, jobId, kept);
        return ok({ id: kept.id, pricesNoted: notePrices(db, bill) });
      }),
    'costs.correctBill': ({ id, bill }) =>
      store.write((db) => {
        const found = getBill(db, id);
        if (found === undefined) return fail(noEntry);
        const { jobId, kept } = found;
        if (!standingEntries(listBills(db, jobId)).some((one) => one.id === id)) return fail(alreadyReplaced);
        const refused = bill === null ? undefined : refusedBill(db, jobId, bill);
        if (refused !== undefined) return fail(refused);
        addBill(db, jobId, { ...head(db, id, bill === null), bill: bill ?? kept.bill });
        return ok({});
      }),
    'costs.noteProgress': ({ jobId, ...word }) =>
      store.write((db) => {
        if (getJob(db, jobId) === undefined) return fail(noJob);
        addProgress(db, jobId, { ...word, notedOn: today() });
        return ok({});
      }),
    'costs.attach': ({ jobId, name, base64 }) => {
      if (store.read((db) => getJob(db, jobId)) === undefined) return fail(noJob);
      const kept = keepAttachment(
        context.shop.folder(),
        { id: newId(), jobId, addedOn: today(), name },
        Buffer.from(base64, 'base64'),
      );
      if (!kept.ok) return kept;
      return store.write((db) => {
        addAttachment(db, kept.value);
        return ok({ id: kept.value.id });
      });
    },
    'costs.openAttachment': ({ id }) => {
      const attachment = store.read((db) => getAttachment(db, id));
      if (attachment === undefined) return fail({ code: 'not-found', what: 'attachment' });
      const bytes = readAttachment(context.shop.folder(), attachment);
      return bytes.ok
        ? ok({ fileName: attachment.fileName, base64: Buffer.from(bytes.value).toString('base64') })
        : bytes;
    },
  };
}

/** The entry with what its hours cost today: a later wage does not change what was worked. */
function costed(
  db: WritableDb,
  head: Pick<KeptTime, 'id' | 'sequence' | 'enteredOn' | 'replaces' | 'takesBack'>,
  entry: TimeEntry,
): KeptTime {
  const { labour, jobCost } = getSettings(db).settings;
  const wage = jobCost.people.find(({ name }) => name === entry.person)?.wageUsdPerHour ?? null;
  const rateUsd = personHourUsd(wage, labour);
  return { ...head, ...entry, rateUsd, costUsd: timeCostUsd(entry.hours, rateUsd) };
}

/** A person who would have worked more than a day has, over all jobs. */
function overfullDay(db: WritableDb, entries: readonly TimeEntry[]): Problem | undefined {
  for (const { person, workedOn } of entries) {
    const hours = hoursOfDay(db, workedOn)
      .filter((one) => one.person === person)
      .reduce((sum, one) => sum.plus(one.hours), new Decimal(0));
    if (hours.gt(24))
      return {
        code: 'costs',
        fault: { what: 'too-many-hours', person, day: workedOn, hours: decimalText(hours) },
      };
  }
  return undefined;
}

/** What it names has to belong to the same job. */
function refusedBill(db: WritableDb, jobId: string, bill: Bill): Problem | undefined {
  const { orderId, attachmentId } = bill;
  if (orderId !== null && getBill(db, orderId)?.jobId !== jobId)
    return { code: 'not-found', what: 'order', field: 'bill.orderId' };
  const attached = listAttachments(db, jobId).some(({ id }) => id === attachmentId);
  if (attachmentId !== null && !attached)
    return { code: 'not-found', what: 'attachment', field: 'bill.attachmentId' };
  return returnThatAdds(bill);
}

/** A return that would make the job dearer; a fee for taking back may stand on a line of it. */
function returnThatAdds(bill: Bill): Problem | undefined {
  if (bill.kind !== 'return' || Number(billTotalUsd(bill)) <= 0) return undefined;
  const index = Math.max(
    0,
    bill.lines.findIndex(({ amountUsd }) => Number(amountUsd) > 0),
  );
  return {
    code: 'costs',
    fault: { what: 'return-adds-cost' },
    field: `bill.lines.${index}.amountUsd`,
  };
}

/** Notes the price of one on the price list, where the person wants it; answers how many were new. */
function notePrices(db: WritableDb, bill: Bill): number {
  return bill.lines.reduce((noted, line) => {
    const quantity = new Decimal(line.quantity);
    if (!line.notesPrice || line.itemId === null || quantity.lte(0) || !hasPriceItem(db, line.itemId))
      return noted;
    const priceUsd = new Decimal(line.amountUsd)
      .div(quantity)
      .toDecimalPlaces(4, Decimal.ROUND_HALF_UP)
      .toFixed();
    const observation = { priceUsd, observedOn: bill.datedOn, source: 'receipt', validUntil: null } as const;
    return noted + addPrices(db, line.itemId, [observation]);
  }, 0);
}
