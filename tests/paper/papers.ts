import type { Block, Sheet } from '../../core/documents/sheet.ts';
import { renderPdf } from '../../electron/paper/render-pdf.ts';
import { readPdf, type ReadPage } from './read-pdf.ts';

/** A sheet of an invented shop that says what the blocks say. */
export function sheetSaying(
  blocks: readonly Block[],
  job = 'Two eaves',
  shop: Partial<Sheet['shop']> = {},
): Sheet {
  return {
    kind: 'takeoff',
    title: 'Takeoff',
    fileName: 'x',
    shop: { name: 'Thornbury Carpentry', licence: 'T-1', address: '', contact: '', ...shop },
    job: { name: job, siteAddress: '', customer: '' },
    date: '2026-04-30',
    blocks,
  };
}

/** So many lines of text, to move what follows down the page. */
export function filling(lines: number): readonly Block[] {
  return Array.from({ length: lines }, () => ({ kind: 'paragraph', text: 'A line of text.' }));
}

/** Prints a sheet and reads it back. */
export async function printed(
  sheet: Sheet,
  paperSize: 'letter' | 'a4' = 'letter',
): Promise<readonly ReadPage[]> {
  return readPdf((await renderPdf(sheet, paperSize)).pdf);
}

/** Whether a page says a text within one line. */
export function has(page: ReadPage | undefined, text: string): boolean {
  return page?.lines.some((line) => line.includes(text)) === true;
}

/** The page that says a text within one line, from 0; -1 for none. */
export function pageSaying(pages: readonly ReadPage[], text: string): number {
  return pages.findIndex((page) => has(page, text));
}
