import type { StartArguments } from './arguments.ts';

/** What the choice of a shell needs to know and do. */
export type World = {
  /** True where a window can be shown. */
  readonly display: boolean;
  readonly findElectron: () => string | undefined;
  /** Fetches Electron and waits for it a little. */
  readonly fetchElectron: () => Promise<string | undefined>;
  readonly runElectron: (program: string) => Promise<number | 'not-started'>;
  /** Serves the program; `because` says why it is not in a window of its own, blank where that was asked for. */
  readonly serve: (open: boolean, because: string) => Promise<number>;
  readonly say: (line: string) => void;
};

/**
 * Runs the program in the shell that was asked for, else in Electron where it can be had, else in a browser.
 * @returns the exit code.
 */
export async function pickShell(args: StartArguments, world: World): Promise<number> {
  if (!args.open) return world.serve(false, '');
  if (!world.display) return world.serve(false, 'There is no display here; open this address in a browser:');
  if (args.shell === 'loopback' || args.dev) return world.serve(true, '');

  const program = world.findElectron() ?? (await world.fetchElectron());
  if (program === undefined) {
    return world.serve(true, 'Electron is not here, so a browser is used.');
  }
  world.say('Eavewright opens in its own window.');
  const code = await world.runElectron(program);
  if (code !== 'not-started') return code;
  return world.serve(true, 'Electron could not start here, so a browser is used.');
}
