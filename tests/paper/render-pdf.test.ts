import { beforeAll, describe, expect, it } from 'vitest';
import { makeSheet } from '../../core/documents/make-sheet.ts';
import { type Block, sheetKinds } from '../../core/documents/sheet.ts';
import { makePaper } from '../../electron/paper/make-paper.ts';
import { margins } from '../../electron/paper/paper-size.ts';
import { renderPdf } from '../../electron/paper/render-pdf.ts';
import { formatUsd } from '../../core/units/money.ts';
import { computed, sampleJob, tables, tableUnder } from '../documents/sample.ts';
import { has, sheetSaying } from './papers.ts';
import { readPdf, type ReadPage } from './read-pdf.ts';

function tableOf(rows: number): readonly Block[] {
  return [
    { kind: 'heading', text: 'Boards of the north eave' },
    {
      kind: 'table',
      columns: [
        { title: 'Mark', align: 'left', share: 0 },
        { title: 'What', align: 'left', share: 1 },
        { title: 'Cost', align: 'right', share: 0 },
      ],
      rows: Array.from({ length: rows }, (_, index) => ({
        cells: [`N-${index + 1}`, 'a board', formatUsd(`${index}.25` as never)],
      })),
    },
  ];
}

const job = sampleJob();
const result = computed(job);

for (const paperSize of ['letter', 'a4'] as const) {
  describe(`the sample's papers on ${paperSize}`, () => {
    const papers = new Map<string, readonly ReadPage[]>();
    const counted = new Map<string, number>();

    beforeAll(async () => {
      for (const kind of sheetKinds) {
        const paper = await renderPdf(makeSheet(kind, job, result), paperSize);
        papers.set(kind, readPdf(paper.pdf));
        counted.set(kind, paper.pages);
      }
    });

    it('have the size of the paper (letter 8-1/2 by 11 in., ISO 216 A4 210 by 297 mm; 72 points an inch)', () => {
      const [width, height] =
        paperSize === 'letter' ? [8.5 * 72, 11 * 72] : [(210 / 25.4) * 72, (297 / 25.4) * 72];
      for (const [kind, pages] of papers) {
        // The layout sheet lies on its side.
        const [across, up] =
          kind === 'layout' || kind === 'purchase-list' ? [height, width] : [width, height];
        for (const page of pages) {
          expect(page.widthPt).toBeCloseTo(across, 1);
          expect(page.heightPt).toBeCloseTo(up, 1);
        }
      }
    });

    it('say page x of y, the shop and the job on every page', () => {
      for (const [kind, pages] of papers) {
        expect(counted.get(kind)).toBe(pages.length);
        for (const [index, page] of pages.entries()) {
          expect(has(page, `page ${index + 1} of ${pages.length}`)).toBe(true);
          expect(has(page, job.settings.shopName)).toBe(true);
          expect(has(page, job.job.name)).toBe(true);
        }
      }
    });

    it('print every amount of the sheet to the cent, each as often as the sheet says it', () => {
      // The other sheets, for the crew and for the building department, say no amount of money.
      for (const kind of ['takeoff', 'cut-list', 'quote'] as const) {
        const sheet = makeSheet(kind, job, result);
        const said = tables(sheet).flatMap(({ rows }) =>
          rows.flatMap(({ cells }) => cells.filter((cell) => cell.startsWith('$'))),
        );
        const printed = (papers.get(kind) ?? []).flatMap((page) => page.texts.map(({ text }) => text.trim()));
        expect(said.length).toBeGreaterThan(4);
        for (const amount of said) {
          const times = said.filter((other) => other === amount).length;
          expect(printed.filter((text) => text === amount).length).toBeGreaterThanOrEqual(times);
        }
      }
    });

    it('print the quote so that its phases add up by hand to its total', () => {
      const lines = (papers.get('quote') ?? []).flatMap(({ lines }) => lines);
      const phases = new Set(
        tableUnder(makeSheet('quote', job, result), 'Price').rows.map((row) => row.cells[0] ?? ''),
      );
      const amounts = lines.flatMap((line) => {
        const match = /^(.*?) .*?\$([\d,]+\.\d\d)$/.exec(line);
        const phase = [...phases].find((name) => line.startsWith(name));
        return match === null || phase === undefined
          ? []
          : [[phase, Math.round(Number(match[2]?.replace(',', '')) * 100)] as const];
      });
      const total = amounts.find(([phase]) => phase === 'Total')?.[1];
      const sum = amounts
        .filter(([phase]) => phase !== 'Total')
        .reduce((cents, [, amount]) => cents + amount, 0);
      expect(sum).toBe(total);
      expect(total).toBe(Math.round(Number(result.estimate.totalUsd) * 100));
    });

    it('keep all text inside the page', () => {
      for (const page of [...papers.values()].flat()) {
        for (const { x, y, text } of page.texts) {
          expect([text, x >= margins.left - 8, x <= page.widthPt - margins.right + 1]).toEqual([
            text,
            true,
            true,
          ]);
          expect([text, y > 10, y < page.heightPt - 20]).toEqual([text, true, true]);
        }
      }
    });

    it('state the scale under each drawing', () => {
      for (const kind of sheetKinds) {
        const drawings = makeSheet(kind, job, result).blocks.filter((block) => block.kind === 'drawing');
        const lines = (papers.get(kind) ?? []).flatMap(({ lines }) => lines);
        const scaled = lines.filter((line) => /Scale \S+" = 1' 0"$/.test(line));
        expect(scaled).toHaveLength(drawings.length);
      }
    });
  });
}

