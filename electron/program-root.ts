import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The program's own folder: the one with its package.json, above the sources as above the built files. */
export function programRoot(from: string = fileURLToPath(import.meta.url)): string {
  let folder = dirname(from);
  while (!existsSync(join(folder, 'package.json'))) {
    const above = dirname(folder);
    if (above === folder) throw new Error('the program folder was not found');
    folder = above;
  }
  return folder;
}
