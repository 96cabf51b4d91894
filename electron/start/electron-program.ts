import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** How long a start waits for Electron's download before the browser is taken instead. [ms] */
const waitMs = 20_000;

/** After a wait in vain, starts do not wait again for a day, so that each one without a network is quick. [ms] */
const waitAgainAfterMs = 24 * 60 * 60 * 1000;

/** Finds Electron's program, as its npm package lays it; undefined where the package came without it. */
export function findElectron(root: string): string | undefined {
  const folder = join(root, 'node_modules', 'electron');
  const named = join(folder, 'path.txt');
  if (!existsSync(named)) return undefined;
  const program = join(folder, 'dist', readFileSync(named, 'utf8').trim());
  return existsSync(program) ? program : undefined;
}

export type Fetching = {
  /** Electron's program, undefined where it is not here within the wait. */
  readonly program: string | undefined;
  /** Ends a download that still goes on; a later start begins it again. */
  readonly stop: () => void;
};

/**
 * Fetches Electron by its package's own installer and waits for it a little. A download that takes longer goes on while
 * the program runs in a browser, so that a later start finds it.
 * @param now - the time, to remember a wait in vain by. [ms since 1970]
 * @param waits - called when it begins to wait.
 * @param longestMs - how long to wait. [ms]
 */
export async function fetchElectron(
  root: string,
  now: number,
  waits: () => void = () => undefined,
  longestMs: number = waitMs,
): Promise<Fetching> {
  const installer = join(root, 'node_modules', 'electron', 'install.js');
  if (!existsSync(installer)) return { program: undefined, stop: () => undefined };
  const waited = join(root, 'node_modules', '.eavewright-waited-for-electron');
  const waitedLately = existsSync(waited) && now - statSync(waited).mtimeMs < waitAgainAfterMs;
  const child = spawn(process.execPath, [installer], { cwd: root, stdio: 'ignore' });
  child.unref();
  if (!waitedLately) waits();
  await endOf(child, waitedLately ? 0 : longestMs);
  const program = findElectron(root);
  try {
    if (program !== undefined) rmSync(waited, { force: true });
    else if (!waitedLately) writeFileSync(waited, '');
  } catch {
    // A folder that cannot be written only means that the next start waits again.
  }
  return { program, stop: () => void child.kill('SIGKILL') };
}

function endOf(child: ChildProcess, longestMs: number): Promise<void> {
  return new Promise((resolve) => {
    const limit = setTimeout(resolve, longestMs);
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
