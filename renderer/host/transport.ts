import type { HostEvent } from '../../core/contract/reply.ts';

/** The way to the host: the window bridge under Electron, HTTP on loopback. */
export type Transport = {
  invoke(command: string, input: unknown): Promise<unknown>;
  /** `gone` is called where the way to the host broke. */
  subscribe(callback: (event: HostEvent) => void, gone: () => void): () => void;
};

/** Thrown by `invoke` where no answer came: nothing is known of what the host did. */
export class HostLost extends Error {
  readonly reason: 'no-answer' | 'no-key';
  constructor(reason: 'no-answer' | 'no-key') {
    super(`the host was not reached: ${reason}`);
    this.reason = reason;
  }
}
