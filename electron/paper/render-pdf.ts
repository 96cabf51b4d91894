import pdfmake from 'pdfmake';
import type { Sheet } from '../../core/documents/sheet.ts';
import { documentDefinition } from './document-definition.ts';
import { fontFiles, paperFont } from './fonts.ts';
import type { PaperLogo } from './page-head.ts';
import type { PaperSize } from './paper-size.ts';
import { unprintableCharacters } from './unprintable.ts';

/** A made paper. */
export type Paper = {
  readonly pdf: Uint8Array;
  readonly pages: number;
  /** Characters that the font cannot draw, each once; the paper says so. */
  readonly unprintable: readonly string[];
};

const files = fontFiles();
const allowed: ReadonlySet<string> = new Set([files.normal, files.bold]);

// A sheet is data: it may read the two font files and nothing else, neither from the disk nor from a network.
pdfmake.setUrlAccessPolicy(() => false);
pdfmake.setLocalAccessPolicy((path) => allowed.has(path));

/**
 * Renders a sheet as PDF, in this thread. The same sheet gives the same bytes.
 * @param sheet - what it says.
 * @param paperSize - letter or A4.
 * @param logo - the picture that stands at its head.
 */
export async function renderPdf(sheet: Sheet, paperSize: PaperSize, logo?: PaperLogo): Promise<Paper> {
  // pdfmake replaces fields of what it is given, so it gets a dictionary of its own each time.
  pdfmake.setFonts({ [paperFont]: { normal: files.normal, bold: files.bold } });
  let pages = 0;
  const definition = documentDefinition(sheet, paperSize, logo);
  const footer = definition.footer;
  const pdf = await pdfmake
    .createPdf({
      ...definition,
      footer: (page, count, size) => {
        pages = count;
        return typeof footer === 'function' ? footer(page, count, size) : footer;
      },
    })
    .getBuffer();
  return { pdf: new Uint8Array(pdf), pages, unprintable: unprintableCharacters(sheet) };
}
