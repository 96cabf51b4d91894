import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import BetterSqlite3 from 'better-sqlite3';
import { expect, test } from 'vitest';
import type { CommandOutput } from '../../core/contract/contract.ts';
import { openHost } from '../../electron/open-host.ts';
import { programRoot } from '../../electron/program-root.ts';
import { shopFileName } from '../../electron/store/open-shop.ts';
import { runChild } from '../store/child.ts';
import { temporaryFolder } from '../store/temporary-folder.ts';
import { randomOf } from './random-of.ts';

const writer = fileURLToPath(new URL('save-until-killed.ts', import.meta.url));
const leastRounds = 4;
const enoughMs = 10_000;

test('nothing that was acknowledged is lost when the program is killed, and nothing is half there', async () => {
  const seed = Number(process.env['KILL_SEED'] ?? Date.now() % 1_000_000);
  console.log(`KILL_SEED=${seed}`);
  const random = randomOf(seed);
  const folder = temporaryFolder();
  let saves = 0;
  const began = performance.now();
  let round = 0;
  while (round < leastRounds || (round < 25 && performance.now() - began < enoughMs)) {
    round += 1;
    const child = runChild([writer, folder]);
    await child.line((line) => line.startsWith('saved '));
    await new Promise((resolve) => setTimeout(resolve, 5 + random() * 150));
    child.process.kill('SIGKILL');
    await child.exited;
    const acknowledged = Number(child.lines.findLast((line) => /^saved \d+$/.test(line))?.slice(6));

    const host = openHost(folder, programRoot(), { shell: 'loopback', saveFile: null });
    if (!host.ok) throw new Error(`round ${round}: ${host.problem.code}`);
    const list = await host.value.dispatch('jobs.list', { search: '', archived: false });
    const [{ id } = { id: '' }] = (list as { value: CommandOutput<'jobs.list'> }).value;
    const got = await host.value.dispatch('jobs.get', { id });
    const job = (got as { value: CommandOutput<'jobs.get'> }).value;
    host.value.close();

    // The last save may have reached the disk before its answer reached us; it never stops between.
    expect([acknowledged, acknowledged + 1]).toContain(job.revision);
    const number = String(job.revision);
    expect([job.info.name, job.survey.notes, job.design.scopeNote, job.drafts['number']]).toEqual([
      number,
      number,
      number,
      number,
    ]);
    saves = job.revision;
  }
  const database = new BetterSqlite3(join(folder, shopFileName), { readonly: true });
  expect(database.pragma('integrity_check', { simple: true })).toBe('ok');
  expect(database.pragma('foreign_key_check')).toEqual([]);
  database.close();
  expect(saves).toBeGreaterThanOrEqual(round);
}, 120_000);
