import type { CommandInput, CommandName, CommandOutput } from '../../core/contract/contract.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { contract } from '../../core/contract/contract.ts';
import { invoke } from '../bridge.ts';
import { HostLost } from './transport.ts';
import { notify } from '../kit/notices.tsx';
import { tell } from './queries.ts';

/**
 * Runs a command that a person gave by hand, and says in a notice why it was not done.
 * @returns the value; or undefined where it was not done, which has been said.
 */
export async function attempt<N extends CommandName>(
  command: N,
  input: CommandInput<N>,
): Promise<CommandOutput<N> | undefined> {
  try {
    const reply =
      contract[command].effect === 'write' ? await tell(command, input) : await invoke(command, input);
    if (reply.ok) return reply.value;
    notify(problemSentence(reply.problem), 'problem');
  } catch (error) {
    if (!(error instanceof HostLost)) throw error;
    notify('Eavewright does not answer. Try again once it does.', 'problem');
  }
  return undefined;
}
