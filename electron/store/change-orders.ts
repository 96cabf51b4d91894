import { changePriceUsd } from '../../core/billing/contract-sum.ts';
import {
  type ChangeOrder,
  changeOrderSchema,
  type ChangeOrderState,
} from '../../core/billing/change-order.ts';
import { usd, type Usd } from '../../core/units/money.ts';
import { canonicalJson, sha256 } from './canonical-json.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { DocumentDamaged } from './documents.ts';
import { query } from './query.ts';

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
  /** False where it is not what was written any more. */
  readonly intact: boolean;
};

/** The change orders of a job by number, each held against its hash. */
export function listChanges(db: ReadableDb, jobId: string): StoredChange[] {
  return db
    .rows(query.selectFrom('change_orders').selectAll().where('job_id', '=', jobId).orderBy('number'))
    .map((row) => {
      const order = changeOrderSchema.safeParse(JSON.parse(row.json));
      if (!order.success) throw new DocumentDamaged('change order');
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
        intact: sha256(row.json) === row.sha256 && usd(row.price_usd) === changePriceUsd(order.data),
      };
    });
}

/** One by id. */
export function getChange(db: ReadableDb, id: string): StoredChange | undefined {
  const row = db.row(query.selectFrom('change_orders').select('job_id').where('id', '=', id));
  return row === undefined ? undefined : listChanges(db, row.job_id).find((one) => one.id === id);
}

/** Adds a draft under the job's next number. */
export function addChange(
  db: WritableDb,
  change: {
    readonly id: string;
    readonly jobId: string;
    readonly madeOn: string;
    readonly order: ChangeOrder;
  },
): number {
  const number = (listChanges(db, change.jobId).at(-1)?.number ?? 0) + 1;
  db.run(
    query.insertInto('change_orders').values({
      id: change.id,
      job_id: change.jobId,
      number,
      state: 'draft',
      made_on: change.madeOn,
      sent_on: null,
      decided_on: null,
      note: '',
      ...written(change.order),
    }),
  );
  return number;
}

/** Writes a draft anew. */
export function changeDraft(db: WritableDb, id: string, order: ChangeOrder): void {
  db.run(
    query.updateTable('change_orders').set(written(order)).where('id', '=', id).where('state', '=', 'draft'),
  );
}

/** Moves one to where it stands now. */
export function moveChange(
  db: WritableDb,
  id: string,
  to: { readonly state: ChangeOrderState; readonly on: string; readonly note: string },
): void {
  db.run(
    query
      .updateTable('change_orders')
      .set(
        to.state === 'sent'
          ? { state: to.state, sent_on: to.on }
          : { state: to.state, decided_on: to.on, note: to.note },
      )
      .where('id', '=', id),
  );
}

function written(order: ChangeOrder): { json: string; sha256: string; price_usd: string } {
  const json = canonicalJson(order);
  return { json, sha256: sha256(json), price_usd: changePriceUsd(order) };
}
