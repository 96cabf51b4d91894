import type { priceHistoryCommands } from '../../core/contract/price-history-commands.ts';
import type { Handlers } from '../handlers.ts';
import type { Context } from './context.ts';

/** What prices did over time. */
export function priceHistoryHandlers(_context: Context): Pick<Handlers, keyof typeof priceHistoryCommands> {
  return {};
}
