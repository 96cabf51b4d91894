import { describe, expect, it } from 'vitest';
import type { Block, Row } from '../../core/documents/sheet.ts';
import { has, filling, pageSaying, printed, sheetSaying } from './papers.ts';
import type { ReadPage } from './read-pdf.ts';

/** Lines that move a table or paragraph over the foot of the first page one by one. */
const fillings = Array.from({ length: 9 }, (_, index) => 28 + index);

function tableOf(rows: readonly Row[]): Block {
  return {
    kind: 'table',
    columns: [
      { title: 'Part', align: 'left', share: 1 },
      { title: 'Price', align: 'right', share: 0 },
    ],
    rows,
  };
}

const body = (count: number): readonly Row[] =>
  Array.from({ length: count }, (_, index) => ({ cells: [`Row ${index + 1}`, '$1.00'] }));

/** How many rows of the table each page shows, pages without any left out. */
function rowsByPage(pages: readonly ReadPage[]): readonly number[] {
  return pages
    .map(({ lines }) => lines.filter((line) => /^(Row \d|Sum|Tax|Total)/.test(line)).length)
    .filter((count) => count > 0);
}

describe('a table over the foot of a page', () => {
  it.each([3, 4, 9])('of %i rows leaves none of them alone, above or below', async (count) => {
    const broken: (readonly number[])[] = [];
    for (const lines of fillings) {
      const blocks = [...filling(lines), { kind: 'heading' as const, text: 'Parts' }, tableOf(body(count))];
      const byPage = rowsByPage(await printed(sheetSaying(blocks)));
      expect(byPage.reduce((sum, rows) => sum + rows, 0)).toBe(count);
      expect(Math.min(...byPage)).toBeGreaterThan(1);
      if (byPage.length > 1) broken.push(byPage);
    }
    // Tables of four and more do break; shorter ones move whole.
    expect(broken.length > 0).toBe(count >= 4);
  });

  it('keeps tax and total, and any sum, on the page of the last row before them', async () => {
    const rows: readonly Row[] = [
      ...body(6),
      { cells: ['Sum before tax', '$6.00'], style: 'subtotal' },
      { cells: ['Tax', '$0.36'] },
      { cells: ['Total', '$6.36'], style: 'total' },
    ];
    let over = 0;
    for (const lines of fillings) {
      const pages = await printed(sheetSaying([...filling(lines), tableOf(rows)]));
      const at = pageSaying(pages, 'Row 6');
      for (const text of ['Sum before tax', 'Tax', 'Total']) expect(pageSaying(pages, text)).toBe(at);
      if (at === 1 && has(pages[0], 'Row 5')) over += 1;
    }
    expect(over).toBeGreaterThan(0);
  });

  it('keeps the columns of rows that stay together under those of the others', async () => {
    const rows: readonly Row[] = [...body(4), { cells: ['Total', '$4.00'], style: 'total' }];
    const [page] = await printed(sheetSaying([tableOf(rows)]));
    const of = (pattern: RegExp) => page?.texts.filter(({ text }) => pattern.test(text)) ?? [];
    expect(new Set(of(/^(Row|Total)/).map(({ x }) => x.toFixed(1))).size).toBe(1);
    const ends = of(/^\$/).map(({ x, widthPt }) => x + widthPt);
    expect(ends).toHaveLength(5);
    expect(Math.max(...ends) - Math.min(...ends)).toBeLessThan(1);
  });

  it('with a row higher than a page breaks that row rather than losing some of it', async () => {
    const words = Array.from({ length: 3000 }, (_, index) => `word${index}`);
    const rows: readonly Row[] = [
      { cells: ['Row 1', '$1.00'] },
      { cells: [words.join(' '), '$2.00'] },
      { cells: ['Total', '$3.00'], style: 'total' },
    ];
    const text = (await printed(sheetSaying([tableOf(rows)]))).flatMap(({ lines }) => lines).join(' ');
    for (const word of [...words, 'Row 1', 'Total']) expect(text).toContain(word);
  });
});

describe('a paragraph over the foot of a page', () => {
  const text = Array.from({ length: 40 }, (_, index) => `sentence ${index + 1}`).join(', ');

  it('goes whole to the next page', async () => {
    const pagesOf = new Set<number>();
    for (const lines of fillings) {
      const pages = await printed(sheetSaying([...filling(lines), { kind: 'paragraph', text }]));
      expect(pageSaying(pages, 'sentence 1,')).toBe(pageSaying(pages, 'sentence 40'));
      pagesOf.add(pageSaying(pages, 'sentence 1,'));
    }
    expect(pagesOf).toEqual(new Set([0, 1]));
  });

  it('of more than a page is broken, under its heading, and loses no word', async () => {
    const words = Array.from({ length: 1500 }, (_, index) => `word${index}`);
    const blocks: readonly Block[] = [
      { kind: 'heading', text: 'What we build' },
      { kind: 'paragraph', text: words.join(' ') },
    ];
    const pages = await printed(sheetSaying(blocks));
    const all = pages.flatMap(({ lines }) => lines).join(' ');
    expect(pages.length).toBeGreaterThan(1);
    for (const word of words) expect(all).toContain(word);
  });

  it('of a hundred short lines, as a note may be, loses none of them either', async () => {
    const lines = Array.from({ length: 100 }, (_, index) => `line${index};`);
    const pages = await printed(sheetSaying([{ kind: 'paragraph', text: lines.join('\n') }]));
    const all = pages.flatMap((page) => page.lines).join(' ');
    for (const line of lines) expect(all).toContain(line);
  });
});

describe('a long list over the foot of a page', () => {
  it('keeps its heading with its first item and loses none', async () => {
    const items = Array.from({ length: 30 }, (_, index) => `Item ${index + 1}.`);
    for (const lines of fillings) {
      const blocks: readonly Block[] = [
        ...filling(lines),
        { kind: 'heading', text: 'Look at these' },
        { kind: 'list', items },
      ];
      const pages = await printed(sheetSaying(blocks));
      expect(pageSaying(pages, 'Look at these')).toBe(pageSaying(pages, 'Item 1.'));
      for (const item of items) expect(pageSaying(pages, item)).toBeGreaterThanOrEqual(0);
    }
  });
});
