import { Decimal } from 'decimal.js';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { formatRate, perUnit } from '../pricing/cost-draft.ts';
import { formatLength } from '../units/format-length.ts';
import { decimalText, formatUsd, sumUsd } from '../units/money.ts';
import { structuralBlock } from './cautions.ts';
import { lackBlocks } from './lacks.ts';
import { type PurchaseLine, purchases, type SupplierPurchase } from './purchases.ts';
import type { Block, Row, Sheet } from './sheet.ts';
import { sheetHead } from './sheet-head.ts';

/** Room to write by hand. */
const blank = '______________________';

/**
 * Makes the list to order from: a page a supplier with what to ask him for, what is on hand already, and what all of it comes
 * to. Its sum is that of the estimate's material lines.
 */
export function purchaseListSheet(input: JobInput, result: JobResult): Sheet {
  const { suppliers, onHand, entered } = purchases(input, result);
  return {
    ...sheetHead('purchase-list', input),
    orientation: 'landscape',
    blocks: [
      {
        kind: 'facts',
        pairs: [
          ['Job', input.job.name],
          ['Deliver to', input.job.siteAddress],
          ['Drop at', blank],
          ['Needed on', blank],
          ['Prices of', input.asOf],
        ],
      },
      ...lackBlocks('purchase list', result),
      { kind: 'heading', text: 'All of it' },
      sumTable(result, suppliers, onHand, entered),
      ...notToBuy(onHand),
      ...enteredBlocks(entered),
      structuralBlock,
      ...suppliers.flatMap((purchase) => supplierBlocks(input, purchase)),
    ],
  };
}

function sumTable(
  result: JobResult,
  suppliers: readonly SupplierPurchase[],
  onHand: readonly PurchaseLine[],
  entered: readonly PurchaseLine[],
): Block {
  const rows: Row[] = suppliers.map(({ name, lines }) => ({
    cells: [name, String(lines.length), boardsOf(lines), sumText(lines)],
  }));
  if (onHand.length > 0)
    rows.push({
      cells: [
        'On hand, not to buy: at what it is worth',
        String(onHand.length),
        boardsOf(onHand),
        sumText(onHand),
      ],
    });
  if (entered.length > 0)
    rows.push({ cells: ['Entered as extra costs', String(entered.length), '', sumText(entered)] });
  const materials = result.estimate.lines.filter(({ kind }) => kind === 'material');
  const boards = result.cutPlans.reduce((sum, plan) => sum + plan.boards.length, 0);
  return {
    kind: 'table',
    columns: [
      { title: 'From', align: 'left', share: 1 },
      { title: 'Lines', align: 'right', share: 0 },
      { title: 'Boards', align: 'right', share: 0 },
      { title: 'Sum', align: 'right', share: 0 },
    ],
    rows: [
      ...rows,
      {
        cells: [
          'Materials, as in the estimate',
          String(
            onHand.length + entered.length + suppliers.reduce((sum, { lines }) => sum + lines.length, 0),
          ),
          String(boards),
          formatUsd(sumUsd(materials.map(({ costUsd }) => costUsd))),
        ],
        style: 'total',
      },
    ],
  };
}

function notToBuy(onHand: readonly PurchaseLine[]): readonly Block[] {
  if (onHand.length === 0) return [];
  return [
    { kind: 'heading', text: 'On hand already: do not buy' },
    {
      kind: 'table',
      columns: [
        { title: 'Boards', align: 'right', share: 0 },
        { title: 'What', align: 'left', share: 1 },
        { title: 'Worth, each', align: 'right', share: 0 },
        { title: 'Worth', align: 'right', share: 0 },
      ],
      rows: onHand.map(({ line }) => ({
        cells: [line.quantity, line.description, formatUsd(line.unitCostUsd), formatUsd(line.costUsd)],
      })),
    },
  ];
}

/** Materials that are on no price list: whoever entered them knows where they come from. */
function enteredBlocks(entered: readonly PurchaseLine[]): readonly Block[] {
  if (entered.length === 0) return [];
  return [
    { kind: 'heading', text: 'Entered as extra costs: no supplier is named' },
    {
      kind: 'table',
      columns: [
        { title: 'Quantity', align: 'right', share: 0 },
        { title: 'Unit', align: 'left', share: 0 },
        { title: 'What', align: 'left', share: 1 },
        { title: 'Price', align: 'right', share: 0 },
        { title: 'Sum', align: 'right', share: 0 },
      ],
      rows: entered.map(({ line }) => ({
        cells: [
          line.quantity,
          line.unit,
          line.description,
          formatRate(line.unitCostUsd),
          formatUsd(line.costUsd),
        ],
      })),
    },
  ];
}

