import { readdirSync, readFileSync } from 'node:fs';
import { extname, join, relative, sep } from 'node:path';

export type BuiltFile = { readonly type: string; readonly bytes: Buffer<ArrayBuffer> };

/** Every file of the built page by the path it is asked for, `/assets/x.js`. A path that is not in it does not exist. */
export type BuiltFiles = ReadonlyMap<string, BuiltFile>;

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.ttf': 'font/ttf',
  '.woff2': 'font/woff2',
  '.json': 'application/json',
  '.wasm': 'application/wasm',
};

/**
 * Reads the built page into memory, so that no later request touches the disk or joins a path.
 * @param folder - dist/renderer; what it holds beyond known kinds of file (and its manifest) is left out.
 */
export function readBuiltFiles(folder: string): BuiltFiles {
  const files = new Map<string, BuiltFile>();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    const name = relative(folder, path).split(sep).join('/');
    const type = types[extname(entry.name)];
    if (!entry.isFile() || type === undefined || name.startsWith('.')) continue;
    files.set(`/${name}`, { type, bytes: readFileSync(path) });
  }
  const index = files.get('/index.html');
  if (index !== undefined) files.set('/', index);
  return files;
}
