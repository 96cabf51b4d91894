import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { build } from 'vite';
import { expect, test } from 'vitest';
import { programRoot } from '../../electron/program-root.ts';
import { electronBuilds } from '../../electron/start/electron-builds.ts';
import { temporaryFolder } from '../store/temporary-folder.ts';

test('Electron gets a main file, its workers beside it, and a preload script that a sandbox can run', async () => {
  const folder = temporaryFolder();
  for (const config of electronBuilds(programRoot(), folder)) await build(config);
  const files = readdirSync(folder);
  expect(files).toEqual(
    expect.arrayContaining(['main.js', 'paper-worker.js', 'cutting-worker.js', 'preload.cjs']),
  );
  expect(files.filter((name) => !/\.c?js$/.test(name))).toEqual([]);

  // A sandboxed preload script is no module and may require electron alone.
  // Source: Electron's documentation, "Process Sandboxing", preload scripts.
  const preload = readFileSync(join(folder, 'preload.cjs'), 'utf8');
  expect([...preload.matchAll(/require\("([^"]+)"\)/g)].map((match) => match[1])).toEqual(['electron']);
  expect(preload).not.toMatch(/^\s*(import|export) /m);

  // Packages with files of their own are found in node_modules; our own code is all inside.
  const main = files
    .filter((name) => name.endsWith('.js'))
    .map((name) => readFileSync(join(folder, name), 'utf8'))
    .join('\n');
  const packages = [...main.matchAll(/^import .*? from "([^".][^"]*)"/gm)].map((match) => match[1] ?? '');
  const manifest = createRequire(import.meta.url)('../../package.json') as {
    dependencies: Record<string, string>;
  };
  const known = ['electron', ...Object.keys(manifest.dependencies)];
  const unknown = packages.filter(
    (name) =>
      !name.startsWith('node:') && !known.some((wanted) => name === wanted || name.startsWith(`${wanted}/`)),
  );
  expect(unknown).toEqual([]);
}, 60_000);
