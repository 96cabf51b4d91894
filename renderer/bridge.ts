import type { CommandInput, CommandName, CommandOutput } from '../core/contract/contract.ts';
import type { HostEvent, Reply } from '../core/contract/reply.ts';
import { noteHostAnswered, noteHostLost, watchForHost } from './host/connection.ts';
import { HostLost, type Transport } from './host/transport.ts';
import { httpTransport } from './host/http-transport.ts';
import { onNewKey } from './host/session-key.ts';
import { windowTransport } from './host/window-transport.ts';

const transport: Transport = windowTransport() ?? httpTransport();

onNewKey(() => {
  invoke('app.info', {}).catch(() => {
    // Said by the banner.
  });
});

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

const listeners = new Set<(event: HostEvent) => void>();
let stopListening: (() => void) | null = null;

/**
 * Hears what the host tells without being asked; returns the function that stops it. All who listen share one line to the
 * host: a browser opens only a few to one address, over all its windows.
 */
export function subscribe(callback: (event: HostEvent) => void): () => void {
  listeners.add(callback);
  stopListening ??= transport.subscribe(
    (event) => {
      for (const listener of listeners) listener(event);
    },
    () => {
      invoke('app.info', {}).catch(() => {
        // Said by the banner.
      });
    },
  );
  return () => {
    listeners.delete(callback);
    if (listeners.size > 0) return;
    stopListening?.();
    stopListening = null;
  };
}
