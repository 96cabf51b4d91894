import { Decimal } from 'decimal.js';
import type { InvoiceKind } from '../../billing/invoice.ts';
import { sumUsd, type Usd, usd } from '../../units/money.ts';
import { type KeptBill, type KeptTime, standingEntries } from '../cost-entries.ts';
import { costOfLines } from '../spread-tax.ts';

/** What a job has for the accountant. */
export type YearJob = {
  readonly name: string;
  readonly customer: string;
  readonly invoices: readonly {
    readonly number: number;
    readonly kind: InvoiceKind;
    readonly credits: number | null;
    readonly issuedOn: string;
    readonly dueOn: string;
    /** Of a credit above 0, as the ledger has it. [$] */
    readonly amountUsd: Usd;
    readonly taxUsd: Usd;
  }[];
  readonly payments: readonly {
    readonly paidOn: string;
    readonly amountUsd: Usd;
    readonly how: string;
    readonly note: string;
    readonly takesBack: string | null;
  }[];
  readonly times: readonly KeptTime[];
  readonly bills: readonly KeptBill[];
};

/** One file for the accountant: what each column holds, the rows, and what its last amount adds up to. */
export type YearTable = {
  readonly file: string;
  readonly about: string;
  readonly columns: readonly (readonly [title: string, about: string])[];
  readonly rows: readonly (readonly string[])[];
  /** Sum of the column that the file is about. [$] */
  readonly sumUsd: Usd;
};

/**
 * Lays out a year for the accountant: bills by the day of issue, payments by the day they came, hours by the day they were
 * worked, papers of costs by their own date. Corrected entries are left out, orders too, since they are no cost yet; what
 * takes something back stands with amounts below zero. Rows are in the order of their days.
 * @param jobs - all jobs, archived ones too.
 * @param year - civil year, e.g. 2026.
 */
export function yearTables(jobs: readonly YearJob[], year: number): readonly YearTable[] {
  const inYear = (day: string): boolean => day.startsWith(`${String(year).padStart(4, '0')}-`);
  return [invoices(jobs, inYear), payments(jobs, inYear), hours(jobs, inYear), costs(jobs, inYear)];
}

type InYear = (day: string) => boolean;
/** A row by its day, with the amount that it adds. */
type Dated = { readonly day: string; readonly cells: readonly string[]; readonly amountUsd: Usd };

const jobColumns = [
  ['Job', 'name of the job'],
  ['Customer', 'name of the customer'],
] as const;

function invoices(jobs: readonly YearJob[], inYear: InYear): YearTable {
  const rows = jobs.flatMap(({ name, customer, invoices: papers }) =>
    papers
      .filter(({ issuedOn }) => inYear(issuedOn))
      .map((paper): Dated => {
        const sign = paper.kind === 'credit' ? -1 : 1;
        const amount = usd(new Decimal(paper.amountUsd).times(sign));
        const tax = usd(new Decimal(paper.taxUsd).times(sign));
        const amountUsd = sumUsd([amount, tax]);
        return {
          day: paper.issuedOn,
          amountUsd,
          cells: [
            String(paper.number),
            paper.kind,
            paper.credits === null ? '' : String(paper.credits),
            paper.issuedOn,
            paper.dueOn,
            name,
            customer,
            amount,
            tax,
            amountUsd,
          ],
        };
      }),
  );
  return table('invoices', 'Invoices and credits that were issued in the year.', rows, [
    ['Number', 'of the invoice or credit; one series without gaps'],
    ['Kind', 'deposit, progress, final or credit'],
    ['Credits invoice', 'of a credit: number of the invoice that it takes back'],
    ['Issued on', 'year-month-day'],
    ['Due on', 'year-month-day'],
    ...jobColumns,
    ['Before tax', 'dollars; below zero for a credit'],
    ['Sales tax', 'dollars charged to the customer'],
    ['Total', 'dollars; this column is added up'],
  ]);
}

