import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { programRoot } from '../../electron/program-root.ts';

// electron-builder's own reader and schema; nothing is built here.
type Configuration = Readonly<Record<string, unknown>>;
const require = createRequire(import.meta.url);
const { getConfig, validateConfiguration } = require('app-builder-lib/out/util/config/config.js') as {
  getConfig: (root: string, file: string, options: null) => Promise<Configuration>;
  validateConfiguration: (configuration: Configuration, log: unknown) => Promise<void>;
};
const { DebugLogger } = require('builder-util') as { DebugLogger: new (on: boolean) => unknown };

const root = programRoot();
const configuration = (): Promise<Configuration> => getConfig(root, 'electron-builder.yml', null);
const validate = (one: Configuration): Promise<void> => validateConfiguration(one, new DebugLogger(false));

test('the packaging configuration fits electron-builder’s own schema, which refuses a misspelt one', async () => {
  const ours = await configuration();
  await validate(ours);
  await expect(validate({ ...ours, lunix: {} })).rejects.toThrow('unknown property');
  await expect(validate({ ...ours, electronFuses: { runAsNod: false } })).rejects.toThrow('electronFuses');
});

test('it packs for Linux, Windows and macOS, each with our icon', async () => {
  const { linux, win, mac } = (await configuration()) as Record<string, { target: unknown; icon: string }>;
  expect(linux?.target).toEqual(['AppImage', 'deb']);
  expect([win?.target, mac?.target]).toEqual(['nsis', 'dmg']);
  for (const system of [linux, win, mac]) {
    const icon = readFileSync(join(root, system?.icon ?? ''));
    // PNG header: width and height stand at bytes 16 and 20. Source: the PNG specification, 11.2.2 IHDR.
    expect(icon.toString('latin1', 1, 4)).toBe('PNG');
    expect([icon.readUInt32BE(16), icon.readUInt32BE(20)]).toEqual([1024, 1024]);
  }
});

test('native code and WASM stay outside of the archive, and what the program reads is packed', async () => {
  const { asarUnpack, files } = (await configuration()) as {
    asarUnpack: string[];
    files: { filter: string[] }[];
  };
  expect(asarUnpack).toEqual(
    expect.arrayContaining(['node_modules/better-sqlite3/**', 'node_modules/highs/**']),
  );
  expect(files[0]?.filter).toEqual(expect.arrayContaining(['dist/**', 'fixtures/sample-job.json']));
  const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    dependencies: Record<string, string>;
  };
  expect(Object.keys(manifest.dependencies)).toEqual(expect.arrayContaining(['better-sqlite3', 'highs']));
});

test('no package of the program itself is under a licence that asks for its source', () => {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    packages: Record<string, { dev?: boolean; license?: string }>;
  };
  const shipped = Object.entries(lock.packages).filter(([path, one]) => path !== '' && one.dev !== true);
  expect(shipped.length).toBeGreaterThan(10);
  for (const [path, one] of shipped) expect(`${path} ${one.license ?? ''}`).not.toMatch(/GPL/);
});
