import { parseArgs } from 'node:util';

export type StartArguments = {
  readonly data: string | undefined;
  readonly shell: 'electron' | 'loopback' | undefined;
  readonly open: boolean;
  readonly dev: boolean;
  readonly help: boolean;
};

export const usage = `Eavewright: estimating for the carpenter who gives older houses an eave.

  npm start [-- options]

  --shell electron|loopback  which window; without it, Electron where it is here, else a browser
  --data DIR                 folder of the shop file (or EAVEWRIGHT_DATA); without it, your own data folder
  --no-open                  serve the program and print its address, open nothing
  --dev                      serve it and rebuild the page at each change of a source
  --help                     this text
`;

/**
 * Reads the command line.
 * @returns the arguments; or one line that says what is wrong with them.
 */
export function readArguments(args: readonly string[]): StartArguments | string {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: {
        data: { type: 'string' },
        shell: { type: 'string' },
        'no-open': { type: 'boolean', default: false },
        dev: { type: 'boolean', default: false },
        help: { type: 'boolean', default: false },
      },
    });
    const { shell } = values;
    if (shell !== undefined && shell !== 'electron' && shell !== 'loopback') {
      return `--shell is electron or loopback, not "${shell}".`;
    }
    return { data: values.data, shell, open: !values['no-open'], dev: values.dev, help: values.help };
  } catch (error) {
    return error instanceof Error ? (error.message.split('\n')[0] ?? '') : 'The command line cannot be read.';
  }
}
