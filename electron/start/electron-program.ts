import { spawn } from 'node:child_process';
import { existsSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** How long Electron's download may take before the browser is taken instead. [ms] */
const fetchLimitMs = 20_000;

/** A failed download is not tried again for a day, so that each start without a network is quick. [ms] */
const tryAgainAfterMs = 24 * 60 * 60 * 1000;

/** Finds Electron's program, as its npm package lays it; undefined where the package came without it. */
export function findElectron(root: string): string | undefined {
  const folder = join(root, 'node_modules', 'electron');
  const named = join(folder, 'path.txt');
  if (!existsSync(named)) return undefined;
  const program = join(folder, 'dist', readFileSync(named, 'utf8').trim());
  return existsSync(program) ? program : undefined;
}

/**
 * Fetches Electron by its package's own installer, within the time limit.
 * @param now - the time, to remember a failure by. [ms since 1970]
 * @param limitMs - how long it may take. [ms]
 * @returns its program; undefined where it cannot be had.
 */
export async function fetchElectron(
  root: string,
  now: number,
  limitMs: number = fetchLimitMs,
): Promise<string | undefined> {
  const installer = join(root, 'node_modules', 'electron', 'install.js');
  if (!existsSync(installer)) return undefined;
  const failedBefore = join(root, 'node_modules', '.eavewright-electron-failed');
  if (existsSync(failedBefore) && now - statSync(failedBefore).mtimeMs < tryAgainAfterMs) return undefined;
  await runWithin(limitMs, installer, root);
  const program = findElectron(root);
  try {
    if (program === undefined) writeFileSync(failedBefore, '');
    else rmSync(failedBefore, { force: true });
  } catch {
    // A folder that cannot be written only means that the next start tries again.
  }
  return program;
}

/** Runs a script of a package and ends it at the limit, whatever it waits for. */
function runWithin(limitMs: number, script: string, cwd: string): Promise<void> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [script], { cwd, stdio: 'ignore' });
    const limit = setTimeout(() => child.kill('SIGKILL'), limitMs);
    const done = (): void => {
      clearTimeout(limit);
      resolve();
    };
    child.once('error', done);
    child.once('exit', done);
  });
}

/**
 * Runs the program under Electron until it is closed.
 * @returns its exit code; `not-started` where it gave up at once, as it does without a usable display or sandbox.
 */
export function runElectron(
  program: string,
  root: string,
  data: string,
  now: () => number,
): Promise<number | 'not-started'> {
  const started = now();
  const { ELECTRON_RUN_AS_NODE: _asNode, ...env } = process.env;
  return new Promise((resolve) => {
    const child = spawn(program, [root], { env: { ...env, EAVEWRIGHT_DATA: data }, stdio: 'inherit' });
    const stop = (): void => void child.kill('SIGTERM');
    process.once('SIGINT', stop);
    process.once('SIGTERM', stop);
    child.once('error', () => resolve('not-started'));
    child.once('exit', (code, signal) => {
      const gaveUp = signal !== 'SIGTERM' && code !== 0 && code !== refusedExitCode && now() - started < 5000;
      resolve(gaveUp ? 'not-started' : (code ?? 0));
    });
  });
}

/** Electron's exit code where it ran but the shop file was refused: a browser would be refused it as well. */
export const refusedExitCode = 3;
