import type { costCommands } from '../../core/contract/cost-commands.ts';
import type { Handlers } from '../handlers.ts';
import type { Context } from './context.ts';

/** What a job really took: time, receipts, orders, progress. */
export function costHandlers(_context: Context): Pick<Handlers, keyof typeof costCommands> {
  return {};
}
