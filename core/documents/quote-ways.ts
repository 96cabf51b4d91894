import type { ExtraCost } from '../eave/design-document.ts';
import type { Offer } from '../offer/offer-document.ts';
import type { PricedWay } from '../offer/offered-ways.ts';
import type { CostLine } from '../pricing/estimate-types.ts';
import { formatUsd, usd } from '../units/money.ts';
import type { Block } from './sheet.ts';

/** The other ways to build it, each with what it has otherwise and its own total; none where there is one way alone. */
export function wayBlocks(ways: readonly PricedWay[]): readonly Block[] {
  const [offered, ...others] = ways;
  if (offered === undefined || others.length === 0) return [];
  return [
    { kind: 'heading', text: 'Your choices' },
    {
      kind: 'table',
      columns: [
        { title: 'Choice', align: 'left', share: 2 },
        { title: 'What is different', align: 'left', share: 5 },
        { title: 'Total', align: 'right', share: 0 },
        { title: 'Initials', align: 'centre', share: 1 },
      ],
      rows: [offered, ...others].map((way) => ({
        cells: [
          way.name,
          way === offered
            ? 'As described above'
            : way.differences.length === 0
              ? 'Nothing that you would see'
              : way.differences.join(' '),
          way.result.estimate.lacks.length === 0 ? formatUsd(way.result.estimate.totalUsd) : 'not complete',
          '',
        ],
      })),
    },
    {
      kind: 'paragraph',
      small: true,
      text: `Each total is for the whole job. Initial the one you choose; without initials ${offered.name} is agreed. Percentages of the payments below go by the total of the choice.`,
    },
  ];
}

/** Sums that are set aside, what each covers, and that the price follows what the work takes. */
export function allowanceBlocks(
  lines: readonly CostLine[],
  extras: readonly Pick<ExtraCost, 'id' | 'covers'>[],
): readonly Block[] {
  const allowances = lines.filter((line) => line.kind === 'allowance');
  if (allowances.length === 0) return [];
  return [
    { kind: 'heading', text: 'Allowances' },
    {
      kind: 'paragraph',
      text: 'These are allowances: sums set aside within the price, adjusted up or down to what they really come to once it is known.',
    },
    {
      kind: 'list',
      items: allowances.map((line) => {
        const extra = extras.find(({ id }) => line.id === `extra-${id}`);
        const covers = extra?.covers === 'material' ? 'for the material alone' : 'for material and labour';
        return `${line.clientWording}: ${formatUsd(line.priceUsd)}, ${covers}.`;
      }),
    },
  ];
}

/** Prices for work that nobody can see before the eave is open. */
export function hiddenWorkBlocks({ unitPrices }: Pick<Offer, 'unitPrices'>): readonly Block[] {
  if (unitPrices.length === 0) return [];
  return [
    { kind: 'heading', text: 'If we find hidden damage' },
    {
      kind: 'table',
      columns: [
        { title: 'Work', align: 'left', share: 5 },
        { title: 'Unit', align: 'left', share: 1 },
        { title: 'Price for one', align: 'right', share: 0 },
      ],
      rows: unitPrices.map(({ what, unit, priceUsd }) => ({ cells: [what, unit, formatUsd(usd(priceUsd))] })),
    },
    {
      kind: 'paragraph',
      small: true,
      text: 'Not in the total. We stop, show you what we found with a photo, count it with you, and go on once a change order is signed.',
    },
  ];
}
