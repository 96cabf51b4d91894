import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const startLimitMs = 60_000;

/** The real program, served on loopback from a shop folder of its own. */
export type RunningProgram = {
  readonly address: string;
  readonly folder: string;
  /** Ends it as a power cut would. */
  readonly kill: () => Promise<void>;
  /** Lets it answer nothing for a while, and go on. */
  readonly freeze: () => void;
  readonly thaw: () => void;
  /** Ends it and clears its folder away. */
  readonly remove: () => Promise<void>;
};

/**
 * Starts the program as a person without Electron would.
 * @param folder - the shop's folder; a new one where left out.
 */
export async function startProgram(
  folder = mkdtempSync(join(tmpdir(), 'eavewright-app-')),
): Promise<RunningProgram> {
  const child = spawn(
    process.execPath,
    ['electron/start.ts', '--shell', 'loopback', '--no-open', '--data', folder],
    { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] },
  );
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const end = async (signal: NodeJS.Signals): Promise<void> => {
    child.kill(signal);
    await ended;
  };
  return {
    address: await addressOf(child),
    folder,
    kill: () => end('SIGKILL'),
    freeze: () => child.kill('SIGSTOP'),
    thaw: () => child.kill('SIGCONT'),
    async remove() {
      await end('SIGKILL');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    const fail = (why: string): void => reject(new Error(`the program did not start (${why}): ${said}`));
    const limit = setTimeout(() => fail('too slow'), startLimitMs);
    const hear = (chunk: Buffer): void => {
      said += chunk.toString('utf8');
      const address = /http:\/\/127\.0\.0\.1:\d+\/#t=[\w-]+/.exec(said)?.[0];
      if (address === undefined) return;
      clearTimeout(limit);
      resolve(address);
    };
    child.stdout?.on('data', hear);
    child.stderr?.on('data', hear);
    child.once('exit', (code) => {
      clearTimeout(limit);
      fail(`ended with ${code}`);
    });
  });
}
