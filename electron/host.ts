import { contract } from '../core/contract/contract.ts';
import { createDispatcher, type Dispatch } from './dispatcher.ts';
import { changedBy, createEvents, type Events } from './events.ts';
import type { Handlers } from './handlers.ts';
import { appHandlers } from './services/app.ts';
import { billingHandlers } from './services/billing.ts';
import type { Context } from './services/context.ts';
import { costHandlers } from './services/costs.ts';
import { cuttingHandlers } from './services/cutting.ts';
import { estimateHandlers } from './services/estimates.ts';
import { jobFileHandlers } from './services/job-files.ts';
import { jobHandlers } from './services/jobs.ts';
import { learningHandlers } from './services/learning.ts';
import { paperHandlers } from './services/paper.ts';
import { priceHistoryHandlers } from './services/price-history.ts';
import { priceListHandlers } from './services/price-list.ts';
import { createPriceSteps } from './services/price-steps.ts';
import { priceHandlers } from './services/prices.ts';
import { quoteHandlers } from './services/quotes.ts';
import { settingsHandlers } from './services/settings.ts';
import { shopHandlers } from './services/shop.ts';
import { stockHandlers } from './services/stock.ts';
import { storeProblem } from './store/classify.ts';
import { DocumentDamaged } from './store/documents.ts';
import { ShopClosed } from './store/shop-keeper.ts';

/** The program behind both shells: one way in, and events out. */
export type Host = { readonly dispatch: Dispatch; readonly subscribe: Events['subscribe'] };

/** Puts the use cases behind the dispatcher. */
export function createHost(context: Context, reportBug: (command: string, error: unknown) => void): Host {
  const events = createEvents();
  const priceSteps = createPriceSteps();
  const handlers: Handlers = {
    ...appHandlers(context),
    ...settingsHandlers(context),
    ...shopHandlers(context),
    ...jobHandlers(context),
    ...jobFileHandlers(context),
    ...priceHandlers(context, priceSteps),
    ...estimateHandlers(context),
    ...quoteHandlers(context),
    ...paperHandlers(context),
    ...cuttingHandlers(context, events.publish),
    ...priceListHandlers(context, priceSteps, events.publish),
    ...priceHistoryHandlers(context),
    ...stockHandlers(context),
    ...costHandlers(context),
    ...billingHandlers(context),
    ...learningHandlers(context),
  };
  const dispatch = createDispatcher(contract, handlers, {
    problemOf: (error) =>
      error instanceof DocumentDamaged
        ? { code: 'shop-file-damaged' }
        : error instanceof ShopClosed
          ? error.problem
          : storeProblem(error),
    reportBug,
    wrote(command) {
      for (const what of changedBy(command)) events.publish({ kind: 'changed', what });
    },
  });
  return { dispatch, subscribe: events.subscribe };
}
