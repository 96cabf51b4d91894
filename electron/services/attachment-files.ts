import { mkdirSync, readFileSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { attachmentsFolder, type StoredAttachment } from '../store/attachments.ts';
import { writeFileSafely } from '../write-file-safely.ts';

/** Most that one file may weigh. [MB] */
const mostMb = 20;

/** How a file of each kind begins. */
const beginnings: readonly { readonly ending: string; readonly bytes: readonly number[] }[] = [
  { ending: 'jpg', bytes: [0xff, 0xd8, 0xff] },
  { ending: 'png', bytes: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a] },
  { ending: 'pdf', bytes: [0x25, 0x50, 0x44, 0x46, 0x2d] },
];

/**
 * Keeps a photo or a PDF, told by how it begins and not by its name, in the shop's folder under a name of our own, so that
 * no name that someone typed becomes a path.
 * @param folder - of the shop file.
 * @returns what is noted of it; or `not-a-picture`, `file-too-large`.
 */
export function keepAttachment(
  folder: string,
  attachment: Pick<StoredAttachment, 'id' | 'jobId' | 'addedOn' | 'name'>,
  bytes: Uint8Array,
): Result<StoredAttachment, Problem> {
  const { name } = attachment;
  if (bytes.length > mostMb * 1024 * 1024)
    return fail({ code: 'costs', fault: { what: 'file-too-large', fileName: name, mostMb } });
  const kind = beginnings.find((one) => one.bytes.every((byte, index) => bytes[index] === byte));
  if (kind === undefined) return fail({ code: 'costs', fault: { what: 'not-a-picture', fileName: name } });
  const fileName = `${attachment.id}.${kind.ending}`;
  const where = join(folder, attachmentsFolder);
  mkdirSync(where, { recursive: true });
  writeFileSafely(join(where, fileName), bytes);
  return ok({ ...attachment, fileName, bytes: bytes.length, sha256: hashOf(bytes) });
}

/** The bytes of a kept file, held against its hash; `file-gone` where it is not what was kept. */
export function readAttachment(
  folder: string,
  { name, fileName, sha256 }: StoredAttachment,
): Result<Uint8Array, Problem> {
  const gone = { code: 'costs', fault: { what: 'file-gone', fileName: name } } as const;
  try {
    const bytes = readFileSync(join(folder, attachmentsFolder, fileName));
    return hashOf(bytes) === sha256 ? ok(bytes) : fail(gone);
  } catch {
    return fail(gone);
  }
}

function hashOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
