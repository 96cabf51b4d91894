import { existsSync } from 'node:fs';

/**
 * The file of a worker: beside the file that starts it, from the sources; in the bundle beside it, or above its folder of
 * chunks.
 * @param name - without extension.
 * @param from - address of the file that starts it.
 */
export function workerFile(name: string, from: string): URL {
  const files = [`${name}.ts`, `${name}.js`, `../${name}.js`].map((file) => new URL(file, from));
  const found = files.find((file) => existsSync(file));
  if (found === undefined) throw new Error(`the ${name} is not beside the program`);
  return found;
}
