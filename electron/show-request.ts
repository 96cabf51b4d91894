import { statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const requestFile = 'show-yourself';

/** How often the first program looks for a second one's request. [ms] */
const lookEveryMs = 500;

/**
 * Asks the program that has the shop file open to show itself. The request carries nothing: no key passes through the
 * folder.
 * @param folder - where the shop file lives.
 * @returns false where the folder cannot be written.
 */
export function askToShow(folder: string): boolean {
  try {
    writeFileSync(join(folder, requestFile), `${process.pid}\n`);
    return true;
  } catch {
    return false;
  }
}

/**
 * Calls back whenever another program asks this one to show itself.
 * @returns stops looking.
 */
export function onAskedToShow(folder: string, show: () => void): () => void {
  const path = join(folder, requestFile);
  let last = askedAtMs(path);
  const looking = setInterval(() => {
    const asked = askedAtMs(path);
    if (asked > last) show();
    last = asked;
  }, lookEveryMs).unref();
  return () => clearInterval(looking);
}

function askedAtMs(path: string): number {
  return statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;
}