describe('a table on paper', () => {
  it('of 3 lines stays on one page', async () => {
    const pages = readPdf((await renderPdf(sheetSaying(tableOf(3)), 'letter')).pdf);
    expect(pages).toHaveLength(1);
    expect(pages[0]?.lines.filter((line) => line.startsWith('N-'))).toHaveLength(3);
  });

  for (const paperSize of ['letter', 'a4'] as const) {
    it(`of 300 lines on ${paperSize} repeats its heading and head on every page and loses no line`, async () => {
      const pages = readPdf((await renderPdf(sheetSaying(tableOf(300)), paperSize)).pdf);
      expect(pages.length).toBeGreaterThan(5);
      for (const page of pages) {
        expect(page.lines.filter((line) => line === 'Boards of the north eave')).toHaveLength(1);
        expect(page.lines.filter((line) => line === 'Mark What Cost')).toHaveLength(1);
      }
      const rows = pages.flatMap(({ lines }) => lines.filter((line) => line.startsWith('N-')));
      expect(rows).toEqual(
        Array.from(
          { length: 300 },
          (_, index) => `N-${index + 1} a board ${formatUsd(`${index}.25` as never)}`,
        ),
      );
    });
  }

  it('never leaves its heading, or the heading of a group, alone at the foot of a page', async () => {
    for (let before = 20; before < 40; before += 1) {
      const filling: Block[] = Array.from({ length: before }, () => ({
        kind: 'paragraph',
        text: 'A line of text.',
      }));
      const table: Block = {
        kind: 'table',
        columns: [{ title: 'Cut', align: 'left', share: 1 }],
        rows: [
          { cells: ['Board 1'], style: 'group' },
          { cells: ['first piece'] },
          { cells: ['Board 2'], style: 'group' },
          { cells: ['second piece'] },
        ],
      };
      const blocks: readonly Block[] = [...filling, { kind: 'heading', text: 'Board by board' }, table];
      const pages = readPdf((await renderPdf(sheetSaying(blocks), 'letter')).pdf);
      const pageOf = (text: string) => pages.findIndex((page) => page.lines.includes(text));
      expect(pageOf('Board by board')).toBe(pageOf('first piece'));
      expect(pageOf('Board 1')).toBe(pageOf('first piece'));
      expect(pageOf('Board 2')).toBe(pageOf('second piece'));
    }
  });

  it('keeps signatures on the page of the caution before them', async () => {
    for (let before = 24; before < 36; before += 1) {
      const blocks: readonly Block[] = [
        ...Array.from({ length: before }, (): Block => ({ kind: 'paragraph', text: 'A line of text.' })),
        { kind: 'caution', text: 'An engineer decides.' },
        { kind: 'signatures', parties: ['Client A'] },
      ];
      const pages = readPdf((await renderPdf(sheetSaying(blocks), 'letter')).pdf);
      const pageOf = (text: string) => pages.findIndex((page) => has(page, text));
      expect(pageOf('An engineer decides.')).toBe(pageOf('Client A'));
    }
  });
});

