import BetterSqlite3 from 'better-sqlite3';
import type { Problem } from '../../core/problems/problem.ts';
import { designSchema, type Design } from '../../core/eave/design-document.ts';
import type { Result } from '../../core/result.ts';
import { boardIdOf } from '../../core/stock/stock-piece.ts';
import type { Context } from '../../electron/services/context.ts';
import { jobHandlers } from '../../electron/services/jobs.ts';
import { stockHandlers } from '../../electron/services/stock.ts';
import { handlesOf } from '../../electron/store/database.ts';
import { migrate } from '../../electron/store/migrator.ts';
import { migrations } from '../../migrations/migrations.ts';

class RolledBack extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.code);
    this.problem = problem;
  }
}

/** A shop in memory: the real services over the real tables, with nothing on a disk. */
export function memoryShop() {
  const database = new BetterSqlite3(':memory:');
  migrate(database, migrations, () => undefined);
  const { readable, writable } = handlesOf(database);
  let last = 0;
  const store = {
    read: <T>(work: (db: typeof readable) => T): T => work(readable),
    write<T>(work: (db: typeof writable) => Result<T, Problem>): Result<T, Problem> {
      try {
        return database.transaction((): Result<T, Problem> => {
          const result = work(writable);
          if (!result.ok) throw new RolledBack(result.problem);
          return result;
        })();
      } catch (error) {
        if (error instanceof RolledBack) return { ok: false, problem: error.problem };
        throw error;
      }
    },
    tables: () => [],
  };
  const context = {
    store,
    today: () => '2026-05-04',
    newId: () => `id-${(last += 1)}`,
  } as unknown as Context;
  return { jobs: jobHandlers(context), stock: stockHandlers(context) };
}

/** A design whose boards on hand are these pieces of the stock. */
export function designWith(sequences: readonly number[]): Design {
  return designSchema.parse({
    version: 1,
    eaves: [],
    cutting: {
      onHand: sequences.map((sequence) => ({ id: boardIdOf(sequence), section: '2x6', lengthIn: 60 })),
    },
  });
}
