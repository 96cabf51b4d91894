import { readFileSync } from 'node:fs';
import type { CommandInput, CommandName, CommandOutput } from '../../core/contract/contract.ts';
import type { Reply } from '../../core/contract/reply.ts';
import { jobFileSchema, type JobFile } from '../../core/job/job-file.ts';

/** One way to the host, opened on an empty shop file. */
export type OpenTransport = {
  readonly invoke: (command: string, input: unknown) => Promise<unknown>;
  readonly subscribe: (callback: (event: unknown) => void) => () => void;
  readonly close: () => Promise<void>;
};

export type Expected = { readonly shell: 'electron' | 'loopback'; readonly savesFiles: boolean };

/** Asks the host in the ways that checks need, and keeps which commands were asked for. */
export type Asker = {
  readonly asked: ReadonlySet<CommandName>;
  readonly expected: Expected;
  readonly transport: () => OpenTransport;
  /** The reply as it came. */
  readonly ask: <N extends CommandName>(
    command: N,
    input: CommandInput<N>,
  ) => Promise<Reply<CommandOutput<N>>>;
  /** The value; a problem fails the check. */
  readonly value: <N extends CommandName>(command: N, input: CommandInput<N>) => Promise<CommandOutput<N>>;
  /** The problem; `no problem` where there was none. */
  readonly problem: (command: CommandName, input: unknown) => Promise<unknown>;
};

export const sampleText: string = readFileSync(
  new URL('../../fixtures/sample-job.json', import.meta.url),
  'utf8',
);
export const sample: JobFile = jobFileSchema.parse(JSON.parse(sampleText));

/** Makes an asker on a transport that is opened later. */
export function makeAsker(transport: () => OpenTransport, expected: Expected): Asker {
  const asked = new Set<CommandName>();
  async function ask<N extends CommandName>(
    command: N,
    input: CommandInput<N>,
  ): Promise<Reply<CommandOutput<N>>> {
    asked.add(command);
    return (await transport().invoke(command, input)) as Reply<CommandOutput<N>>;
  }
  return {
    asked,
    expected,
    transport,
    ask,
    async value(command, input) {
      const reply = await ask(command, input);
      if (!reply.ok) throw new Error(`${command}: ${JSON.stringify(reply.problem)}`);
      return reply.value;
    },
    async problem(command, input) {
      const reply = await ask(command, input as CommandInput<CommandName>);
      return reply.ok ? 'no problem' : reply.problem;
    },
  };
}
