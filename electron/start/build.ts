import { existsSync, mkdirSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import type { Rolldown } from 'vite';
import { electronBuilds } from './electron-builds.ts';
import { storeProblem } from '../store/classify.ts';
import { takeLock, type ShopLock } from '../store/lock.ts';

/**
 * Builds the page when it was never built or a source is newer.
 * @param root - the program's own folder.
 */
export function buildPageIfStale(root: string): Promise<void> {
  const sources = ['renderer', 'core', 'vite.config.ts', 'package-lock.json'];
  return buildIfStale(root, join('dist', 'renderer', 'index.html'), sources, buildPage);
}

/** Builds Electron's own files when they are missing or a source is newer. */
export function buildElectronIfStale(root: string): Promise<void> {
  const sources = ['electron', 'core', 'migrations', 'package-lock.json'];
  return buildIfStale(root, join('dist', 'electron', 'main.js'), sources, buildElectron);
}

async function buildIfStale(
  root: string,
  built: string,
  sources: readonly string[],
  build: (root: string) => Promise<void>,
): Promise<void> {
  const stale = (): boolean =>
    isStale(
      join(root, built),
      sources.map((source) => join(root, source)),
    );
  if (!stale()) return;
  await alone(root, async () => {
    // Another start may have built it while this one waited.
    if (!stale()) return;
    await build(root);
  });
}

/** Builds the page by the project's vite configuration. */
export async function buildPage(root: string): Promise<void> {
  const { build } = await import('vite');
  await build({ configFile: join(root, 'vite.config.ts'), logLevel: 'warn' });
}

/** Builds what Electron runs: main and workers as modules, preload as a script, in that order. */
export async function buildElectron(root: string): Promise<void> {
  const { build } = await import('vite');
  for (const config of electronBuilds(root)) await build(config);
}

/** Two starts at once must not build into the same folder: the second waits for the first. */
async function alone(root: string, work: () => Promise<void>): Promise<void> {
  mkdirSync(join(root, 'dist'), { recursive: true });
  const path = join(root, 'dist', '.build-lock');
  let lock = tryLock(path);
  while (lock === undefined) {
    await setTimeout(100);
    lock = tryLock(path);
  }
  try {
    await work();
  } finally {
    lock.release();
  }
}

function tryLock(path: string): ShopLock | undefined {
  try {
    return takeLock(path);
  } catch (error) {
    if (storeProblem(error)?.code === 'shop-file-in-use') return undefined;
    throw error;
  }
}

/**
 * Builds the page and again at each change of a source.
 * @param rebuilt - called after each build.
 * @returns the function that stops watching.
 */
export async function watchPage(root: string, rebuilt: () => void): Promise<() => Promise<void>> {
  const { build } = await import('vite');
  const watcher = (await build({
    configFile: join(root, 'vite.config.ts'),
    logLevel: 'warn',
    build: { watch: {} },
  })) as Rolldown.RolldownWatcher;
  await new Promise<void>((resolve) => {
    watcher.on('event', (event) => {
      if (event.code !== 'END') return;
      rebuilt();
      resolve();
    });
  });
  return () => watcher.close();
}

/** True where the built file is missing, or older than the newest of its sources (files, or folders gone through). */
export function isStale(built: string, sources: readonly string[]): boolean {
  if (!existsSync(built)) return true;
  const builtAt = statSync(built).mtimeMs;
  return sources.some((source) => newestIn(source) > builtAt);
}

function newestIn(path: string): number {
  if (!existsSync(path)) return 0;
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .reduce((newest, entry) => Math.max(newest, statSync(join(entry.parentPath, entry.name)).mtimeMs), 0);
}