function supplierBlocks(input: JobInput, { name, lines }: SupplierPurchase): readonly Block[] {
  const notes = lines.flatMap(({ item }) =>
    item === undefined || item.notes.trim() === '' ? [] : [`${item.description}: ${item.notes}`],
  );
  return [
    { kind: 'new-page' },
    { kind: 'heading', text: name },
    {
      kind: 'facts',
      pairs: [
        ['Deliver to', input.job.siteAddress],
        ['Spoken to', blank],
        ['Phone', blank],
        ['Order number', blank],
        ['Delivery on', blank],
      ],
    },
    {
      kind: 'table',
      columns: [
        { title: 'Got', align: 'left', share: 0 },
        { title: 'Quantity', align: 'right', share: 0 },
        { title: 'Unit', align: 'left', share: 0 },
        { title: 'What', align: 'left', share: 3 },
        { title: 'Length', align: 'right', share: 0 },
        { title: 'Asked', align: 'left', share: 2 },
        { title: 'Good until', align: 'left', share: 0 },
        { title: 'Price', align: 'right', share: 0 },
        { title: 'Sum', align: 'right', share: 0 },
      ],
      rows: [
        ...lines.map((line) => lineRow(line)),
        { cells: ['', '', '', `All from ${name}`, '', '', '', '', sumText(lines)], style: 'total' },
      ],
    },
    ...(notes.length === 0
      ? []
      : [
          { kind: 'heading' as const, text: 'Notes' },
          { kind: 'list' as const, items: notes },
        ]),
    {
      kind: 'paragraph',
      small: true,
      text: 'Shop paper: what was asked, before the client’s price. Lengths are what to ask for; a shorter board does not hold its pieces. “Ask again”: the price is past its day or older than Settings allow.',
    },
  ];
}

function lineRow({ line, item, price }: PurchaseLine): Row {
  return {
    cells: [
      '[  ]',
      line.quantity,
      line.unit,
      whatOf({ line, item, price }),
      lengthOf({ line, item, price }),
      askedOf({ line, item, price }),
      goodUntil(price),
      formatRate(line.unitCostUsd),
      formatUsd(line.costUsd),
    ],
  };
}

function whatOf({ line, item }: PurchaseLine): string {
  if (item === undefined) return line.description;
  const isBoard = item.category === 'lumber' || item.category === 'plank';
  const words =
    isBoard && item.section !== ''
      ? [item.section, item.grade, item.species].filter((word) => word.trim() !== '').join(' ')
      : item.description;
  return item.minimumPack === 1 ? words : `${words}, in packs of ${item.minimumPack}`;
}

function lengthOf({ item }: PurchaseLine): string {
  if (item === undefined) return '';
  if (item.lengthFt !== null) return `${item.lengthFt} ft`;
  if (item.category !== 'sheet' && item.lengthIn !== null) return formatLength(item.lengthIn);
  return item.widthIn !== null && item.lengthIn !== null
    ? `${formatLength(item.widthIn)} x ${formatLength(item.lengthIn)}`
    : '';
}

/** How the price was asked, and in which unit where that differs from the one it is bought by. */
function askedOf({ line, item, price }: PurchaseLine): string {
  if (item === undefined || price === undefined) return 'as Settings say';
  const { priceUsd, source, observedOn } = price.observation;
  const rate = new Decimal(priceUsd).eq(line.unitCostUsd)
    ? ''
    : `${formatRate(priceUsd)} ${perUnit(item.unit)}, `;
  return `${rate}${sourceWords[source]} of ${observedOn}`;
}

function goodUntil(price: PurchaseLine['price']): string {
  if (price === undefined) return '';
  return price.stale ? 'ask again' : (price.observation.validUntil ?? 'not said');
}

const sourceWords = { list: 'list', quote: 'quote', receipt: 'receipt' } as const;

/** Boards among the lines, blank for none; sheets, nails and edge are none. */
function boardsOf(lines: readonly PurchaseLine[]): string {
  const boards = lines.filter(({ line }) => line.id.startsWith('lumber-'));
  if (boards.length === 0) return '';
  return decimalText(boards.reduce<Decimal>((sum, { line }) => sum.plus(line.quantity), new Decimal(0)));
}

function sumText(lines: readonly PurchaseLine[]): string {
  return formatUsd(sumUsd(lines.map(({ line }) => line.costUsd)));
}
