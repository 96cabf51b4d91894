import { parentPort } from 'node:worker_threads';
import type { Sheet } from '../../core/documents/sheet.ts';
import type { PaperLogo } from './page-head.ts';
import type { PaperSize } from './paper-size.ts';
import { type Paper, renderPdf } from './render-pdf.ts';

/** What the host asks of the worker. */
export type PaperRequest = {
  readonly id: number;
  readonly sheet: Sheet;
  readonly paperSize: PaperSize;
  readonly logo: PaperLogo | undefined;
};

/** What the worker answers: the paper, or what went wrong (a bug: sheets of ours can all be made). */
export type PaperReply = ({ readonly id: number } & Paper) | { readonly id: number; readonly error: string };

const port = parentPort;
if (port === null) throw new Error('paper-worker runs in a worker thread only');

// One sheet at a time: pdfmake keeps its fonts in one place.
let last: Promise<void> = Promise.resolve();
port.on('message', (request: PaperRequest) => {
  last = last.then(() => answer(request));
});

async function answer({ id, sheet, paperSize, logo }: PaperRequest): Promise<void> {
  try {
    const paper = await renderPdf(sheet, paperSize, logo);
    port?.postMessage({ id, ...paper } satisfies PaperReply);
  } catch (error) {
    port?.postMessage({
      id,
      error: error instanceof Error ? (error.stack ?? error.message) : String(error),
    } satisfies PaperReply);
  }
}
