import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { openHost, type OpenHost } from '../../electron/open-host.ts';
import { programRoot } from '../../electron/program-root.ts';
import { shopFileName } from '../../electron/store/open-shop.ts';

/** A supplier's long file: every item of a full list on five days. */
const items = 20_000;
const days = ['2026-01-05', '2026-02-02', '2026-03-02', '2026-04-06', '2026-05-04'];

/**
 * Times the import of a long file, from its bytes to the disk, beside a bare loop of inserts by the same driver on the same
 * machine in the same run; and how long the host kept others waiting meanwhile.
 * @returns rows a second and milliseconds; `ratio` is rows a second of the import over those of the bare loop.
 */
export async function timePriceImport(): Promise<Readonly<Record<string, number>>> {
  const folder = mkdtempSync(join(tmpdir(), 'eavewright-bench-'));
  const opened = openHost(folder, programRoot(), { shell: 'loopback', saveFile: null });
  if (!opened.ok) throw new Error(opened.problem.code);
  const host = opened.value;
  try {
    const base64 = Buffer.from(longFile(), 'utf8').toString('base64');
    const rows = items * days.length;
    const waits = watchWaits();
    const started = performance.now();
    const file = await ask(host, 'prices.importOpen', { importId: 'bench', base64 });
    const read = performance.now();
    const layout = file['layout'];
    await ask(host, 'prices.importPreview', { importId: 'bench', layout });
    const shown = performance.now();
    const run = await ask(host, 'prices.importRun', { importId: 'bench', layout, rememberAs: null });
    const taken = performance.now();
    const longestWaitMs = waits.stop();
    await ask(host, 'prices.undo', { stepIds: [run['stepId']] });
    const undone = performance.now();
    host.close();
    const bareMs = bareInserts(join(folder, shopFileName));
    // Opening and taking in; the preview is the person's to ask for.
    const importMs = read - started + (taken - shown);
    return {
      rows,
      readMs: round(read - started),
      previewMs: round(shown - read),
      takeInMs: round(taken - shown),
      undoMs: round(undone - taken),
      longestWaitMs: round(longestWaitMs),
      rowsPerSecond: round((rows / importMs) * 1000),
      bareRowsPerSecond: round((rows / bareMs) * 1000),
      ratio: round(bareMs / importMs),
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function longFile(): string {
  const lines = ['code,description,kind,unit,section,length,supplier,price,date'];
  for (let at = 0; at < items; at += 1)
    for (const [index, day] of days.entries())
      lines.push(
        `c${at},"2x6 No. 2, board ${at}",lumber,each,2x6,${8 + 2 * (at % 7)},Fernhollow Lumber,${5 + ((at + index) % 900) / 100},${day}`,
      );
  return `${lines.join('\r\n')}\r\n`;
}

/** The same prices into the same table, one insert after another in one transaction, and nothing else. */
function bareInserts(path: string): number {
  const database = new BetterSqlite3(path);
  database.pragma('journal_mode = WAL');
  database.pragma('synchronous = FULL');
  const item = database.prepare(
    "INSERT INTO price_items VALUES (?, ?, 'lumber', ?, 'each', 'Yard', 1, 0, '2x6', 'No. 2', 12, '', NULL, NULL, NULL, NULL, NULL, '', 1, '')",
  );
  const price = database.prepare("INSERT INTO prices VALUES (?, ?, ?, ?, 'list', NULL)");
  const started = performance.now();
  database.transaction(() => {
    for (let at = 0; at < items; at += 1) item.run(`bare-${at}`, 1_000_000 + at, `Board ${at}`);
    for (let at = 0; at < items * days.length; at += 1)
      price.run(
        10_000_000 + at,
        `bare-${Math.floor(at / days.length)}`,
        String(5 + (at % 900) / 100),
        days[at % days.length],
      );
  })();
  const took = performance.now() - started;
  database.close();
  return took;
}

/** Watches how late a timer comes, which is how long anyone else would have waited. */
function watchWaits(): { readonly stop: () => number } {
  let longest = 0;
  let last = performance.now();
  const timer = setInterval(() => {
    const now = performance.now();
    longest = Math.max(longest, now - last - 5);
    last = now;
  }, 5);
  return {
    stop() {
      clearInterval(timer);
      return Math.max(longest, performance.now() - last - 5);
    },
  };
}

async function ask(
  host: OpenHost,
  command: string,
  input: object,
): Promise<Readonly<Record<string, unknown>>> {
  const reply = await host.dispatch(command, input);
  if (!reply.ok) throw new Error(`${command}: ${JSON.stringify(reply.problem)}`);
  return reply.value as Readonly<Record<string, unknown>>;
}

function round(value: number): number {
  return Number(value.toPrecision(3));
}
