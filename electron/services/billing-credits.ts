import { makeCredit } from '../../core/billing/credit.ts';
import { creditSheet } from '../../core/documents/invoice-sheet.ts';
import { fail, ok } from '../../core/result.ts';
import { sumUsd } from '../../core/units/money.ts';
import type { Handlers } from '../handlers.ts';
import type { WritableDb } from '../store/database.ts';
import { addInvoice, getInvoice, listInvoices } from '../store/invoices.ts';
import { getJob } from '../store/jobs.ts';
import { getSettings } from '../store/settings.ts';
import type { Context } from './context.ts';

/** Takes an invoice back, in whole or in part, by a paper under the next number of the same series. */
export function creditHandler(
  { store, newId }: Context,
  takeNumber: (db: WritableDb) => number,
): Handlers['billing.credit'] {
  return ({ invoiceId, amountUsd, reason, issuedOn }) =>
    store.write((db) => {
      const invoice = getInvoice(db, invoiceId);
      const job = invoice === undefined ? undefined : getJob(db, invoice.jobId);
      if (invoice === undefined || job === undefined || invoice.kind === 'credit')
        return fail({ code: 'not-found', what: 'invoice' });
      if (!invoice.intact) return fail({ code: 'shop-file-damaged' });
      const earlier = listInvoices(db, invoice.jobId).filter(({ credits }) => credits === invoice.number);
      const credit = makeCredit(
        invoice,
        {
          amountUsd: sumUsd(earlier.map((one) => one.amountUsd)),
          taxUsd: sumUsd(earlier.map((one) => one.taxUsd)),
        },
        amountUsd,
      );
      if (!credit.ok) return credit;
      const number = takeNumber(db);
      const { settings } = getSettings(db);
      const id = newId();
      addInvoice(db, {
        id,
        jobId: invoice.jobId,
        number,
        kind: 'credit',
        credits: invoice.number,
        issuedOn,
        dueOn: issuedOn,
        amountUsd: credit.value.amountUsd,
        taxUsd: credit.value.taxUsd,
        totalUsd: credit.value.totalUsd,
        record: {
          reason,
          figures: credit.value,
          sheet: creditSheet(
            { settings, job: job.info, number, issuedOn, dueOn: issuedOn, note: reason },
            credit.value,
          ),
        },
      });
      return ok({ id, number });
    });
}
