import { createHash } from 'node:crypto';
import type { Picture } from '../../core/documents/picture.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';

/** A logo with its file's bytes. */
export type StoredLogo = Picture & { readonly sha256: string; readonly bytes: Uint8Array };

/** Keeps a logo under its hash, once however often it is chosen; none is ever taken out, since papers name it. */
export function putLogo(db: WritableDb, picture: Picture, bytes: Uint8Array): string {
  const sha256 = hashOf(bytes);
  db.run(
    query
      .insertInto('logos')
      .values({
        sha256,
        media_type: picture.mediaType,
        width_px: picture.widthPx,
        height_px: picture.heightPx,
        bytes: Buffer.from(bytes),
      })
      .onConflict((conflict) => conflict.column('sha256').doNothing()),
  );
  return sha256;
}

/** A logo by its hash; undefined where it is not kept here, or is not what was kept. */
export function getLogo(db: ReadableDb, sha256: string): StoredLogo | undefined {
  const row = db.row(query.selectFrom('logos').selectAll().where('sha256', '=', sha256));
  if (row === undefined || hashOf(row.bytes) !== sha256) return undefined;
  return {
    sha256,
    mediaType: row.media_type === 'image/png' ? 'image/png' : 'image/jpeg',
    widthPx: row.width_px,
    heightPx: row.height_px,
    bytes: row.bytes,
  };
}

function hashOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
