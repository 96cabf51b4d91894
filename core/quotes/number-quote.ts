import { fileName } from '../documents/sheet-head.ts';
import type { Sheet } from '../documents/sheet.ts';

/**
 * What a quote is called: `Quote 42`, and `Quote 42, revision 2` from the second on.
 * @param number - of the quote. [-]
 * @param revision - from 1. [-]
 */
export function quoteName(number: number, revision: number): string {
  return revision === 1 ? `Quote ${number}` : `Quote ${number}, revision ${revision}`;
}

/**
 * Puts a quote's number on its sheet: in the title, the facts at its head, and the file name, so that files sort by number.
 * @param sheet - the quote's sheet.
 * @param number - of the quote. [-]
 * @param revision - from 1. [-]
 */
export function numberQuote(sheet: Sheet, number: number, revision: number): Sheet {
  const name = quoteName(number, revision);
  const at = sheet.blocks.findIndex(({ kind }) => kind === 'facts');
  const blocks = sheet.blocks.map((block, index) =>
    index === at && block.kind === 'facts'
      ? { ...block, pairs: [['Number', `${number}, revision ${revision}`] as const, ...block.pairs] }
      : block,
  );
  const sorting = `quote ${String(number).padStart(4, '0')}-${revision}`;
  return { ...sheet, title: name, fileName: fileName(`${sorting} ${sheet.job.name}`), blocks };
}
