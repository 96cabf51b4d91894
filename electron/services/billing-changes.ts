import { Decimal } from 'decimal.js';
import { contractSum } from '../../core/billing/contract-sum.ts';
import { changeOrderSheet } from '../../core/documents/change-order-sheet.ts';
import type { Sheet } from '../../core/documents/sheet.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import { addChange, changeDraft, getChange, moveChange, type StoredChange } from '../store/change-orders.ts';
import type { ReadableDb } from '../store/database.ts';
import { getJob } from '../store/jobs.ts';
import { getSettings } from '../store/settings.ts';
import type { Context } from './context.ts';
import { moneyOfJob } from './job-money.ts';
import { printSheet } from './print-sheet.ts';

const noJob = { code: 'not-found', what: 'job' } as const;
const noChange = { code: 'not-found', what: 'change order' } as const;

/** Change orders: drafts until they are sent or approved, frozen from then on. */
export function changeHandlers(
  context: Context,
): Pick<Handlers, 'billing.saveChange' | 'billing.moveChange' | 'billing.changePaper'> {
  const { store, today, newId } = context;
  return {
    'billing.saveChange': ({ jobId, id, order }) =>
      store.write((db) => {
        if (getJob(db, jobId) === undefined) return fail(noJob);
        if (id === null) {
          const made = newId();
          return ok({ id: made, number: addChange(db, { id: made, jobId, madeOn: today(), order }) });
        }
        const change = getChange(db, id);
        if (change?.jobId !== jobId) return fail(noChange);
        if (change.state !== 'draft') return fail(settled(change));
        changeDraft(db, id, order);
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
          if (contract === null) return fail({ code: 'billing', fault: { what: 'no-contract' } });
          const after = new Decimal(contract.revisedUsd).plus(change.priceUsd);
          if (after.lt(ledger.billedUsd))
            return fail({
              code: 'billing',
              fault: { what: 'change-below-billed', billedUsd: ledger.billedUsd },
            });
        }
        moveChange(db, id, { state: to, on, note });
        return ok({});
      }),
    'billing.changePaper': async ({ id, paperSize }) => {
      const sheet = store.read((db) => sheetOf(db, id, today()));
      return sheet.ok ? ok(await printSheet(sheet.value, paperSize)) : sheet;
    },
  };
}

function settled({ number, state }: StoredChange): Problem {
  return { code: 'billing', fault: { what: 'change-is-settled', number, state } };
}

/** A change order on paper, with the contract as it was before it: the quote and the changes approved under lower numbers. */
function sheetOf(db: ReadableDb, id: string, day: string): Result<Sheet, Problem> {
  const change = getChange(db, id);
  const job = change === undefined ? undefined : getJob(db, change.jobId);
  if (change === undefined || job === undefined) return fail(noChange);
  if (!change.intact) return fail({ code: 'shop-file-damaged' });
  const money = moneyOfJob(db, change.jobId, day);
  if (!money.ok) return money;
  const { accepted, approved, changes } = money.value;
  if (accepted === null) return fail({ code: 'billing', fault: { what: 'no-contract' } });
  const { settings } = getSettings(db);
  const earlier = approved.filter(({ number }) => isEarlier(changes, number, change));
  return ok(
    changeOrderSheet({
      settings,
      job: job.info,
      number: change.number,
      madeOn: change.madeOn,
      order: change.order,
      beforeUsd: contractSum(accepted.result.estimate, earlier, settings.jobCost).revisedUsd,
      approvedOn: change.state === 'approved' ? change.decidedOn : null,
    }),
  );
}

/** Of an approved one: what was approved before it; of an open one: all that is approved. */
function isEarlier(changes: readonly StoredChange[], number: number, change: StoredChange): boolean {
  if (number === change.number) return false;
  if (change.state !== 'approved') return true;
  const other = changes.find((one) => one.number === number);
  const day = other?.decidedOn ?? '';
  const own = change.decidedOn ?? '';
  return day < own || (day === own && number < change.number);
}
