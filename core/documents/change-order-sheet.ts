import { changeLineUsd, changePriceUsd } from '../billing/contract-sum.ts';
import type { ChangeOrder, ChangeOrderLine } from '../billing/change-order.ts';
import type { JobInfo } from '../job/job-file.ts';
import type { ShopSettings } from '../pricing/shop-settings.ts';
import { formatUsd, sumUsd, type Usd, usd } from '../units/money.ts';
import { amounts, partyFacts } from './invoice-sheet.ts';
import type { Block, Sheet } from './sheet.ts';
import { moneyHead } from './sheet-head.ts';

/** Why a contract is changed, in words. */
export const changeReasons: Readonly<Record<ChangeOrder['reason'], string>> = {
  owner: 'Wished by the owner',
  hidden: 'Hidden damage that came to light',
  code: 'Asked for by the building department',
  price: 'Prices that moved',
  other: 'Other',
};

/** Makes the paper of a change order: what changes and why, its price, the contract with it, days, signatures. */
export function changeOrderSheet(of: {
  readonly settings: ShopSettings;
  readonly job: JobInfo;
  readonly number: number;
  readonly madeOn: string;
  readonly order: ChangeOrder;
  /** Contract before it, earlier approved changes in it, before tax. [$] */
  readonly beforeUsd: Usd;
  /** It is in the contract already. */
  readonly approvedOn: string | null;
  /** The quote's own days with those of earlier changes; null where the quote named none. [working days] */
  readonly daysBefore: number | null;
  /** What the photo that goes with it is called; null where there is none. */
  readonly photo: string | null;
}): Sheet {
  const { settings, job, number, order, beforeUsd } = of;
  const priceUsd = changePriceUsd(order);
  const shopName = settings.shopName.trim();
  const customer = job.customer.name.trim();
  const tax: readonly Block[] =
    settings.money.taxRule === 'client-pays' && order.lines.some(({ taxable }) => taxable)
      ? [
          {
            kind: 'paragraph',
            small: true,
            text: `Sales tax of ${settings.money.taxPercent} % is charged on the taxable lines with the bill.`,
          },
        ]
      : [];
  return {
    ...moneyHead(
      'change-order',
      { settings, job },
      {
        title: `Change order ${number}`,
        sorting: `change order ${String(number).padStart(2, '0')}`,
        date: of.madeOn,
      },
    ),
    blocks: [
      {
        kind: 'facts',
        pairs: [
          ...partyFacts(job),
          ['Number', String(number)],
          ['Date', of.madeOn],
          ['Reason', changeReasons[order.reason]],
          ...(of.photo === null ? [] : ([['Photo', of.photo]] as const)),
          ...(of.approvedOn === null ? [] : ([['Approved', of.approvedOn]] as const)),
        ],
      },
      { kind: 'heading', text: 'What changes' },
      ...(order.description.trim() === ''
        ? []
        : [{ kind: 'paragraph' as const, text: order.description.trim() }]),
      {
        kind: 'table',
        columns: [
          { title: 'Work', align: 'left', share: 5 },
          { title: 'Quantity', align: 'right', share: 0 },
          { title: 'Unit', align: 'left', share: 0 },
          { title: 'For one', align: 'right', share: 0 },
          { title: 'Price', align: 'right', share: 0 },
        ],
        rows: [
          ...printedLines(order.lines).map((cells) => ({ cells })),
          { cells: ['This change', '', '', '', formatUsd(priceUsd)], style: 'subtotal' as const },
        ],
      },
      ...tax,
      { kind: 'heading', text: 'The contract with it' },
      amounts([
        ['Contract before this change', beforeUsd],
        ['This change', priceUsd],
        ['Contract with this change', sumUsd([beforeUsd, priceUsd]), 'total'],
      ]),
      { kind: 'paragraph', text: daysWords(order.days, of.daysBefore) },
      {
        kind: 'paragraph',
        text: 'The work described here begins once both have signed. Everything else in the contract stays as it is.',
      },
      {
        kind: 'signatures',
        parties: [shopName === '' ? 'Contractor' : `For ${shopName}`, customer === '' ? 'Client' : customer],
      },
    ],
  };
}

function daysWords(days: number, before: number | null): string {
  const all = before === null ? '' : ` It was to take ${before} working days; now it is ${before + days}.`;
  if (days === 0) return 'The day of completion stays as it was.';
  const count = Math.abs(days) === 1 ? 'one working day' : `${Math.abs(days)} working days`;
  return `${days > 0 ? `The job takes ${count} longer.` : `The job is done ${count} earlier.`}${all}`;
}

/** Lump sums of one wording are told as one: how they part into labour and material is the shop's own. */
function printedLines(lines: readonly ChangeOrderLine[]): readonly (readonly string[])[] {
  const groups = Map.groupBy(lines, (line) =>
    line.quantity === '1' && line.unit === 'lump sum' ? line.description : line.id,
  );
  return [...groups.values()].map((group) => {
    const [line] = group;
    const sum = formatUsd(sumUsd(group.map(changeLineUsd)));
    if (line === undefined || group.length > 1)
      return [line?.description ?? '', '1', line?.unit ?? '', sum, sum];
    return [line.description, line.quantity, line.unit, formatUsd(usd(line.unitPriceUsd)), sum];
  });
}
