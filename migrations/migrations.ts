import { firstTables } from './0010-first-tables.ts';
import { pricesByDay } from './0020-prices-by-day.ts';
import type { Migration } from './migration.ts';

/** Every step of the shop file's schema, oldest first. */
export const migrations: readonly Migration[] = [firstTables, pricesByDay];
