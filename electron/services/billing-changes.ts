import { Decimal } from 'decimal.js';
import { changeOrderSheet } from '../../core/documents/change-order-sheet.ts';
import type { Sheet } from '../../core/documents/sheet.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import { getAttachment } from '../store/attachments.ts';
import { addChange, changeDraft, getChange, moveChange, type StoredChange } from '../store/change-orders.ts';
import type { ReadableDb } from '../store/database.ts';
import { getJob } from '../store/jobs.ts';
import { getSettings } from '../store/settings.ts';
import type { Context } from './context.ts';
import { moneyOfJob } from './job-money.ts';
import { printSheet } from './print-sheet.ts';

const noJob = { code: 'not-found', what: 'job' } as const;
const noContract = { code: 'billing', fault: { what: 'no-contract' } } as const;
const noChange = { code: 'not-found', what: 'change order' } as const;

/** Change orders: drafts until they are sent or answered; the paper is frozen as it was sent, and again as it was approved. */
export function changeHandlers(
  context: Context,
): Pick<Handlers, 'billing.saveChange' | 'billing.moveChange' | 'billing.changePaper'> {
  const { store, today, newId } = context;
  return {
    'billing.saveChange': ({ jobId, id, order }) =>
      store.write((db) => {
        if (getJob(db, jobId) === undefined) return fail(noJob);
        if (order.photo !== null && getAttachment(db, order.photo)?.jobId !== jobId)
          return fail({ code: 'not-found', what: 'photo' });
        if (id === null) {
          const made = newId();
          return ok({ id: made, number: addChange(db, { id: made, jobId, madeOn: today(), order }) });
        }
        const change = getChange(db, id);
        if (change?.jobId !== jobId) return fail(noChange);
        if (change.state !== 'draft') return fail(settled(change));
        if (!change.intact) return fail({ code: 'shop-file-damaged' });
        changeDraft(db, change, order);
        return ok({ id, number: change.number });
      }),
    'billing.moveChange': ({ id, to, on, note }) =>
      store.write((db) => {
        const change = getChange(db, id);
        if (change === undefined) return fail(noChange);
        if (!change.intact) return fail({ code: 'shop-file-damaged' });
        if (change.state === 'approved' || change.state === 'declined') return fail(settled(change));
        if (to === 'approved') {
          const money = moneyOfJob(db, change.jobId, today());
          if (!money.ok) return money;
          const { contract, ledger } = money.value;
          if (contract === null) return fail(noContract);
          const after = new Decimal(contract.revisedUsd).plus(change.priceUsd);
          if (after.lt(ledger.billedUsd))
            return fail({
              code: 'billing',
              fault: { what: 'change-below-billed', billedUsd: ledger.billedUsd },
            });
        }
        if (to === 'declined') {
          moveChange(db, change, { state: to, on, note, sheet: change.sheet });
          return ok({});
        }
        const sheet = sheetOf(
          db,
          to === 'approved' ? { ...change, state: to, decidedOn: on } : change,
          today(),
        );
        if (!sheet.ok) return sheet;
        moveChange(db, change, { state: to, on, note, sheet: sheet.value });
        return ok({});
      }),
    'billing.changePaper': async ({ id, paperSize }) => {
      const sheet = store.read((db): Result<Sheet, Problem> => {
        const change = getChange(db, id);
        if (change === undefined) return fail(noChange);
        if (!change.intact) return fail({ code: 'shop-file-damaged' });
        return change.sheet === null ? sheetOf(db, change, today()) : ok(change.sheet);
      });
      return sheet.ok ? ok(await printSheet(context, sheet.value, paperSize)) : sheet;
    },
  };
}

function settled({ number, state }: StoredChange): Problem {
  return { code: 'billing', fault: { what: 'change-is-settled', number, state } };
}

/** A change order on paper, with the contract as it stands without it. */
function sheetOf(db: ReadableDb, change: StoredChange, day: string): Result<Sheet, Problem> {
  const job = getJob(db, change.jobId);
  if (job === undefined) return fail(noChange);
  const money = moneyOfJob(db, change.jobId, day);
  if (!money.ok) return money;
  const { accepted, approved, contract } = money.value;
  if (accepted === null || contract === null) return fail(noContract);
  const { settings } = getSettings(db);
  const quotedDays = accepted.input.design.offer?.workingDays ?? null;
  return ok(
    changeOrderSheet({
      settings: { ...settings, money: accepted.input.settings.money },
      job: job.info,
      number: change.number,
      madeOn: change.madeOn,
      order: change.order,
      beforeUsd: contract.revisedUsd,
      approvedOn: change.state === 'approved' ? change.decidedOn : null,
      photo: change.order.photo === null ? null : (getAttachment(db, change.order.photo)?.name ?? null),
      daysBefore:
        quotedDays === null ? null : approved.reduce((days, { order }) => days + order.days, quotedDays),
    }),
  );
}
