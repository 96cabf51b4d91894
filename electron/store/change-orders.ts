import { changePriceUsd } from '../../core/billing/contract-sum.ts';
import {
  type ChangeOrder,
  changeOrderSchema,
  type ChangeOrderState,
} from '../../core/billing/change-order.ts';
import type { Sheet } from '../../core/documents/sheet.ts';
import { usd, type Usd } from '../../core/units/money.ts';
import { canonicalJson, sha256 } from './canonical-json.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { DocumentDamaged } from './documents.ts';
import { query } from './query.ts';
import type { Schema } from './schema.ts';

export type StoredChange = {
  readonly id: string;
  readonly jobId: string;
  readonly number: number;
  readonly state: ChangeOrderState;
  readonly madeOn: string;
  readonly sentOn: string | null;
  readonly decidedOn: string | null;
  readonly note: string;
  readonly priceUsd: Usd;
  readonly order: ChangeOrder;
  /** The paper as it was sent, then as it was approved; null of a draft. */
  readonly sheet: Sheet | null;
  /** False where it is not what was written any more. */
  readonly intact: boolean;
};

/** The change orders of a job by number, each held against its hash and its own columns. */
export function listChanges(db: ReadableDb, jobId: string): StoredChange[] {
  return db
    .rows(query.selectFrom('change_orders').selectAll().where('job_id', '=', jobId).orderBy('number'))
    .map(changeOf);
}

/** One by id. */
export function getChange(db: ReadableDb, id: string): StoredChange | undefined {
  const row = db.row(query.selectFrom('change_orders').selectAll().where('id', '=', id));
  return row === undefined ? undefined : changeOf(row);
}

/** Adds a draft under the job's next number. */
export function addChange(
  db: WritableDb,
  change: Pick<StoredChange, 'id' | 'jobId' | 'madeOn' | 'order'>,
): number {
  const number = (listChanges(db, change.jobId).at(-1)?.number ?? 0) + 1;
  const draft = { ...change, number, state: 'draft', sentOn: null, decidedOn: null, note: '' } as const;
  db.run(query.insertInto('change_orders').values(rowOf({ ...draft, sheet: null })));
  return number;
}

/** Writes a draft anew. */
export function changeDraft(db: WritableDb, draft: StoredChange, order: ChangeOrder): void {
  write(db, { ...draft, order });
}

/** Moves one to where it stands now, with the paper that says so. */
export function moveChange(
  db: WritableDb,
  change: StoredChange,
  to: {
    readonly state: Exclude<ChangeOrderState, 'draft'>;
    readonly on: string;
    readonly note: string;
    readonly sheet: Sheet | null;
  },
): void {
  const { state, on, note, sheet } = to;
  write(
    db,
    state === 'sent'
      ? { ...change, state, sentOn: on, sheet }
      : { ...change, state, decidedOn: on, note, sheet },
  );
}

type WrittenChange = Omit<StoredChange, 'intact' | 'priceUsd'>;

function write(db: WritableDb, change: WrittenChange): void {
  db.run(query.updateTable('change_orders').set(rowOf(change)).where('id', '=', change.id));
}

function rowOf({ id, jobId, number, state, madeOn, sentOn, decidedOn, note, order, sheet }: WrittenChange) {
  const frozen = { id, jobId, number, state, madeOn, sentOn, decidedOn, note, order, sheet };
  const json = canonicalJson(frozen);
  return {
    id,
    job_id: jobId,
    number,
    state,
    made_on: madeOn,
    sent_on: sentOn,
    decided_on: decidedOn,
    note,
    price_usd: changePriceUsd(order),
    json,
    sha256: sha256(json),
  };
}

function changeOf(row: Schema['change_orders']): StoredChange {
  const kept = JSON.parse(row.json) as Omit<WrittenChange, 'order'> & { readonly order: unknown };
  const order = changeOrderSchema.safeParse(kept.order);
  if (!order.success) throw new DocumentDamaged('change order');
  const columns = { ...rowOf({ ...kept, order: order.data }), json: row.json, sha256: sha256(row.json) };
  return {
    id: row.id,
    jobId: row.job_id,
    number: row.number,
    state: row.state,
    madeOn: row.made_on,
    sentOn: row.sent_on,
    decidedOn: row.decided_on,
    note: row.note,
    priceUsd: usd(row.price_usd),
    order: order.data,
    sheet: kept.sheet,
    intact: canonicalJson(columns) === canonicalJson(row),
  };
}
