import { useState } from 'react';
import type { CommandInput, CommandName, CommandOutput } from '../../../core/contract/contract.ts';
import type { Problem } from '../../../core/problems/problem.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { tell } from '../../host/queries.ts';
import { HostLost } from '../../host/transport.ts';

/** A form's way to the host: what it said was wrong stands at the field that caused it, and nothing typed is lost. */
export type Submit<N extends CommandName> = {
  /** Answers undefined where it was not done; then `problem` says why. */
  readonly send: (input: CommandInput<N>) => Promise<CommandOutput<N> | undefined>;
  /** The sentence for a field; null where nothing is wrong with it. */
  readonly problemAt: (path: string) => string | null;
  /** The sentence of what belongs to no field; null where all is well. */
  readonly problem: (fields: readonly string[]) => string | null;
  /** Lets go of what was wrong, once the form is changed. */
  readonly clear: () => void;
};

/** Sends a command from a form and keeps what was wrong with it until it is sent again. */
export function useSubmit<N extends CommandName>(command: N): Submit<N> {
  const [problem, setProblem] = useState<Problem | string | null>(null);
  const sentence = (): string | null =>
    problem === null || typeof problem === 'string' ? problem : problemSentence(problem);
  const at = typeof problem === 'string' ? undefined : problem?.field;
  return {
    async send(input) {
      try {
        const reply = await tell(command, input);
        setProblem(reply.ok ? null : reply.problem);
        return reply.ok ? reply.value : undefined;
      } catch (error) {
        if (!(error instanceof HostLost)) throw error;
        setProblem('Eavewright does not answer. What you typed stays here; try again once it does.');
        return undefined;
      }
    },
    problemAt: (path) => (at === path ? sentence() : null),
    problem: (fields) => (at !== undefined && fields.includes(at) ? null : sentence()),
    clear: () => setProblem(null),
  };
}
