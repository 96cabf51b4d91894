import { arch, platform, release } from 'node:os';
import { lastLogLines } from '../log.ts';
import type { Context } from './context.ts';

/**
 * A report for whoever has to find a fault, in words that a person can read before he hands it on: versions, the shop
 * file's size in counts, the log's last lines. Names, addresses, prices and anything else typed stay out of it.
 */
export function writeReport(context: Context): string {
  const { shop } = context;
  const problem = shop.problem();
  const lines = [
    'Eavewright report',
    `Made on: ${context.today()}`,
    `Program: ${context.version}, ${context.shell === 'electron' ? 'own window' : 'browser'}`,
    `Runs on: Node ${process.versions.node}, ${platform()} ${release()} ${arch()}`,
    `Shop file: ${problem === undefined ? 'open' : problem.code}, ${shop.backups().length} backups`,
    ...(problem === undefined ? counts(context) : []),
    '',
    'What went wrong lately, oldest first (where in the program, never what was being worked on):',
    ...lastLogLines(200),
  ];
  return `${lines.join('\n')}\n`;
}

function counts(context: Context): readonly string[] {
  return context.store.tables().map(({ name, rows }) => {
    let count = 0;
    for (const _ of rows) count += 1;
    return `  ${name}: ${count} rows`;
  });
}
