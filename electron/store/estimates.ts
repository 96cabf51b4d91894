import { canonicalJson, sha256 } from './canonical-json.ts';
import { takeNumber } from './counters.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';

export type SavedEstimate = {
  readonly id: string;
  readonly number: number;
  readonly asOf: string;
  readonly savedOn: string;
  readonly totalUsd: string;
  readonly lacks: number;
  /** False where the frozen record does not match its hash any more. */
  readonly intact: boolean;
};

/** Freezes an estimate with everything that it was made of, under the next number. */
export function addEstimate(
  db: WritableDb,
  estimate: Omit<SavedEstimate, 'number' | 'intact'> & { readonly jobId: string; readonly record: object },
): number {
  const number = takeNumber(db, 'estimate');
  const json = canonicalJson({ number, ...estimate });
  db.run(
    query.insertInto('estimates').values({
      id: estimate.id,
      job_id: estimate.jobId,
      number,
      as_of: estimate.asOf,
      saved_on: estimate.savedOn,
      total_usd: estimate.totalUsd,
      lacks: estimate.lacks,
      json,
      sha256: sha256(json),
    }),
  );
  return number;
}

/** The estimates of a job, the newest first, each held against its hash and its own columns. */
export function listEstimates(db: ReadableDb, jobId: string): SavedEstimate[] {
  return db
    .rows(query.selectFrom('estimates').selectAll().where('job_id', '=', jobId).orderBy('number', 'desc'))
    .map((row) => {
      const columns = {
        id: row.id,
        number: row.number,
        asOf: row.as_of,
        savedOn: row.saved_on,
        totalUsd: row.total_usd,
        lacks: row.lacks,
      };
      return { ...columns, intact: sha256(row.json) === row.sha256 && agrees(row.json, columns) };
    });
}

/** The frozen record of an estimate; undefined where there is none of that id. */
export function getEstimateRecord(
  db: ReadableDb,
  id: string,
): { readonly record: unknown; readonly intact: boolean } | undefined {
  const row = db.row(query.selectFrom('estimates').select(['json', 'sha256']).where('id', '=', id));
  if (row === undefined) return undefined;
  const frozen = JSON.parse(row.json) as { readonly record?: unknown };
  return { record: frozen.record, intact: sha256(row.json) === row.sha256 };
}

/** SQLite keeps no checksum of a value, and a column can be changed beside the record: so both are compared. */
function agrees(json: string, columns: Record<string, unknown>): boolean {
  const record = JSON.parse(json) as Record<string, unknown>;
  return Object.entries(columns).every(([key, value]) => record[key] === value);
}
