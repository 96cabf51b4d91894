import type { Sheet } from '../../core/documents/sheet.ts';
import type { PaperSize } from '../paper/paper-size.ts';
import { plainFileName } from './app.ts';

/** Prints a sheet to PDF. The printer is loaded when the first sheet is asked for: it is the heaviest part of the host. */
export async function printSheet(
  sheet: Sheet,
  paperSize: PaperSize,
): Promise<{ fileName: string; pdfBase64: string; pages: number }> {
  const { makePaper } = await import('../paper/make-paper.ts');
  const { pdf, pages } = await makePaper(sheet, paperSize);
  return {
    fileName: `${plainFileName(sheet.fileName)}.pdf`,
    pdfBase64: Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength).toString('base64'),
    pages,
  };
}
