import { firstTables } from './0010-first-tables.ts';
import { quotesAndPricesByDay } from './0020-quotes-and-prices-by-day.ts';
import { jobMoney } from './0030-job-money.ts';
import type { Migration } from './migration.ts';

/** Every step of the shop file's schema, oldest first. */
export const migrations: readonly Migration[] = [firstTables, quotesAndPricesByDay, jobMoney];
