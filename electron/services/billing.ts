import type { BillAsk, InvoiceFigures } from '../../core/billing/invoice.ts';
import { makeInvoice } from '../../core/billing/invoice.ts';
import type { ChangeOrderState } from '../../core/billing/change-order.ts';
import { changePriceUsd } from '../../core/billing/contract-sum.ts';
import { changeFromDesign } from '../../core/billing/change-from-design.ts';
import type { billingCommands } from '../../core/contract/billing-commands.ts';
import { invoiceSheet } from '../../core/documents/invoice-sheet.ts';
import type { Sheet } from '../../core/documents/sheet.ts';
import { statementSheet } from '../../core/documents/statement-sheet.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { addDays } from '../../core/units/civil-date.ts';
import { usd } from '../../core/units/money.ts';
import type { Handlers } from '../handlers.ts';
import type { ReadableDb, WritableDb } from '../store/database.ts';
import { addInvoice, getInvoice, lastInvoiceNumber } from '../store/invoices.ts';
import { getJob } from '../store/jobs.ts';
import { addPayment, jobOfPayment, listPayments } from '../store/payments.ts';
import { getSettings, putSettings } from '../store/settings.ts';
import { billedBefore, billingOfJob, clientTaxPercent } from './billing-of-job.ts';
import { changeHandlers } from './billing-changes.ts';
import { creditHandler } from './billing-credits.ts';
import type { Context } from './context.ts';
import { loadJobInput } from './job-input.ts';
import { moneyOfJob } from './job-money.ts';
import { printSheet } from './print-sheet.ts';
import { computeProven } from './proven-job.ts';
import { putInPlaceOf } from './put-in-place.ts';
import { statementJobs } from './statement-jobs.ts';

const noJob = { code: 'not-found', what: 'job' } as const;
const noContract = { code: 'billing', fault: { what: 'no-contract' } } as const;

