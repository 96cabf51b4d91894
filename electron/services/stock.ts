import type { stockCommands } from '../../core/contract/stock-commands.ts';
import type { Handlers } from '../handlers.ts';
import type { Context } from './context.ts';

/** Boards and offcuts that the shop has. */
export function stockHandlers(_context: Context): Pick<Handlers, keyof typeof stockCommands> {
  return {};
}
