import { strToU8, zipSync } from 'fflate';
import { problemSentence } from '../../core/problems/sentence.ts';
import { guarded } from '../../core/pricing/price-cells.ts';
import { ok } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import type { TableRows } from '../store/open-shop.ts';
import type { Context } from './context.ts';
import { writeReport } from './report.ts';
import { writeCsv } from './csv-text.ts';

type ShopCommands =
  | 'app.report'
  | 'shop.state'
  | 'shop.backUp'
  | 'shop.restore'
  | 'shop.move'
  | 'shop.exportTables';

/** The shop file as a file: where it lives, its backups, and all that it holds for another program. */
export function shopHandlers(context: Context): Pick<Handlers, ShopCommands> {
  const { shop, store, today } = context;
  const sentenceOf = (problem: ReturnType<typeof shop.problem>): string | null =>
    problem === undefined ? null : problemSentence(problem);
  return {
    'app.report': () => ok({ fileName: `eavewright-report-${today()}.txt`, text: writeReport(context) }),
    'shop.state': () =>
      ok({
        folder: shop.folder(),
        problem: sentenceOf(shop.problem()),
        backupProblem: sentenceOf(shop.backupProblem()),
        backups: [...shop.backups()],
      }),
    async 'shop.backUp'() {
      const made = await shop.backUp('by-hand', today());
      return made.ok ? ok({ fileName: made.value }) : made;
    },
    async 'shop.restore'({ fileName }) {
      const restored = await shop.restore(fileName, today());
      return restored.ok ? ok({ keptAs: restored.value }) : restored;
    },
    async 'shop.move'({ folder }) {
      const moved = await shop.moveTo(folder);
      return moved.ok ? ok({ folder: moved.value }) : moved;
    },
    'shop.exportTables': () => {
      const files = store.tables().map((table) => [`${table.name}.csv`, strToU8(csvOf(table))] as const);
      const zip = zipSync(Object.fromEntries(files));
      return ok({
        fileName: `eavewright-tables-${today()}.zip`,
        base64: Buffer.from(zip).toString('base64'),
      });
    },
  };
}

function csvOf({ columns, rows }: TableRows): string {
  return writeCsv([columns, ...Array.from(rows, (row) => row.map((value) => guardedCell(textOf(value))))]);
}

function textOf(value: unknown): string {
  if (value === null || value === undefined) return '';
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'bigint'
    ? String(value)
    : Buffer.from(value as Uint8Array).toString('base64');
}

/** A spreadsheet must not run what someone typed; a number stays one. */
function guardedCell(text: string): string {
  return /^-?\d+(?:\.\d+)?$/.test(text) ? text : guarded(text);
}
