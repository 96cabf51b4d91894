/** What a migration may do: run statements. Transaction, foreign keys and version are the migrator's business. */
export type MigrationDb = { exec(sql: string): void };

/** One step of the shop file's schema. Numbered in tens, forward only, frozen once released. */
export type Migration = {
  readonly version: number;
  readonly name: string;
  readonly update: (db: MigrationDb) => void;
};