describe('a paper', () => {
  it('prints fractions and quotation marks as they are, one-character fractions too', async () => {
    const text = `5' 6-1/2" and ½ ¼ ¾ ⅛ ⅜ ⅝ ⅞`;
    const [page] = readPdf((await renderPdf(sheetSaying([{ kind: 'paragraph', text }]), 'a4')).pdf);
    expect(has(page, text)).toBe(true);
  });

  it('prints hostile text as letters and fetches nothing for it', async () => {
    const text = '<image href="http://127.0.0.1:9/x"/> file:///etc/hosts {{x}}';
    const sheet = sheetSaying(
      [
        { kind: 'paragraph', text },
        {
          kind: 'drawing',
          heightShare: 0.5,
          drawing: {
            title: text,
            description: text,
            shapes: [{ kind: 'text', at: [0, 0], text, anchor: 'start', sizePt: 8 }],
            minX: 0,
            minY: 0,
            maxX: 12,
            maxY: 12,
          },
        },
      ],
      text,
    );
    const [page] = readPdf((await renderPdf(sheet, 'letter')).pdf);
    const joined = page?.lines.join('\n') ?? '';
    expect(joined.split('<image href="http://127.0.0.1:9/x"/>').length - 1).toBeGreaterThanOrEqual(3);
  });

  it('embeds its own font and no other', async () => {
    const { pdf } = await renderPdf(makeSheet('quote', job, result), 'letter');
    const names =
      Buffer.from(pdf)
        .toString('latin1')
        .match(/\/BaseFont \/\S+/g) ?? [];
    expect(names.length).toBeGreaterThan(0);
    for (const name of names) expect(name).toMatch(/\+SourceSans3-/);
  });

  it('has the same bytes for the same sheet, and in the worker too', async () => {
    const sheet = makeSheet('quote', job, result);
    const [here, again, worker] = [
      await renderPdf(sheet, 'a4'),
      await renderPdf(sheet, 'a4'),
      await makePaper(sheet, 'a4'),
    ];
    expect(Buffer.compare(here.pdf, again.pdf)).toBe(0);
    expect(Buffer.compare(here.pdf, worker.pdf)).toBe(0);
    expect(worker.pages).toBe(here.pages);
  });

  it('leaves the host free while it is made', async () => {
    const paper = makePaper(sheetSaying(tableOf(1500)), 'letter');
    let turns = 0;
    const ticking = setInterval(() => {
      turns += 1;
    }, 5);
    const { pages } = await paper;
    clearInterval(ticking);
    expect(pages).toBeGreaterThan(30);
    expect(turns).toBeGreaterThan(5);
  });

  it('answers each of several askers with his own sheet', async () => {
    const sheets = [1, 40, 80].map((rows) => sheetSaying(tableOf(rows)));
    const papers = await Promise.all(sheets.map(async (sheet) => makePaper(sheet, 'letter')));
    const counts = papers.map(
      ({ pdf }) => readPdf(pdf).flatMap(({ lines }) => lines.filter((line) => line.startsWith('N-'))).length,
    );
    expect(counts).toEqual([1, 40, 80]);
  });
});
