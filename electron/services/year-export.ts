import { strToU8, zipSync } from 'fflate';
import {
  type YearJob,
  type YearTable,
  yearTables,
  yearWords,
} from '../../core/jobcost/learning/year-tables.ts';
import { guarded } from '../../core/pricing/price-cells.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { listBills } from '../store/bills.ts';
import type { ReadableDb } from '../store/database.ts';
import { listInvoices } from '../store/invoices.ts';
import { listJobs } from '../store/jobs.ts';
import { listPayments } from '../store/payments.ts';
import { getSettings } from '../store/settings.ts';
import { listTimes } from '../store/time-entries.ts';
import { writeCsv } from './csv-text.ts';

/** Writes a year for the accountant: four CSV files and a text that says what is in them, in one zip file. */
export function exportYear(
  db: ReadableDb,
  year: number,
): Result<{ readonly fileName: string; readonly base64: string }, Problem> {
  const jobs = [...listJobs(db, false), ...listJobs(db, true)].map(({ id, name, customerName }) => ({
    name,
    customer: customerName,
    invoices: listInvoices(db, id),
    payments: listPayments(db, id),
    times: listTimes(db, id),
    bills: listBills(db, id),
  }));
  if (jobs.some(({ invoices }) => invoices.some(({ intact }) => !intact)))
    return fail({ code: 'shop-file-damaged' });
  const tables = yearTables(jobs satisfies readonly YearJob[], year);
  const { shopName } = getSettings(db).settings;
  const files = [
    ...tables.map((table) => [`${table.file}.csv`, strToU8(csvOf(table))] as const),
    ['read-me.txt', strToU8(yearWords(shopName, year, tables))] as const,
  ];
  return ok({
    fileName: `eavewright-year-${year}.zip`,
    base64: Buffer.from(zipSync(Object.fromEntries(files))).toString('base64'),
  });
}

function csvOf({ columns, rows }: YearTable): string {
  return writeCsv([columns.map(([title]) => title), ...rows.map((row) => row.map(guardedCell))]);
}

/** A spreadsheet must not run what someone typed; a number stays one. */
function guardedCell(text: string): string {
  return /^-?\d+(?:\.\d+)?$/.test(text) ? text : guarded(text);
}
