import { extname } from 'node:path';
import type { BrowserWindow, Dialog } from 'electron';
import { fail, ok, type Result } from '../core/result.ts';
import type { Problem } from '../core/problems/problem.ts';
import { writeFileSafely } from './write-file-safely.ts';

/**
 * Asks where to and saves.
 * @param fileName - the name that is proposed.
 * @returns whether it was saved: false where the person cancelled.
 */
export async function saveThroughDialog(
  dialog: Pick<Dialog, 'showSaveDialog'>,
  window: BrowserWindow,
  fileName: string,
  bytes: Uint8Array,
): Promise<Result<boolean, Problem>> {
  const extension = extname(fileName).slice(1);
  const { canceled, filePath } = await dialog.showSaveDialog(window, {
    defaultPath: fileName,
    ...(extension === '' ? {} : { filters: [{ name: extension.toUpperCase(), extensions: [extension] }] }),
  });
  if (canceled || filePath === '') return ok(false);
  try {
    writeFileSafely(filePath, bytes);
    return ok(true);
  } catch {
    return fail({ code: 'file-not-written', fileName });
  }
}