/** Change orders, invoices, credits and payments. What is issued or approved stays as it is. */
export function billingHandlers(context: Context): Pick<Handlers, keyof typeof billingCommands> {
  const { store, today, newId } = context;
  return {
    ...changeHandlers(context),
    'billing.get': ({ jobId }) =>
      store.read((db) => (getJob(db, jobId) === undefined ? fail(noJob) : billingOfJob(db, jobId, today()))),
    'billing.changeFromDesign': async ({ jobId }) => {
      const asked = store.read((db) => {
        const money = moneyOfJob(db, jobId, today());
        if (!money.ok) return money;
        const { accepted } = money.value;
        const now = loadJobInput(db, jobId, today());
        if (now === undefined) return fail(noJob);
        return accepted === null ? fail(noContract) : ok({ accepted, now, changes: money.value.changes });
      });
      if (!asked.ok) return asked;
      const { accepted, now, changes } = asked.value;
      const { settings, priceList, asOf } = accepted.input;
      const computed = await computeProven(context, { ...now, settings, priceList, asOf });
      if (!computed.ok) return computed;
      const { estimate } = computed.value.result;
      const inState = (...states: readonly ChangeOrderState[]) =>
        changes.filter(({ state, order }) => order.fromDesign && states.includes(state));
      const order = changeFromDesign(
        accepted.result.estimate,
        estimate,
        inState('approved').map((change) => change.order),
        store.read((db) => getSettings(db).settings.jobCost),
      );
      return ok({
        order,
        priceUsd: order === null ? usd(0) : changePriceUsd(order),
        lacks: estimate.lacks.length,
        open: inState('draft', 'sent').map(({ number }) => number),
      });
    },
    'billing.preview': ({ jobId, ask }) =>
      store.read((db) => {
        const figures = figuresOf(db, jobId, ask, today());
        return figures.ok ? ok(asJson(figures.value)) : figures;
      }),
    'billing.issue': ({ jobId, ask, issuedOn, seenUsd }) =>
      store.write((db) => {
        const job = getJob(db, jobId);
        if (job === undefined) return fail(noJob);
        const figures = figuresOf(db, jobId, ask, today());
        if (!figures.ok) return figures;
        const { kind, amountUsd, taxUsd, totalUsd } = figures.value;
        if (seenUsd !== null && seenUsd !== totalUsd)
          return fail({ code: 'billing', fault: { what: 'bill-moved', totalUsd } });
        const { settings } = getSettings(db);
        const number = takeInvoiceNumber(db);
        const dueOn = addDays(issuedOn, settings.jobCost.dueDays);
        const money = moneyOfJob(db, jobId, today());
        if (!money.ok) return money;
        const { accepted } = money.value;
        const sheet = invoiceSheet(
          { settings, job: job.info, number, issuedOn, dueOn, note: ask.note },
          figures.value,
          ask.showsQuantities && accepted !== null
            ? putInPlaceOf(figures.value.parts, accepted.result.takeoff, settings.jobCost)
            : [],
        );
        const id = newId();
        addInvoice(db, {
          id,
          jobId,
          number,
          kind,
          credits: null,
          issuedOn,
          dueOn,
          amountUsd,
          taxUsd,
          totalUsd,
          record: { ask, figures: figures.value, sheet },
        });
        return ok({ id, number });
      }),
    'billing.credit': creditHandler(context, takeInvoiceNumber),
    'billing.pay': ({ jobId, paidOn, amountUsd, how, note }) =>
      store.write((db) => {
        if (getJob(db, jobId) === undefined) return fail(noJob);
        const amount = usd(amountUsd);
        if (Number(amount) <= 0)
          return fail({ code: 'billing', fault: { what: 'payment-of-nothing' }, field: 'amountUsd' });
        const id = newId();
        addPayment(db, jobId, { id, paidOn, amountUsd: amount, how, note, takesBack: null });
        return ok({ id });
      }),
    'billing.takeBackPayment': ({ id, note }) =>
      store.write((db) => {
        const jobId = jobOfPayment(db, id);
        const payments = jobId === undefined ? [] : listPayments(db, jobId);
        const payment = payments.find((one) => one.id === id);
        if (jobId === undefined || payment === undefined) return fail({ code: 'not-found', what: 'payment' });
        if (payment.takesBack !== null || payments.some(({ takesBack }) => takesBack === id))
          return fail({ code: 'billing', fault: { what: 'already-taken-back' } });
        addPayment(db, jobId, { ...payment, id: newId(), paidOn: today(), note, takesBack: id });
        return ok({});
      }),
    'billing.invoicePaper': async ({ id, paperSize }) => {
      const invoice = store.read((db) => getInvoice(db, id));
      if (invoice === undefined) return fail({ code: 'not-found', what: 'invoice' });
      if (!invoice.intact) return fail({ code: 'shop-file-damaged' });
      return ok(await printSheet(context, (invoice.record as { readonly sheet: Sheet }).sheet, paperSize));
    },
    'billing.statement': async ({ jobId, paperSize }) => {
      const sheet = store.read((db): Result<Sheet, Problem> => {
        const job = getJob(db, jobId);
        if (job === undefined) return fail(noJob);
        const jobs = statementJobs(db, job, today());
        if (!jobs.ok) return jobs;
        const { settings } = getSettings(db);
        return ok(statementSheet({ settings, job: job.info, date: today(), jobs: jobs.value }));
      });
      return sheet.ok ? ok(await printSheet(context, sheet.value, paperSize)) : sheet;
    },
  };
}

function figuresOf(
  db: ReadableDb,
  jobId: string,
  ask: BillAsk,
  day: string,
): Result<InvoiceFigures, Problem> {
  if (getJob(db, jobId) === undefined) return fail(noJob);
  const money = moneyOfJob(db, jobId, day);
  if (!money.ok) return money;
  const { contract } = money.value;
  if (contract === null) return fail(noContract);
  return makeInvoice(contract, ask, billedBefore(money.value), clientTaxPercent(money.value));
}

/** The next number of the one series of invoices and credits; the first is what the settings say. */
function takeInvoiceNumber(db: WritableDb): number {
  const { settings, revision } = getSettings(db);
  const last = lastInvoiceNumber(db);
  const number = last === 0 ? settings.nextInvoiceNumber : last + 1;
  putSettings(db, { ...settings, nextInvoiceNumber: number + 1 }, revision);
  return number;
}

function asJson(figures: InvoiceFigures) {
  return { ...figures, changes: [...figures.changes], parts: [...figures.parts] };
}
