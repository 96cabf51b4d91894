import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import BetterSqlite3 from 'better-sqlite3';
import { expect, test } from 'vitest';
import { openHost } from '../../electron/open-host.ts';
import { programRoot } from '../../electron/program-root.ts';
import { shopFileName } from '../../electron/store/open-shop.ts';
import { runChild } from '../store/child.ts';
import { temporaryFolder } from '../store/temporary-folder.ts';
import { randomOf } from './random-of.ts';

const writer = fileURLToPath(new URL('write-until-stopped.ts', import.meta.url));
const rounds = 5;

/** The last number that a child said it had done. */
function lastOf(lines: readonly string[], what: string): number {
  const line = lines.findLast((one) => one.startsWith(`${what} `));
  return line === undefined ? 0 : Number(line.slice(what.length + 1));
}

/** What stands in a shop file at rest or after a kill, read by SQLite alone. */
function found(folder: string) {
  const database = new BetterSqlite3(join(folder, shopFileName));
  expect(database.pragma('integrity_check', { simple: true })).toBe('ok');
  expect(database.pragma('foreign_key_check')).toEqual([]);
  const newest = database
    .prepare(
      `SELECT price_usd, count(*) AS items FROM prices
       WHERE sequence IN (SELECT max(sequence) FROM prices WHERE item_id LIKE 'lath-%' GROUP BY item_id)
       GROUP BY price_usd`,
    )
    .all() as { price_usd: string; items: number }[];
  const estimates = database
    .prepare('SELECT number FROM estimates ORDER BY number')
    .pluck()
    .all() as number[];
  const perItem = database
    .prepare("SELECT count(*) FROM prices WHERE item_id LIKE 'lath-%' GROUP BY item_id")
    .pluck()
    .all() as number[];
  database.close();
  return { newest, estimates, perItem };
}

async function sampleShop(folder: string): Promise<string> {
  const host = openHost(folder, programRoot(), { shell: 'loopback', saveFile: null });
  if (!host.ok) throw new Error(host.problem.code);
  const opened = (await host.value.dispatch('jobs.openSample', {})) as { value: { id: string } };
  host.value.close();
  return opened.value.id;
}

test('a hundred prices come in together or not at all, and estimates have no gap, wherever the kill falls', async () => {
  const seed = Number(process.env['KILL_SEED'] ?? Date.now() % 1_000_000);
  console.log(`KILL_SEED=${seed}`);
  const random = randomOf(seed);
  const folder = temporaryFolder();
  const jobId = await sampleShop(folder);
  let imported = 0;
  let saved = 0;
  for (let round = 0; round < rounds; round += 1) {
    const child = runChild([writer, folder, String(imported + 1), jobId]);
    await child.line((line) => line.startsWith('imported '));
    await new Promise((resolve) => setTimeout(resolve, 5 + random() * 600));
    child.process.kill('SIGKILL');
    await child.exited;
    expect(child.lines.filter((line) => line.startsWith('refused'))).toEqual([]);
    imported = lastOf(child.lines, 'imported');
    saved = Math.max(saved, lastOf(child.lines, 'saved'));

    const { newest, estimates, perItem } = found(folder);
    expect(newest).toHaveLength(1);
    expect(newest[0]?.items).toBe(100);
    const standing = Number(newest[0]?.price_usd);
    expect([imported, imported + 1]).toContain(standing);
    // Every item has had as many prices as every other: no import left half of its rows.
    expect(new Set(perItem).size).toBe(1);
    expect(estimates).toEqual(Array.from({ length: estimates.length }, (_, index) => index + 1));
    expect([saved, saved + 1]).toContain(estimates.length);
    [imported, saved] = [standing, estimates.length];
  }
}, 120_000);

// A limit on the size of any file stands in for a full disk: SQLite meets the same failed write.
test.skipIf(process.platform === 'win32')(
  'on a disk that fills up the import is refused whole with a sentence, and everything before it stands',
  () => {
    const folder = temporaryFolder();
    const made = openHost(folder, programRoot(), { shell: 'loopback', saveFile: null });
    if (!made.ok) throw new Error(made.problem.code);
    made.value.close();
    const run = spawnSync(
      'bash',
      ['-c', `ulimit -f 400; exec "${process.execPath}" "$@"`, 'bash', writer, folder],
      {
        encoding: 'utf8',
        timeout: 60_000,
      },
    );
    const lines = run.stdout.split('\n');
    expect(lines).toContain('refused disk-full');
    const imported = lastOf(lines, 'imported');
    expect(imported).toBeGreaterThan(0);
    const { newest, perItem } = found(folder);
    expect(newest).toEqual([{ price_usd: `${imported}.00`, items: 100 }]);
    expect(new Set(perItem)).toEqual(new Set([imported]));
    // With room again it goes on.
    const again = openHost(folder, programRoot(), { shell: 'loopback', saveFile: null });
    expect(again.ok).toBe(true);
    if (again.ok) again.value.close();
  },
);
