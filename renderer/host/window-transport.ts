import type { HostEvent } from '../../core/contract/reply.ts';
import type { Transport } from './transport.ts';

type WindowBridge = {
  readonly invoke: (command: string, input: unknown) => Promise<unknown>;
  readonly subscribe: (callback: (event: HostEvent) => void) => () => void;
};

declare global {
  interface Window {
    /** Set by Electron's preload script alone. */
    readonly eavewright?: WindowBridge;
  }
}

/** The bridge that Electron's preload script puts on the window; undefined elsewhere. */
export function windowTransport(): Transport | undefined {
  return window.eavewright;
}
