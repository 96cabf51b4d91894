import { takeNumber } from './counters.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';

/** The folder beside the shop file that photos and PDFs are kept in. */
export const attachmentsFolder = 'attachments';

/** A photo or PDF that is kept in the shop's folder. */
export type StoredAttachment = {
  readonly id: string;
  readonly jobId: string;
  readonly addedOn: string;
  /** As the person's file was called; and as it is called in the folder. */
  readonly name: string;
  readonly fileName: string;
  readonly bytes: number;
  readonly sha256: string;
};

/** The attachments of a job, in order. */
export function listAttachments(db: ReadableDb, jobId: string): StoredAttachment[] {
  return db
    .rows(query.selectFrom('attachments').selectAll().where('job_id', '=', jobId).orderBy('sequence'))
    .map((row) => ({
      id: row.id,
      jobId: row.job_id,
      addedOn: row.added_on,
      name: row.name,
      fileName: row.file_name,
      bytes: row.bytes,
      sha256: row.sha256,
    }));
}

/** One by id. */
export function getAttachment(db: ReadableDb, id: string): StoredAttachment | undefined {
  const row = db.row(query.selectFrom('attachments').select('job_id').where('id', '=', id));
  return row === undefined ? undefined : listAttachments(db, row.job_id).find((one) => one.id === id);
}

export function addAttachment(db: WritableDb, attachment: StoredAttachment): void {
  db.run(
    query.insertInto('attachments').values({
      id: attachment.id,
      job_id: attachment.jobId,
      sequence: takeNumber(db, 'cost-entry'),
      added_on: attachment.addedOn,
      name: attachment.name,
      file_name: attachment.fileName,
      bytes: attachment.bytes,
      sha256: attachment.sha256,
    }),
  );
}
