import type { HostEvent } from '../../core/contract/reply.ts';
import type { priceListCommands } from '../../core/contract/price-list-commands.ts';
import { ok } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import { storedChange } from '../store/price-changes.ts';
import { listPrices } from '../store/prices.ts';
import type { Context } from './context.ts';
import { priceImportHandlers } from './price-import.ts';
import type { PriceSteps } from './price-steps.ts';
import { writePriceWorkbook } from './price-workbook.ts';

/** Editing the price list fast, and its ways in and out. */
export function priceListHandlers(
  context: Context,
  steps: PriceSteps,
  publish: (event: HostEvent) => void,
): Pick<Handlers, keyof typeof priceListCommands> {
  const { store } = context;
  return {
    'prices.change': ({ changes }) => store.write((db) => steps.change(db, changes.map(storedChange))),
    'prices.undo': ({ stepIds }) => store.write((db) => steps.undo(db, stepIds)),
    'prices.exportXlsx': async () => {
      const bytes = await writePriceWorkbook(store.read(listPrices));
      return ok({
        fileName: `price-list-${context.today()}.xlsx`,
        base64: Buffer.from(bytes).toString('base64'),
      });
    },
    ...priceImportHandlers(context, steps, publish),
  };
}
