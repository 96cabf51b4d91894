import type BetterSqlite3 from 'better-sqlite3';
import type { Compilable } from 'kysely';

/** A query that only reads; kysely's inserts, updates and deletes lack the mark. */
type SelectQuery<Row> = Compilable<Row> & { readonly isSelectQueryBuilder: true };

/** A handle that can read and no more. */
export type ReadableDb = {
  rows<Row>(query: SelectQuery<Row>): Row[];
  row<Row>(query: SelectQuery<Row>): Row | undefined;
};

/** A handle inside an open write transaction. */
export type WritableDb = ReadableDb & {
  /** Runs a change and answers how many rows it touched. */
  run(query: Compilable): number;
};

/** Wraps the open database so that the compiled queries run on prepared statements. */
export function handlesOf(database: BetterSqlite3.Database): {
  readonly readable: ReadableDb;
  readonly writable: WritableDb;
} {
  const statements = new Map<string, BetterSqlite3.Statement>();

  function prepared(query: Compilable): {
    statement: BetterSqlite3.Statement;
    parameters: readonly unknown[];
  } {
    const { sql, parameters } = query.compile();
    let statement = statements.get(sql);
    if (statement === undefined) {
      statement = database.prepare(sql);
      statements.set(sql, statement);
    }
    return { statement, parameters };
  }

  function reading(query: Compilable): {
    statement: BetterSqlite3.Statement;
    parameters: readonly unknown[];
  } {
    const ready = prepared(query);
    // The types say so already; a cast must not get past it.
    if (!ready.statement.readonly) throw new Error('a reading handle was given a query that writes');
    return ready;
  }

  const readable: ReadableDb = {
    rows<Row>(query: SelectQuery<Row>) {
      const { statement, parameters } = reading(query);
      return statement.all(...parameters) as Row[];
    },
    row<Row>(query: SelectQuery<Row>) {
      const { statement, parameters } = reading(query);
      return statement.get(...parameters) as Row | undefined;
    },
  };
  const writable: WritableDb = {
    ...readable,
    run(query) {
      const { statement, parameters } = prepared(query);
      return statement.run(...parameters).changes;
    },
  };
  return { readable, writable };
}
