import { Decimal } from 'decimal.js';
import type { CreditFigures } from '../billing/credit.ts';
import type { InvoiceFigures } from '../billing/invoice.ts';
import type { JobInfo } from '../job/job-file.ts';
import type { ShopSettings } from '../pricing/shop-settings.ts';
import { formatUsd, type Usd, usd } from '../units/money.ts';
import type { Block, Row, Sheet } from './sheet.ts';
import { moneyHead } from './sheet-head.ts';

/** What a paper of the billing is about, beside its figures. */
export type BillingPaper = {
  readonly settings: ShopSettings;
  readonly job: JobInfo;
  readonly number: number;
  readonly issuedOn: string;
  readonly dueOn: string;
  readonly note: string;
};

/** Quantities that a part of the contract stands for, as far as they are in place. */
export type PutInPlace = {
  /** Key of the part. */
  readonly key: string;
  readonly rows: readonly {
    readonly what: string;
    readonly unit: string;
    /** All of it, what is in place, and what of that came since the last bill. [unit] */
    readonly total: string;
    readonly toDate: string;
    readonly sinceLast: string;
  }[];
};

/** Makes an invoice: how the contract stands, how far the work is, what is held back, what is asked for. */
export function invoiceSheet(
  paper: BillingPaper,
  figures: InvoiceFigures,
  putInPlace: readonly PutInPlace[],
): Sheet {
  const title = `${invoiceTitles[figures.kind]} ${paper.number}`;
  return {
    ...moneyHead('invoice', paper, {
      title,
      sorting: `invoice ${String(paper.number).padStart(4, '0')}`,
      date: paper.issuedOn,
    }),
    blocks: [
      factsOf(paper, figures.totalUsd),
      { kind: 'heading', text: 'Contract' },
      amounts([
        ['As quoted and accepted', figures.quotedUsd],
        ...figures.changes.map(({ description, priceUsd }): Amount => [description, priceUsd]),
        ['Contract as it stands', figures.revisedUsd, 'subtotal'],
      ]),
      ...workBlocks(figures),
      { kind: 'heading', text: 'This invoice' },
      amounts(billSums(figures)),
      {
        kind: 'paragraph',
        text: `Left of the contract after this invoice: ${formatUsd(figures.balanceToFinishUsd)}${
          Number(figures.retainedUsd) > 0 ? `, ${formatUsd(figures.retainedUsd)} of it held back` : ''
        }.`,
      },
      ...noteBlocks(paper.note),
      {
        kind: 'paragraph',
        small: true,
        text: `Please pay by ${paper.dueOn} and name invoice ${paper.number}.`,
      },
      ...placeBlocks(figures, putInPlace),
    ],
  };
}

const invoiceTitles: Readonly<Record<InvoiceFigures['kind'], string>> = {
  deposit: 'Deposit invoice',
  stage: 'Invoice',
  progress: 'Invoice',
  final: 'Final invoice',
};

/** Makes a credit: which invoice it takes back, how much of it, and why. */
export function creditSheet(paper: BillingPaper, credit: CreditFigures): Sheet {
  return {
    ...moneyHead('credit', paper, {
      title: `Credit ${paper.number}`,
      sorting: `invoice ${String(paper.number).padStart(4, '0')} credit`,
      date: paper.issuedOn,
    }),
    blocks: [
      {
        kind: 'facts',
        pairs: [
          ...partyFacts(paper.job),
          ['Number', String(paper.number)],
          ['Date', paper.issuedOn],
          ['Takes back', `invoice ${credit.invoiceNumber}`],
        ],
      },
      amounts([
        [`Off invoice ${credit.invoiceNumber}`, negative(credit.amountUsd)],
        ...(Number(credit.taxUsd) === 0 ? [] : [['Sales tax', negative(credit.taxUsd)] as Amount]),
        ['Credit', credit.totalUsd, 'total'],
      ]),
      ...noteBlocks(paper.note),
    ],
  };
}

export type Amount = readonly [label: string, amount: Usd, style?: NonNullable<Row['style']>];

function factsOf(paper: BillingPaper, totalUsd: Usd): Block {
  return {
    kind: 'facts',
    pairs: [
      ...partyFacts(paper.job),
      ['Number', String(paper.number)],
      ['Date', paper.issuedOn],
      ['Due', paper.dueOn],
      ['Total due', formatUsd(totalUsd)],
    ],
  };
}

/** Whom a paper is for, and where the work is. */
export function partyFacts(job: JobInfo): readonly (readonly [string, string])[] {
  const name = job.customer.name.trim();
  return [
    ['For', name === '' ? 'Client not named' : name],
    ['Address', job.customer.address],
    ['Work at', job.siteAddress],
  ];
}

