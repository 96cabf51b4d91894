import type { priceListCommands } from '../../core/contract/price-list-commands.ts';
import type { Handlers } from '../handlers.ts';
import type { Context } from './context.ts';

/** Editing the price list fast, and its ways in and out. */
export function priceListHandlers(_context: Context): Pick<Handlers, keyof typeof priceListCommands> {
  return {};
}
