import { describe, expect, test } from 'vitest';
import { makeSheet } from '../../core/documents/make-sheet.ts';
import { purchases } from '../../core/documents/purchases.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import { formatUsd, sumUsd } from '../../core/units/money.ts';
import { sampleText, soundJob, soundResult } from '../job/example-job.ts';
import { printed } from './papers.ts';
import type { ReadPage } from './read-pdf.ts';

/** The sample with boards on hand, a delivery that is charged, and a material that no list has. */
function jobToBuy(): JobFile {
  const job = soundJob(sampleText());
  job.design.cutting.onHand.push({
    id: 'h9',
    section: '2x6',
    grade: '',
    lengthIn: 90,
    count: 2,
    valueUsd: '2',
  });
  job.settings.suppliers.push({ name: 'Fernhollow Lumber', deliveryUsd: '65' });
  job.design.extraCosts.push({
    id: 'caulk',
    description: 'Caulk and primer',
    phase: 'Fascia and trim',
    kind: 'material',
    quantity: '3',
    unit: 'tube',
    unitCostUsd: '7.35',
    taxable: true,
  });
  return job;
}

const job = jobToBuy();
const result = soundResult(job);
const materials = result.estimate.lines.filter(({ kind }) => kind === 'material');
const pages = await printed(makeSheet('purchase-list', job, result));
const pageOf = (heading: string): ReadPage | undefined => pages.find(({ lines }) => lines.includes(heading));

/** Cents of the last amount on each line of a page that begins as a line to buy does. */
function centsOnPage(page: ReadPage | undefined): readonly number[] {
  return (page?.lines ?? [])
    .filter((line) => line.startsWith('[ ]'))
    .map((line) => Number(line.split('$').at(-1)?.replace(/[,.]/g, '')));
}

describe('the purchase list', () => {
  test('names every material line of the estimate once, and sums to the same cent', () => {
    const bought = purchases(job, result);
    const lines = [
      ...bought.suppliers.flatMap((supplier) => supplier.lines),
      ...bought.onHand,
      ...bought.entered,
    ];
    expect(sumUsd(lines.map(({ line }) => line.costUsd))).toBe(
      sumUsd(materials.map(({ costUsd }) => costUsd)),
    );
    expect(bought.onHand.map(({ line }) => line.quantity)).toEqual(['2']);
    expect(bought.entered.map(({ line }) => line.description)).toEqual(['Caulk and primer']);
  });

  test('prints for each supplier lines that add up to his sum by hand', () => {
    for (const { name } of purchases(job, result).suppliers) {
      const page = pageOf(name);
      const sum = page?.lines.find((line) => line.includes(`All from ${name}`));
      const cents = centsOnPage(page).reduce((total, one) => total + one, 0);
      expect(cents).toBe(Number(sum?.split('$').at(-1)?.replace(/[,.]/g, '')));
    }
  });

  test('prints on its first page the materials of the estimate', () => {
    const total = formatUsd(sumUsd(materials.map(({ costUsd }) => costUsd)));
    expect(pages[0]?.lines.some((line) => line.startsWith('Materials') && line.endsWith(total))).toBe(true);
    expect(pages[0]?.lines.some((line) => line.includes('Deliver to'))).toBe(true);
  });

  test('asks for as many boards of each length as the cut plans need', () => {
    const counted = new Map<string, number>();
    for (const plan of result.cutPlans)
      for (const board of plan.boards)
        if (!board.onHand) counted.set(board.itemId, (counted.get(board.itemId) ?? 0) + 1);
    const asked = purchases(job, result).suppliers.flatMap(({ lines }) =>
      lines.flatMap(({ line, item }) =>
        item?.category === 'lumber' ? [[item.id, Number(line.quantity)] as const] : [],
      ),
    );
    for (const [id, boards] of asked) expect([id, boards]).toEqual([id, counted.get(id)]);
    expect(asked.length).toBeGreaterThan(8);
  });

  test('follows where the job buys: at the supplier chosen, his delivery in it, and nobody else’s lumber', () => {
    const two = jobToBuy();
    two.settings.suppliers.push({ name: 'Hollin Yard', deliveryUsd: '40' });
    const copies = two.priceList
      .filter(({ category }) => category === 'lumber')
      .map((item) => ({
        ...item,
        id: `${item.id}-hollin`,
        supplier: 'Hollin Yard',
        prices: item.prices.map((price) => ({ ...price, priceUsd: String(Number(price.priceUsd) * 1.1) })),
      }));
    two.priceList.push(...copies);
    two.design.cutting.suppliers = ['Hollin Yard'];
    const { suppliers } = purchases(two, soundResult(two));
    const lumberAt = suppliers
      .filter(({ lines }) => lines.some(({ item }) => item?.category === 'lumber'))
      .map(({ name }) => name);
    expect(lumberAt).toEqual(['Hollin Yard']);
    const hollin = suppliers.find(({ name }) => name === 'Hollin Yard');
    expect(hollin?.lines.at(-1)?.line.costUsd).toBe('40.00');
  });

  test('puts what gets used up behind what is built in, the delivery last, and tells old prices', () => {
    const lumber = pageOf('Fernhollow Lumber')?.lines.filter((line) => line.startsWith('[ ]')) ?? [];
    expect(lumber.at(-1)).toContain('Delivery of lumber');
    const hardware = pageOf('Brindle Hardware')?.lines.filter((line) => line.startsWith('[ ]')) ?? [];
    expect(hardware.findIndex((line) => line.includes('Drip edge'))).toBe(0);
    expect(hardware.at(-1)).toContain('nails');
    expect(hardware.every((line) => line.includes('ask again'))).toBe(true);
  });
});
