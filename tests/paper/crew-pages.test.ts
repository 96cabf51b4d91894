import { beforeAll, describe, expect, it } from 'vitest';
import { makeSheet } from '../../core/documents/make-sheet.ts';
import type { Sheet, SheetKind } from '../../core/documents/sheet.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import { renderPdf } from '../../electron/paper/render-pdf.ts';
import { computed, sampleJob, tables } from '../documents/sample.ts';
import { type ReadPage, readPdf } from './read-pdf.ts';

const crewKinds = ['layout', 'lists', 'string-line', 'templates', 'set-up-card'] as const;

/** The sample with one eave of so many rafters, 22 in. apart. */
function jobOf(rafters: number): JobFile {
  const job = sampleJob();
  const [survey] = job.survey.eaves;
  const [design] = job.design.eaves;
  if (survey === undefined || design === undefined) throw new Error('the sample has eaves');
  job.survey.rakes = [];
  job.design.rakes = [];
  job.survey.eaves = [
    {
      ...survey,
      lengthIn: 22 * (rafters + 1),
      rafters: Array.from({ length: rafters }, (_, index) => ({
        ...(survey.rafters[index % survey.rafters.length] ?? (survey.rafters[0] as never)),
        id: `x${index}`,
        readingIn: 22 * (index + 1),
        joist: 'none' as const,
      })),
    },
  ];
  job.design.eaves = [
    { ...design, ends: { left: { kind: 'free', meets: '' }, right: { kind: 'free', meets: '' } } },
  ];
  return job;
}

async function pagesOf(sheet: Sheet, paperSize: 'letter' | 'a4'): Promise<readonly ReadPage[]> {
  return readPdf((await renderPdf(sheet, paperSize)).pdf);
}

/** All that stands in the columns that fit their content, row by row: printed on one line each. */
function fixedCells(sheet: Sheet): readonly (readonly string[])[] {
  return tables(sheet).flatMap(({ columns, rows }) =>
    rows
      .filter(({ style }) => style !== 'group')
      .map(({ cells }) => cells.filter((cell, index) => columns[index]?.share === 0 && cell !== '')),
  );
}

function holdsInOrder(line: string, cells: readonly string[]): boolean {
  let at = 0;
  for (const cell of cells) {
    const found = line.indexOf(cell.replace(/\s+/g, ' '), at);
    if (found < 0) return false;
    at = found + cell.length;
  }
  return true;
}

for (const paperSize of ['letter', 'a4'] as const) {
  describe(`the crew sheets of the sample on ${paperSize}`, () => {
    const job = sampleJob();
    const result = computed(job);
    const sheets = new Map<SheetKind, Sheet>();
    const printed = new Map<SheetKind, readonly ReadPage[]>();

    beforeAll(async () => {
      for (const kind of crewKinds) {
        const sheet = makeSheet(kind, job, result);
        sheets.set(kind, sheet);
        printed.set(kind, await pagesOf(sheet, paperSize));
      }
    });

    it('print every row of every table with all its figures on one line', () => {
      for (const [kind, sheet] of sheets) {
        const lines = (printed.get(kind) ?? []).flatMap((page) => page.lines);
        for (const cells of fixedCells(sheet))
          expect([kind, cells, lines.some((line) => holdsInOrder(line, cells))]).toEqual([kind, cells, true]);
      }
    });

    it('set every table at 10 points or more', () => {
      for (const [kind, sheet] of sheets) {
        const marks = new Set(
          fixedCells(sheet).flatMap((cells) => cells.filter((cell) => /^[AB]-[A-Z]\d+$/.test(cell))),
        );
        const texts = (printed.get(kind) ?? []).flatMap((page) => page.texts);
        const small = texts.filter(({ text, sizePt }) => marks.has(text.trim()) && sizePt < 8);
        expect(small).toEqual([]);
      }
    });

    it('take few pages: no more than 14 for a layout of two eaves, 8 of lists, 4 for the string', () => {
      expect(printed.get('layout')?.length).toBeLessThanOrEqual(14);
      expect(printed.get('lists')?.length).toBeLessThanOrEqual(8);
      expect(printed.get('string-line')?.length).toBeLessThanOrEqual(4);
      expect(printed.get('set-up-card')?.length).toBe(1);
    });

    it('leave no page without words of its own', () => {
      for (const [kind, pages] of printed)
        for (const [index, { texts }] of pages.entries())
          expect([kind, index, texts.length > 12]).toEqual([kind, index, true]);
    });
  });
}

describe('a job of 3 rafters', () => {
  it('keeps its tails, its blocks and its string on one page each', async () => {
    const job = jobOf(3);
    const result = computed(job);
    for (const kind of ['layout', 'lists', 'string-line'] as const) {
      const pages = await pagesOf(makeSheet(kind, job, result), 'letter');
      const marks = result.eaves.flatMap(({ extenders }) => extenders.map(({ mark }) => mark));
      expect(marks.length).toBeGreaterThanOrEqual(3);
      const holding = pages.filter(({ lines }) =>
        marks.every((mark) => lines.some((line) => line.includes(mark))),
      );
      expect([kind, holding.length > 0]).toEqual([kind, true]);
    }
  });
});

describe('a job of 300 rafters', () => {
  const job = jobOf(300);
  const result = computed(job);

  for (const [kind, head] of [
    ['layout', 'Station Rafter Tail Side and method'],
    ['lists', 'Mark Station Length Wall line'],
    ['string-line', 'Station Tail From the wall'],
  ] as const) {
    it(`loses no tail on the ${kind} sheet, and repeats the table's head on every page of it`, async () => {
      const pages = await pagesOf(makeSheet(kind, job, result), 'letter');
      const headed = pages.filter(({ lines }) => lines.some((line) => line.startsWith(head)));
      expect(headed.length).toBeGreaterThan(5);
      // The ends of the string stand in a table of their own.
      const rows = headed.map((page) => page.lines.filter((line) => !/^(left|right) /.test(line)));
      const order = (result.eaves[0]?.extenders ?? []).map(({ mark }) => {
        const said = new RegExp(`(^| )${mark}( |$)`);
        expect([mark, rows.flat().filter((line) => said.test(line)).length]).toEqual([mark, 1]);
        return rows.findIndex((lines) => lines.some((line) => said.test(line)));
      });
      expect(order).toEqual(order.toSorted((a, b) => a - b));
    });
  }
});
