import { Worker } from 'node:worker_threads';
import type { Sheet } from '../../core/documents/sheet.ts';
import { workerFile } from '../workers/worker-file.ts';
import type { PaperLogo } from './page-head.ts';
import type { PaperSize } from './paper-size.ts';
import type { PaperReply, PaperRequest } from './paper-worker.ts';
import type { Paper } from './render-pdf.ts';

type Waiting = { readonly resolve: (paper: Paper) => void; readonly reject: (error: Error) => void };

let worker: Worker | undefined;
let nextId = 1;
const waiting = new Map<number, Waiting>();

/**
 * Makes a sheet's PDF in a worker thread, so that the host goes on answering meanwhile.
 * @param sheet - what it says.
 * @param paperSize - letter or A4.
 * @param logo - the picture that stands at its head, where it names one.
 * @returns the PDF and how many pages it has.
 */
export async function makePaper(sheet: Sheet, paperSize: PaperSize, logo?: PaperLogo): Promise<Paper> {
  const id = nextId;
  nextId += 1;
  return new Promise<Paper>((resolve, reject) => {
    waiting.set(id, { resolve, reject });
    const running = theWorker();
    // While a sheet is being made the process stays alive for it; an idle worker does not hold it.
    running.ref();
    running.postMessage({ id, sheet, paperSize, logo } satisfies PaperRequest, []);
  });
}

function theWorker(): Worker {
  if (worker !== undefined) return worker;
  const started = new Worker(workerFile('paper-worker', import.meta.url));
  started.on('message', (reply: PaperReply) => {
    const waiter = waiting.get(reply.id);
    waiting.delete(reply.id);
    if (waiting.size === 0) started.unref();
    if ('error' in reply) waiter?.reject(new Error(reply.error));
    else waiter?.resolve({ pdf: reply.pdf, pages: reply.pages, unprintable: reply.unprintable });
  });
  const fail = (error: Error) => {
    if (worker === started) worker = undefined;
    for (const waiter of waiting.values()) waiter.reject(error);
    waiting.clear();
  };
  started.on('error', fail);
  started.on('exit', (code) => fail(new Error(`the paper worker ended with code ${code}`)));
  worker = started;
  return started;
}
