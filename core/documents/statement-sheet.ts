import { Decimal } from 'decimal.js';
import { agedOf, type Age, ages, type Ledger, type OpenInvoice } from '../billing/ledger.ts';
import type { JobInfo } from '../job/job-file.ts';
import type { ShopSettings } from '../pricing/shop-settings.ts';
import { formatUsd, sumUsd, type Usd, usd } from '../units/money.ts';
import { amounts } from './invoice-sheet.ts';
import type { Block, Row, Sheet } from './sheet.ts';
import { moneyHead } from './sheet-head.ts';

/** Something that stands on a statement, in the order of days. */
export type StatementEntry = {
  readonly on: string;
  readonly what: string;
  /** Above zero what was asked for, below zero what was paid or credited. [$] */
  readonly amountUsd: Usd;
};

/** What one of a client's jobs came to. */
export type StatementJob = {
  readonly name: string;
  readonly entries: readonly StatementEntry[];
  readonly ledger: Ledger;
};

/** What an age of an open amount is called. */
export const ageWords: Readonly<Record<Age, string>> = {
  'not-due': 'Not due yet',
  '1-30': '1 to 30 days past',
  '31-60': '31 to 60 days past',
  '61-90': '61 to 90 days past',
  'over-90': 'Over 90 days past',
};

/** Makes a client's statement: every paper and payment of each of his jobs, the balance, and what is open by age. */
export function statementSheet(of: {
  readonly settings: ShopSettings;
  readonly job: JobInfo;
  readonly date: string;
  readonly jobs: readonly StatementJob[];
}): Sheet {
  const customer = of.job.customer;
  const name = customer.name.trim() === '' ? 'Client not named' : customer.name.trim();
  const balanceUsd = sumUsd(of.jobs.map(({ ledger }) => ledger.balanceUsd));
  const open: readonly OpenInvoice[] = of.jobs.flatMap(({ ledger }) => ledger.invoices);
  const aged = agedOf(open);
  const agedRows = ages
    .filter((age) => Number(aged[age]) !== 0)
    .map((age) => [ageWords[age], aged[age]] as const);
  return {
    ...moneyHead('statement', of, {
      title: 'Statement',
      sorting: `statement ${of.date} ${name} -`,
      date: of.date,
    }),
    blocks: [
      {
        kind: 'facts',
        pairs: [
          ['For', name],
          ['Address', customer.address],
          ['Date', of.date],
          [Number(balanceUsd) < 0 ? 'Paid ahead' : 'Balance', formatUsd(usd(new Decimal(balanceUsd).abs()))],
        ],
      },
      ...of.jobs.flatMap(jobBlocks),
      { kind: 'heading', text: 'Open, by how long it is past its day' },
      ...(agedRows.length === 0
        ? [{ kind: 'paragraph' as const, text: 'Nothing is open.' }]
        : [amounts([...agedRows, ['Open', sumUsd(agedRows.map(([, amount]) => amount)), 'total']])]),
      {
        kind: 'paragraph',
        small: true,
        text: 'A payment is counted on the invoice that was due first, then on the next.',
      },
    ],
  };
}

function jobBlocks(job: StatementJob): readonly Block[] {
  let balance = new Decimal(0);
  const rows = job.entries.map((entry): Row => {
    balance = balance.plus(entry.amountUsd);
    const amount = new Decimal(entry.amountUsd);
    return {
      cells: [
        entry.on,
        entry.what,
        amount.gte(0) ? formatUsd(entry.amountUsd) : '',
        amount.lt(0) ? formatUsd(usd(amount.neg())) : '',
        formatUsd(usd(balance)),
      ],
    };
  });
  return [
    { kind: 'heading', text: job.name },
    {
      kind: 'table',
      columns: [
        { title: 'Day', align: 'left', share: 0 },
        { title: 'What', align: 'left', share: 4 },
        { title: 'Asked for', align: 'right', share: 0 },
        { title: 'Paid or credited', align: 'right', share: 0 },
        { title: 'Balance', align: 'right', share: 0 },
      ],
      rows: [...rows, { cells: ['', 'Balance', '', '', formatUsd(job.ledger.balanceUsd)], style: 'total' }],
    },
  ];
}
