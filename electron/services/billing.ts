import type { billingCommands } from '../../core/contract/billing-commands.ts';
import type { Handlers } from '../handlers.ts';
import type { Context } from './context.ts';

/** Change orders, invoices, payments. */
export function billingHandlers(_context: Context): Pick<Handlers, keyof typeof billingCommands> {
  return {};
}
