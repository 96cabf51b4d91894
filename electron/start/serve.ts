import { join } from 'node:path';
import { problemSentence } from '../../core/problems/sentence.ts';
import { readBuiltFiles } from '../built-files.ts';
import { serveLoopback } from '../loopback.ts';
import { openHost } from '../open-host.ts';
import { openInBrowser } from './browser.ts';
import { watchPage } from './build.ts';

/** A browser that left does not come back after this long; a reload takes much less. [ms] */
const leaveAfterMs = 30_000;

export type ServeOptions = {
  readonly root: string;
  readonly data: string;
  /** True to open a browser and to end when its last page has been gone for a while. */
  readonly open: boolean;
  readonly dev: boolean;
  /** Why the program is served rather than shown in a window of its own; blank when that was asked for. */
  readonly because: string;
  readonly say: (line: string) => void;
  readonly complain: (line: string) => void;
};

/**
 * Serves the program on this machine until it is told to end.
 * @returns the exit code.
 */
export async function serve(options: ServeOptions): Promise<number> {
  const { root, data, say, complain } = options;
  const host = openHost(data, root, { shell: 'loopback', saveFile: null });
  if (!host.ok) {
    complain(problemSentence(host.problem));
    return 1;
  }
  const folder = join(root, 'dist', 'renderer');
  let files = new Map() as ReturnType<typeof readBuiltFiles>;
  const readAgain = (): void => {
    files = readBuiltFiles(folder);
  };
  const stopWatching = options.dev ? await watchPage(root, readAgain) : undefined;
  readAgain();

  const { promise: ended, resolve: end } = Promise.withResolvers<number>();
  let leaving: NodeJS.Timeout | undefined;
  const loopback = await serveLoopback({
    host: host.value,
    files: () => files,
    pagesChanged(pages) {
      clearTimeout(leaving);
      if (options.open && !options.dev && pages === 0) leaving = setTimeout(() => end(0), leaveAfterMs);
    },
    guessed() {
      complain('Someone on this machine is guessing the key. Eavewright ends; start it again.');
      end(1);
    },
  });
  process.once('SIGINT', () => end(0));
  process.once('SIGTERM', () => end(0));
  process.once('SIGHUP', () => end(0));

  say(await announcement(options, loopback.address, loopback.openOnceAddress));

  const code = await ended;
  clearTimeout(leaving);
  await loopback.close();
  host.value.close();
  await stopWatching?.();
  return code;
}

/** Opens the browser where wanted and says in one line what was done. */
async function announcement(options: ServeOptions, address: string, once: () => string): Promise<string> {
  const because = options.because === '' ? '' : `${options.because} `;
  if (!options.open) return `${because}${address}`;
  const opened = await openInBrowser(once(), process.env, process.platform);
  return opened === undefined
    ? `${because}Open this address in a browser: ${address}`
    : `${because}Eavewright is open in ${opened}: ${address} (Ctrl+C ends it)`;
}
