import { billingTables } from './0030-parts/billing.ts';
import { jobCostTables } from './0030-parts/job-cost.ts';
import { learningTables } from './0030-parts/learning.ts';
import { priceTables } from './0030-parts/prices.ts';
import { quoteTables } from './0030-parts/quotes.ts';
import { stockTables } from './0030-parts/stock.ts';
import type { Migration } from './migration.ts';

/**
 * Prices over time, boards kept in stock, what a job really took, and what was billed for it. One file a part, since each
 * has its own reader in electron/store.
 */
export const jobMoney: Migration = {
  version: 30,
  name: 'job money',
  update(db) {
    for (const part of [priceTables, stockTables, jobCostTables, billingTables, quoteTables, learningTables])
      db.exec(part);
  },
};