function workBlocks(figures: InvoiceFigures): readonly Block[] {
  if (figures.parts.length === 0) return [];
  const rows = figures.parts.map(
    (part): Row => ({
      cells: [
        part.label,
        formatUsd(part.priceUsd),
        `${part.percent} %`,
        formatUsd(part.doneUsd),
        formatUsd(usd(new Decimal(part.doneUsd).minus(part.doneBeforeUsd))),
      ],
    }),
  );
  const before = figures.parts.reduce((sum, part) => sum.plus(part.doneBeforeUsd), new Decimal(0));
  return [
    { kind: 'heading', text: 'Work done to date' },
    {
      kind: 'table',
      columns: [
        { title: 'Part of the work', align: 'left', share: 4 },
        { title: 'In the contract', align: 'right', share: 0 },
        { title: 'Done', align: 'right', share: 0 },
        { title: 'To date', align: 'right', share: 0 },
        { title: 'Since the last', align: 'right', share: 0 },
      ],
      rows: [
        ...rows,
        {
          cells: [
            'Work to date',
            formatUsd(figures.revisedUsd),
            '',
            formatUsd(figures.workToDateUsd),
            formatUsd(usd(new Decimal(figures.workToDateUsd).minus(before))),
          ],
          style: 'subtotal',
        },
      ],
    },
  ];
}

/** The quantities that stand behind the work to date, part by part. */
function placeBlocks(figures: InvoiceFigures, putInPlace: readonly PutInPlace[]): readonly Block[] {
  const told = putInPlace.filter(({ rows }) => rows.length > 0);
  if (told.length === 0) return [];
  return [
    { kind: 'heading', text: 'In place to date' },
    {
      kind: 'table',
      columns: [
        { title: 'What', align: 'left', share: 5 },
        { title: 'Unit', align: 'left', share: 0 },
        { title: 'In all', align: 'right', share: 0 },
        { title: 'In place', align: 'right', share: 0 },
        { title: 'Since the last', align: 'right', share: 0 },
      ],
      rows: told.flatMap(({ key, rows }): readonly Row[] => [
        {
          cells: [figures.parts.find((part) => part.key === key)?.label ?? '', '', '', '', ''],
          style: 'group',
        },
        ...rows.map(({ what, unit, total, toDate, sinceLast }) => ({
          cells: [what, unit, total, toDate, sinceLast],
        })),
      ]),
    },
  ];
}

/** How a bill comes to its total, line by line; the screen shows the same before it is issued. */
export function billSums(
  figures: Pick<
    InvoiceFigures,
    | 'kind'
    | 'stage'
    | 'workToDateUsd'
    | 'retainagePercent'
    | 'retainedUsd'
    | 'depositBeforeUsd'
    | 'billedBeforeUsd'
    | 'amountUsd'
    | 'taxUsd'
    | 'totalUsd'
  >,
): readonly Amount[] {
  const tax: readonly Amount[] = Number(figures.taxUsd) === 0 ? [] : [['Sales tax', figures.taxUsd]];
  if (figures.kind === 'deposit')
    return [['Deposit', figures.amountUsd], ...tax, ['Total due', figures.totalUsd, 'total']];
  if (figures.kind === 'stage')
    return [
      [figures.stage === '' ? 'Payment' : figures.stage, figures.amountUsd],
      ...tax,
      ['Total due', figures.totalUsd, 'total'],
    ];
  return [
    ['Work done to date', figures.workToDateUsd],
    ...less(`Held back, ${figures.retainagePercent} %`, figures.retainedUsd),
    ...less('Billed as deposit', figures.depositBeforeUsd),
    ...less('Billed before', figures.billedBeforeUsd),
    ['This invoice', figures.amountUsd, 'subtotal'],
    ...tax,
    ['Total due', figures.totalUsd, 'total'],
  ];
}

/** A small table of amounts under each other. */
export function amounts(rows: readonly Amount[]): Block {
  return {
    kind: 'table',
    columns: [
      { title: '', align: 'left', share: 5 },
      { title: 'Amount', align: 'right', share: 0 },
    ],
    rows: rows.map(([label, amount, style]) => ({
      cells: [label, formatUsd(amount)],
      ...(style === undefined ? {} : { style }),
    })),
  };
}

function less(label: string, amount: Usd): readonly Amount[] {
  return Number(amount) === 0 ? [] : [[label, negative(amount)]];
}

function noteBlocks(note: string): readonly Block[] {
  return note.trim() === '' ? [] : [{ kind: 'paragraph', text: note.trim() }];
}

function negative(amount: Usd): Usd {
  return usd(new Decimal(amount).neg());
}
