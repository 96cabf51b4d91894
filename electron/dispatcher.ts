import type { z } from 'zod';
import type { Reply } from '../core/contract/reply.ts';
import { entryProblems } from '../core/job/read-job-file.ts';
import type { Problem } from '../core/problems/problem.ts';
import { fail, ok, type Result } from '../core/result.ts';

export type Command = {
  readonly input: z.ZodType;
  readonly output: z.ZodType;
  readonly effect: 'read' | 'write';
};

/** Any handler, once its command's schema stands before it. */
type AnyHandler = (input: never) => Result<unknown, Problem> | Promise<Result<unknown, Problem>>;

/** Runs a command by name. Never rejects: what goes wrong inside is a problem without a trace of the machine. */
export type Dispatch = (command: unknown, input: unknown) => Promise<Reply<unknown>>;

export type DispatchOptions = {
  /** Says what was thrown, as a problem, where it is something a person can mend: a full disk, a damaged file. */
  readonly problemOf: (error: unknown) => Problem | undefined;
  /** Hears of bugs. */
  readonly reportBug: (command: string, error: unknown) => void;
  /** Hears of each write that took place. */
  readonly wrote: (command: string) => void;
};

/**
 * Makes the one door to the host: validates the input, runs, validates the output, answers.
 * @param contract - the commands.
 * @param handlers - one a command.
 */
export function createDispatcher(
  contract: Readonly<Record<string, Command>>,
  handlers: Readonly<Record<string, AnyHandler>>,
  options: DispatchOptions,
): Dispatch {
  const commands = new Map(Object.entries(contract));
  const byName = new Map(Object.entries(handlers));

  return async (name, input) => {
    const command = typeof name === 'string' ? commands.get(name) : undefined;
    const handler = typeof name === 'string' ? byName.get(name) : undefined;
    if (typeof name !== 'string' || command === undefined || handler === undefined) {
      return fail({ code: 'not-here', what: 'That' });
    }
    try {
      const read = command.input.safeParse(input);
      if (!read.success) {
        // The first is told; the person mends one entry at a time.
        return fail(entryProblems(read.error.issues, input)[0] ?? { code: 'internal' });
      }
      const result = await handler(read.data as never);
      if (!result.ok) return fail(result.problem);
      const value = command.output.parse(result.value);
      if (command.effect === 'write') options.wrote(name);
      return ok(value);
    } catch (error) {
      const problem = options.problemOf(error);
      if (problem !== undefined) return fail(problem);
      options.reportBug(name, error);
      return fail({ code: 'internal' });
    }
  };
}
