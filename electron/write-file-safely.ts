import { rmSync, writeFileSync } from 'node:fs';
import { moveIntoPlace } from './store/backup.ts';

/** Writes a file so that its name shows either what stood there before or the whole of the new, never a part. */
export function writeFileSafely(path: string, bytes: Uint8Array): void {
  const unfinished = `${path}.unfinished`;
  try {
    writeFileSync(unfinished, bytes);
    moveIntoPlace(unfinished, path);
  } catch (error) {
    rmSync(unfinished, { force: true });
    throw error;
  }
}
