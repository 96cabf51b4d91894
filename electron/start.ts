import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { dataFolder } from './data-folder.ts';
import { programRoot } from './program-root.ts';
import { readArguments, usage, type StartArguments } from './start/arguments.ts';
import { hasDisplay } from './start/browser.ts';
import { buildElectronIfStale, buildPageIfStale } from './start/build.ts';
import { fetchElectron, findElectron, runElectron } from './start/electron-program.ts';
import { serve } from './start/serve.ts';

const say = (line: string): void => console.log(line);
const complain = (line: string): void => console.error(line);

/** Starts the program: builds what is stale, picks the shell, says in one line what it did. */
async function start(args: StartArguments): Promise<number> {
  const root = programRoot();
  const data = dataFolder(args.data, process.env, process.platform);
  if (!args.dev && !(await pageIsBuilt(root))) return 1;
  const display = hasDisplay(process.env, process.platform);
  const served = { root, data, dev: args.dev, open: args.open && display, say, complain };

  if (args.shell === 'loopback' || args.dev || !args.open) return serve({ ...served, because: '' });
  if (!display) return serve({ ...served, because: 'There is no display here, so this is served:' });

  const program = findElectron(root) ?? (await fetchElectron(root, Date.now()));
  if (program === undefined) {
    return serve({
      ...served,
      because: 'Electron is not here and could not be fetched, so a browser is used.',
    });
  }
  await buildElectronIfStale(root);
  say('Eavewright is open in its own window.');
  const code = await runElectron(program, root, data, Date.now);
  if (code !== 'not-started') return code;
  return serve({ ...served, because: 'Electron could not start here, so a browser is used.' });
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

const args = readArguments(process.argv.slice(2));
if (typeof args === 'string') {
  complain(`${args}\n\n${usage}`);
  process.exitCode = 2;
} else if (args.help) {
  say(usage);
} else {
  process.exit(await start(args));
}