function payments(jobs: readonly YearJob[], inYear: InYear): YearTable {
  const rows = jobs.flatMap(({ name, customer, payments: paid }) =>
    paid
      .filter(({ paidOn }) => inYear(paidOn))
      .map(({ paidOn, amountUsd: size, how, note, takesBack }): Dated => {
        const amountUsd = usd(new Decimal(size).abs().times(takesBack === null ? 1 : -1));
        return { day: paidOn, amountUsd, cells: [paidOn, name, customer, how, note, amountUsd] };
      }),
  );
  return table('payments', 'Payments from customers, and those that were taken back.', rows, [
    ['Paid on', 'year-month-day'],
    ...jobColumns,
    ['How', 'as it was entered'],
    ['Note', 'as it was entered'],
    ['Amount', 'dollars; below zero where one was taken back; this column is added up'],
  ]);
}

function hours(jobs: readonly YearJob[], inYear: InYear): YearTable {
  const rows = jobs.flatMap(({ name, times }) =>
    standingEntries(times)
      .filter(({ workedOn }) => inYear(workedOn))
      .map(
        ({ workedOn, person, phase, hours: worked, rateUsd, costUsd, note }): Dated => ({
          day: workedOn,
          amountUsd: costUsd,
          cells: [workedOn, person, name, phase, note, worked, rateUsd, costUsd],
        }),
      ),
  );
  return table('hours', 'Hours that were worked on jobs; not a payroll.', rows, [
    ['Worked on', 'year-month-day'],
    ['Person', 'who worked'],
    ['Job', 'name of the job'],
    ['Phase', 'the phase of the job'],
    ['Note', 'as it was entered'],
    ['Hours', 'of one person'],
    ['Cost of an hour', 'dollars, wage and burden as they were when it was entered'],
    ['Cost', 'dollars; this column is added up'],
  ]);
}

function costs(jobs: readonly YearJob[], inYear: InYear): YearTable {
  const rows = jobs.flatMap(({ name, bills }) =>
    standingEntries(bills)
      .filter(({ bill }) => bill.kind !== 'order' && inYear(bill.datedOn))
      .flatMap(({ bill }) => {
        const withTax = costOfLines(bill);
        return bill.lines.map((line, index): Dated => {
          const amountUsd = withTax[index] ?? usd(0);
          const before = usd(line.amountUsd);
          return {
            day: bill.datedOn,
            amountUsd,
            cells: [
              bill.datedOn,
              bill.kind,
              bill.supplier,
              bill.number,
              name,
              line.phase,
              line.kind,
              line.description,
              line.quantity,
              line.unit,
              before,
              usd(new Decimal(amountUsd).minus(before)),
              amountUsd,
            ],
          };
        });
      }),
  );
  return table(
    'costs',
    "Receipts, subcontractors' bills and returns, line by line; orders are left out.",
    rows,
    [
      ['Dated', 'day on the paper, year-month-day'],
      ['Paper', 'receipt, sub-bill or return'],
      ['From', 'supplier or subcontractor'],
      ['Paper number', 'as it stands on the paper'],
      ['Job', 'name of the job'],
      ['Phase', 'the phase of the job'],
      ['Kind of cost', 'labour, material, equipment, sub or other'],
      ['Description', 'as it was entered'],
      ['Quantity', 'as it was entered'],
      ['Unit', 'as it was entered'],
      ['Before tax', 'dollars; below zero where it came back'],
      ['Tax', "the line's share of the tax on the paper"],
      ['Cost', 'dollars; this column is added up'],
    ],
  );
}

function table(
  file: string,
  about: string,
  rows: readonly Dated[],
  columns: YearTable['columns'],
): YearTable {
  return {
    file,
    about,
    columns,
    rows: rows.toSorted((a, b) => a.day.localeCompare(b.day)).map(({ cells }) => cells),
    sumUsd: sumUsd(rows.map(({ amountUsd }) => amountUsd)),
  };
}

/** Says in words what is in the files of a year, column by column, with the sum that each file has to come to. */
export function yearWords(shopName: string, year: number, tables: readonly YearTable[]): string {
  const parts = tables.map(
    ({ file, about, columns, rows, sumUsd: sum }) =>
      `${file}.csv\n${about}\n${rows.length === 1 ? '1 row' : `${rows.length} rows`}, adding up to ${sum} dollars.\n${columns
        .map(([title, what]) => `  ${title}: ${what}`)
        .join('\n')}\n`,
  );
  return [
    `${shopName.trim() === '' ? 'The shop' : shopName.trim()}, year ${year}`,
    '',
    'Text that a spreadsheet would take for a formula has an apostrophe before it. Entries that were corrected or taken back are left out.',
    '',
    ...parts,
  ].join('\n');
}
