import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { dataFolder } from './data-folder.ts';
import { programRoot } from './program-root.ts';
import { readArguments, usage, type StartArguments } from './start/arguments.ts';
import { hasDisplay, openInBrowser } from './start/browser.ts';
import { buildElectronIfStale, buildPageIfStale } from './start/build.ts';
import { fetchElectron, findElectron, runElectron } from './start/electron-program.ts';
import { pickShell } from './start/pick-shell.ts';
import { serve } from './start/serve.ts';

const say = (line: string): void => console.log(line);
const complain = (line: string): void => console.error(line);

/** Starts the program: builds what is stale, picks the shell, says in one line what it did. */
async function start(args: StartArguments): Promise<number> {
  const root = programRoot();
  const data = dataFolder(args.data, process.env, process.platform);
  if (!args.dev && !(await pageIsBuilt(root))) return 1;
  return pickShell(args, {
    display: hasDisplay(process.env, process.platform),
    findElectron: () => findElectron(root),
    async fetchElectron() {
      const { program, stop } = await fetchElectron(root, Date.now(), () =>
        complain('Fetching Electron; this start waits at most 20 seconds for it.'),
      );
      process.once('exit', stop);
      return program;
    },
    async runElectron(program) {
      await buildElectronIfStale(root);
      return runElectron(program, root, data, Date.now);
    },
    serve: (open, because) =>
      serve({
        root,
        data,
        because,
        dev: args.dev,
        openBrowser: open ? (address) => openInBrowser(address, process.env, process.platform) : undefined,
        told: untilToldToEnd(),
        say,
        complain,
      }),
    say,
  });
}

/** Builds the page where needed; a page that was built before is better than none, and which it is gets said. */
async function pageIsBuilt(root: string): Promise<boolean> {
  try {
    await buildPageIfStale(root);
    return true;
  } catch (error) {
    const why = error instanceof Error ? error.message : 'it is not known why';
    complain(`The page could not be built: ${why}`);
    const built = existsSync(join(root, 'dist', 'renderer', 'index.html'));
    if (built) complain('The page as it was built before is used.');
    return built;
  }
}

/** Settles when the person, the terminal or the system tells the program to end. */
function untilToldToEnd(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => resolve());
  });
}

const args = readArguments(process.argv.slice(2));
if (typeof args === 'string') {
  complain(`${args}\n\n${usage}`);
  process.exitCode = 2;
} else if (args.help) {
  say(usage);
} else {
  process.exit(await start(args));
}
