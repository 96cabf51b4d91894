import type { z } from 'zod';
import type { CommandName, CommandOutput, contract } from '../core/contract/contract.ts';
import type { Problem } from '../core/problems/problem.ts';
import type { Result } from '../core/result.ts';

/** A command's input as the handler gets it: read by zod, lengths as inches, defaults filled in. */
export type ReadInput<N extends CommandName> = z.output<(typeof contract)[N]['input']>;

export type Handler<N extends CommandName> = (
  input: ReadInput<N>,
) => Result<CommandOutput<N>, Problem> | Promise<Result<CommandOutput<N>, Problem>>;

/** One handler a command; a command without one does not compile. */
export type Handlers = { readonly [N in CommandName]: Handler<N> };
