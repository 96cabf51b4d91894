import { type Phase, phases } from '../eave/phases.ts';
import type { Offer } from '../offer/offer-document.ts';
import type { CostLine, Estimate } from '../pricing/estimate-types.ts';
import { formatUsd, sumUsd, type Usd } from '../units/money.ts';
import type { Block, Column, Row } from './sheet.ts';

/** Lines of an estimate that a client reads as one. */
type ClientLine = { readonly phase: Phase; readonly wording: string; readonly lines: readonly CostLine[] };

/**
 * The price as the client reads it: one sum, by phase, or line by line, all three from the same shares of the price, so
 * that each adds up to the same total to the cent. No cost, hour or price for one is in any of them.
 * @param estimate - whose price it is.
 * @param level - how much of it is broken out.
 * @param incomplete - something has no price: then the sum is never called a total.
 */
export function priceTable(estimate: Estimate, level: Offer['printLevel'], incomplete: boolean): Block {
  const columns = columnsOf[level];
  const blanks = Array.from({ length: columns.length - 2 }, () => '');
  const tax = estimate.totals.find(({ key }) => key === 'client-tax');
  const row = (label: string, amountUsd: Usd, style: 'subtotal' | 'total' | 'body'): Row => ({
    cells: [label, ...blanks, formatUsd(amountUsd)],
    style,
  });
  const taxRows =
    tax === undefined || Number(tax.amountUsd) === 0
      ? []
      : [row('Price before tax', estimate.priceUsd, 'subtotal'), row('Sales tax', tax.amountUsd, 'body')];
  return {
    kind: 'table',
    columns,
    rows: [
      ...bodyRows(estimate, level, incomplete),
      ...taxRows,
      row(incomplete ? 'Sum so far, not complete' : 'Total', estimate.totalUsd, 'total'),
    ],
  };
}

const price: Column = { title: 'Price', align: 'right', share: 0 };
const columnsOf: Readonly<Record<Offer['printLevel'], readonly Column[]>> = {
  sum: [{ title: 'Work', align: 'left', share: 5 }, price],
  phase: [
    { title: 'Phase', align: 'left', share: 2 },
    { title: 'What it covers', align: 'left', share: 5 },
    price,
  ],
  line: [
    { title: 'Work', align: 'left', share: 4 },
    { title: 'Material in it', align: 'left', share: 4 },
    price,
  ],
};

function bodyRows({ lines }: Estimate, level: Offer['printLevel'], incomplete: boolean): readonly Row[] {
  const shown = (some: readonly CostLine[]): string => {
    const sum = sumUsd(some.map(({ priceUsd }) => priceUsd));
    return incomplete && Number(sum) === 0 ? 'no price yet' : formatUsd(sum);
  };
  const byPhase = phases
    .map((phase) => ({ phase, lines: lines.filter((line) => line.phase === phase) }))
    .filter((one) => one.lines.length > 0);
  switch (level) {
    case 'sum':
      return [{ cells: ['All the work described above', shown(lines)] }];
    case 'phase':
      return byPhase.map((one) => ({ cells: [one.phase, phaseWording(one.lines), shown(one.lines)] }));
    case 'line':
      return byPhase.flatMap((one): readonly Row[] => [
        { cells: [one.phase, '', ''], style: 'group' },
        ...clientLines(one.lines).map(
          (line): Row => ({ cells: [line.wording, materialOf(line.lines), shown(line.lines)] }),
        ),
      ]);
    default:
      return level satisfies never;
  }
}

/** Lines under one wording, in the order of the work. */
function clientLines(lines: readonly CostLine[]): readonly ClientLine[] {
  const byWording = Map.groupBy(lines, ({ clientWording }) => clientWording);
  return [...byWording].flatMap(([wording, some]) => {
    const [first] = some;
    return first === undefined ? [] : [{ phase: first.phase, wording, lines: some }];
  });
}

/** What is bought for it, counted: lumber by length, sheets, packages. Hours are never counted here. */
function materialOf(lines: readonly CostLine[]): string {
  return lines
    .filter(({ kind }) => kind === 'material')
    .map(({ quantity, description }) => `${quantity} of ${description}`)
    .join('; ');
}

/** The client's words for a phase's lines, each once, as one sentence. */
function phaseWording(lines: readonly CostLine[]): string {
  return clientLines(lines)
    .map(({ wording }, index) => (index === 0 ? wording : wording.charAt(0).toLowerCase() + wording.slice(1)))
    .join('; ');
}
