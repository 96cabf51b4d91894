import { join } from 'node:path';
import { problemSentence } from '../../core/problems/sentence.ts';
import { readBuiltFiles } from '../built-files.ts';
import { serveLoopback } from '../loopback.ts';
import { openHost } from '../open-host.ts';
import { askToShow, onAskedToShow } from '../show-request.ts';
import { watchPage } from './build.ts';

/** A browser that left does not come back after this long; a reload takes much less. [ms] */
const leaveAfterMs = 30_000;

export type ServeOptions = {
  readonly root: string;
  readonly data: string;
  /**
   * Opens an address and answers in what, undefined where nothing could be started. Where given, the program ends when
   * the last page has been gone for a while; else the address is printed and the program stays.
   */
  readonly openBrowser: ((address: string) => Promise<string | undefined>) | undefined;
  /** Settles when the program is told to end. */
  readonly told: Promise<void>;
  /** How long the last page may be gone, for tests. [ms] */
  readonly leaveAfterMs?: number;
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
    if (host.problem.code === 'shop-file-in-use' && options.openBrowser !== undefined && askToShow(data))
      complain('The one that is open was asked to show itself.');
    return 1;
  }
  const toMend = host.value.problem();
  if (toMend !== undefined) complain(`${problemSentence(toMend)} The window shows the backups.`);
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
      if (options.openBrowser === undefined || options.dev || pages > 0) return;
      leaving = setTimeout(() => end(0), options.leaveAfterMs ?? leaveAfterMs);
    },
    guessed() {
      complain('Someone on this machine is guessing the key. Eavewright ends; start it again.');
      end(1);
    },
  });
  void options.told.then(() => end(0));
  const { openBrowser } = options;
  const stopShowing =
    openBrowser === undefined
      ? () => undefined
      : onAskedToShow(data, () => void openBrowser(loopback.openOnceAddress()));

  say(await announcement(options, loopback.address, loopback.openOnceAddress));

  const code = await ended;
  clearTimeout(leaving);
  stopShowing();
  await loopback.close();
  host.value.close();
  await stopWatching?.();
  return code;
}

/** Opens the browser where wanted and says in one line what was done. */
async function announcement(options: ServeOptions, address: string, once: () => string): Promise<string> {
  const because = options.because === '' ? '' : `${options.because} `;
  if (options.openBrowser === undefined) return `${because}${address}`;
  const opened = await options.openBrowser(once());
  return opened === undefined
    ? `${because}Open this address in a browser: ${address}`
    : `${because}Eavewright is open in ${opened}: ${address} (Ctrl+C ends it)`;
}
