import type { Sheet } from '../../core/documents/sheet.ts';
import type { PaperLogo } from '../paper/page-head.ts';
import type { PaperSize } from '../paper/paper-size.ts';
import { getLogo } from '../store/logos.ts';
import { plainFileName } from './app.ts';
import type { Context } from './context.ts';

/**
 * Prints a sheet to PDF, with the logo that it names where the shop file has it. The printer is loaded when the first
 * sheet is asked for: it is the heaviest part of the host.
 */
export async function printSheet(
  { store }: Pick<Context, 'store'>,
  sheet: Sheet,
  paperSize: PaperSize,
): Promise<{ fileName: string; pdfBase64: string; pages: number }> {
  const { makePaper } = await import('../paper/make-paper.ts');
  const { pdf, pages } = await makePaper(sheet, paperSize, logoOf(store, sheet));
  return {
    fileName: `${plainFileName(sheet.fileName)}.pdf`,
    pdfBase64: Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength).toString('base64'),
    pages,
  };
}

function logoOf(store: Context['store'], { shop }: Sheet): PaperLogo | undefined {
  const { logo } = shop;
  if (logo === undefined) return undefined;
  const stored = store.read((db) => getLogo(db, logo));
  if (stored === undefined) return undefined;
  const { mediaType, widthPx, heightPx, bytes } = stored;
  return { mediaType, widthPx, heightPx, base64: Buffer.from(bytes).toString('base64') };
}
