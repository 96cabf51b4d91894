import { Worker } from 'node:worker_threads';
import type { CuttingReply, CuttingRequest } from './cutting-messages.ts';
import { workerFile } from './worker-file.ts';

/** The way to one running worker. */
export type CuttingPort = {
  readonly post: (request: CuttingRequest) => void;
  /** While held, the process stays alive for the worker; an idle one does not hold it. */
  readonly hold: (held: boolean) => void;
  readonly terminate: () => Promise<unknown>;
};

/** Whom a port tells. */
export type CuttingEar = {
  readonly heard: (reply: CuttingReply) => void;
  /** The worker is gone, by itself or because it was ended. */
  readonly gone: (error: Error) => void;
};

/** Starts a cutting worker. */
export function startCuttingPort(ear: CuttingEar): CuttingPort {
  const worker = new Worker(workerFile('cutting-worker', import.meta.url));
  worker.on('message', ear.heard);
  worker.on('error', ear.gone);
  worker.on('exit', (code) => ear.gone(new Error(`the cutting worker ended with code ${code}`)));
  return {
    post: (request) => worker.postMessage(request, []),
    hold: (held) => (held ? worker.ref() : worker.unref()),
    terminate: () => worker.terminate(),
  };
}
