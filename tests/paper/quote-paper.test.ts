import { expect, test } from 'vitest';
import { makeSheet } from '../../core/documents/make-sheet.ts';
import { priceWays, inputOfWay } from '../../core/offer/offered-ways.ts';
import { paymentPlan } from '../../core/offer/payments.ts';
import { formatUsd, sumUsd, usd } from '../../core/units/money.ts';
import { renderPdf } from '../../electron/paper/render-pdf.ts';
import { sampleJob } from '../documents/sample.ts';
import { pageSaying, printed, sheetSaying } from './papers.ts';
import { readPdf, type ReadPage } from './read-pdf.ts';

function quoteOf(printLevel: 'sum' | 'phase' | 'line') {
  const job = sampleJob();
  job.design.offer.printLevel = printLevel;
  const ways = priceWays(job);
  const [offered] = ways.ok ? ways.value : [];
  if (!ways.ok || offered === undefined) throw new Error('the sample can be priced');
  return {
    job,
    ways: ways.value,
    estimate: offered.result.estimate,
    sheet: makeSheet('quote', inputOfWay(job, offered), offered.result, { ways: ways.value }),
  };
}

test.each(['letter', 'a4'] as const)(
  'every figure of the quote on %s is the estimate’s own',
  async (paperSize) => {
    const { job, ways, estimate, sheet } = quoteOf('phase');
    const text = (await printed(sheet, paperSize)).flatMap(({ lines }) => lines).join('\n');
    const byPhase = Map.groupBy(estimate.lines, ({ phase }) => phase);
    for (const lines of byPhase.values())
      expect(text).toContain(formatUsd(sumUsd(lines.map(({ priceUsd }) => priceUsd))));
    for (const { name, result } of ways)
      expect(text).toMatch(new RegExp(`${name}.*\\${formatUsd(result.estimate.totalUsd)}`));
    for (const { when, amountUsd } of paymentPlan(job.design.offer.payments, estimate.totalUsd).payments)
      expect(text).toContain(`${when} ${formatUsd(amountUsd)}`);
    for (const { what, unit, priceUsd } of job.design.offer.unitPrices)
      expect(text).toContain(`${what} ${unit} ${formatUsd(usd(priceUsd))}`);
  },
);

test.each(['sum', 'phase', 'line'] as const)(
  'broken out as %s it shows no cost, hours or markup',
  async (level) => {
    const { job, estimate, sheet } = quoteOf(level);
    const pages = await printed(sheet);
    const text = pages.flatMap(({ lines }) => lines).join('\n');
    const prices = new Set([...text.matchAll(/\$[\d,]+\.\d\d/g)].map(([amount]) => amount));
    const shares = new Set(estimate.lines.map(({ priceUsd }) => formatUsd(priceUsd)));
    const costs = estimate.lines.map(({ costUsd }) => formatUsd(costUsd)).filter((cost) => !shares.has(cost));
    for (const cost of [...costs, formatUsd(estimate.directCostUsd)]) expect([...prices]).not.toContain(cost);
    for (const { costUsd } of job.design.offer.unitPrices)
      expect([...prices]).not.toContain(formatUsd(usd(costUsd)));
    expect(text).not.toMatch(/overhead|contingency|mark-?up|margin|profit|wage|burden|\bhours?\b|\d h\b/i);
    expect(pageSaying(pages, 'Total')).toBeGreaterThanOrEqual(0);
  },
);

const greyPoint =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==';

test('a logo stands on every page, once in the file, and moves no figure', async () => {
  const { sheet } = quoteOf('line');
  const logo = { mediaType: 'image/png', widthPx: 400, heightPx: 200, base64: greyPoint } as const;
  const bare = await renderPdf(sheet, 'letter');
  const headed = await renderPdf(sheet, 'letter', logo);
  const raw = Buffer.from(headed.pdf).toString('latin1');
  expect(raw.match(/\/Subtype \/Image/g)).toHaveLength(1);
  const [page] = readPdf(headed.pdf);
  const name = page?.texts.find(({ text }) => text.startsWith('Thornbury'));
  const [barePage] = readPdf(bare.pdf);
  const bareName = barePage?.texts.find(({ text }) => text.startsWith('Thornbury'));
  // 400 by 200 fits 44 points of height as 88 by 44, and 10 stand between.
  expect((name?.x ?? 0) - (bareName?.x ?? 0)).toBeCloseTo(98, 1);
  expect(amountsIn(headed.pdf)).toEqual(amountsIn(bare.pdf));
  expect(titleEnd(page)).toBeCloseTo(titleEnd(barePage), 0);
});

test('three hundred lines of a price keep head and page numbers on every page, and no row is lost', async () => {
  const rows = Array.from({ length: 300 }, (_, index) => ({ cells: [`Line ${index + 1}`, '$1.00'] }));
  const pages = await printed(
    sheetSaying([
      { kind: 'heading', text: 'Price' },
      {
        kind: 'table',
        columns: [
          { title: 'Work', align: 'left', share: 4 },
          { title: 'Price', align: 'right', share: 0 },
        ],
        rows: [...rows, { cells: ['Total', '$300.00'], style: 'total' }],
      },
    ]),
  );
  const all = pages.flatMap(({ lines }) => lines);
  expect(all.filter((line) => /^Line \d+ \$1\.00$/.test(line))).toHaveLength(300);
  for (const [index, { lines }] of pages.entries()) {
    expect(lines.some((line) => line.includes(`page ${index + 1} of ${pages.length}`))).toBe(true);
    expect(lines).toContain('Work Price');
  }
  expect(pageSaying(pages, 'Total $300.00')).toBe(pageSaying(pages, 'Line 300'));
});

/** Every amount that a paper shows, in order of size of its text. */
function amountsIn(pdf: Uint8Array): readonly string[] {
  return readPdf(pdf)
    .flatMap(({ texts }) => texts.map(({ text }) => text))
    .filter((text) => text.includes('$'))
    .sort();
}

/** Where the sheet's title ends at the right. [pt] */
function titleEnd(page: ReadPage | undefined): number {
  const titles = page?.texts.filter(({ text }) => text === 'Quote') ?? [];
  return Math.max(...titles.map(({ x, widthPt }) => x + widthPt));
}
