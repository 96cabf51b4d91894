import type { CommandInput, CommandName, CommandOutput } from '../core/contract/contract.ts';
import type { HostEvent, Reply } from '../core/contract/reply.ts';
import { noteHostAnswered, noteHostLost, watchForHost } from './host/connection.ts';
import { httpTransport } from './host/http-transport.ts';
import { windowTransport } from './host/window-transport.ts';

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

const transport: Transport = windowTransport() ?? httpTransport();

/**
 * Asks the host to run a command.
 * @param command - name of the command in core/contract.
 * @param input - its input, JSON values alone.
 * @returns the host's reply: the value, or the problem that a person can mend. Rejects with HostLost where no answer came.
 */
export async function invoke<N extends CommandName>(
  command: N,
  input: CommandInput<N>,
): Promise<Reply<CommandOutput<N>>> {
  try {
    const reply = (await transport.invoke(command, input)) as Reply<CommandOutput<N>>;
    noteHostAnswered();
    return reply;
  } catch (error) {
    if (error instanceof HostLost) {
      noteHostLost(error.reason);
      // A wrong key stays wrong, and the host counts wrong keys.
      if (error.reason === 'no-answer') watchForHost(() => transport.invoke('app.info', {}));
    }
    throw error;
  }
}

/** Hears what the host tells without being asked; returns the function that stops it. */
export function subscribe(callback: (event: HostEvent) => void): () => void {
  return transport.subscribe(callback, () => {
    invoke('app.info', {}).catch(() => {
      // Said by the banner.
    });
  });
}
