import { mkdirSync, readFileSync } from 'node:fs';
import { isAbsolute, join } from 'node:path';
import { writeFileSafely } from '../write-file-safely.ts';

const signFile = 'moved-to.txt';

/**
 * The folder that a shop file was moved to from another, which holds a sign with its path.
 * @param folder - where the program looks first.
 * @returns the folder that the sign names, else the same; a sign is followed once, not from folder to folder.
 */
export function followSign(folder: string): string {
  try {
    const path = readFileSync(join(folder, signFile), 'utf8').trim();
    return isAbsolute(path) ? path : folder;
  } catch {
    return folder;
  }
}

/** Leaves the sign in the folder where the program looks first. */
export function pointTo(from: string, to: string): void {
  mkdirSync(from, { recursive: true });
  writeFileSafely(join(from, signFile), Buffer.from(`${to}\n`));
}
