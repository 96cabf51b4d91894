import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { expect, test } from 'vitest';
import type { CommandOutput } from '../../core/contract/contract.ts';
import { openHost } from '../../electron/open-host.ts';
import { programRoot } from '../../electron/program-root.ts';
import { shopFileName } from '../../electron/store/open-shop.ts';
import { temporaryFolder } from '../store/temporary-folder.ts';

const text = readFileSync(new URL('../../fixtures/sample-job.json', import.meta.url), 'utf8');

async function withHost<T>(
  folder: string,
  work: (ask: (command: string, input: unknown) => Promise<unknown>) => Promise<T>,
): Promise<T> {
  const host = openHost(folder, programRoot(), {
    shell: 'loopback',
    saveFile: null,
    searchLimitMs: 50,
  });
  if (!host.ok) throw new Error(host.problem.code);
  const done = await work(async (command, input) => {
    const reply = await host.value.dispatch(command, input);
    return reply.ok ? reply.value : reply.problem;
  });
  host.value.close();
  return done;
}

async function savedEstimate(folder: string): Promise<string> {
  return withHost(folder, async (ask) => {
    const { id } = (await ask('jobs.import', { text })) as { id: string };
    await ask('estimates.save', { jobId: id });
    return id;
  });
}

async function isIntact(folder: string, jobId: string): Promise<boolean | undefined> {
  const list = await withHost(
    folder,
    async (ask) => (await ask('estimates.list', { jobId })) as CommandOutput<'estimates.list'>,
  );
  return list[0]?.intact;
}

test('a frozen estimate stays as it was when the job, the prices and the settings change', async () => {
  const folder = temporaryFolder();
  const jobId = await savedEstimate(folder);
  const list = () =>
    withHost(
      folder,
      async (ask) => (await ask('estimates.list', { jobId })) as CommandOutput<'estimates.list'>,
    );
  const before = await list();
  await withHost(folder, async (ask) => {
    const [first] = (await ask('prices.list', {})) as CommandOutput<'prices.list'>;
    await ask('prices.observe', {
      itemId: first?.id,
      observation: { priceUsd: '999', observedOn: '2026-04-20' },
    });
    await ask('jobs.save', { id: jobId, baseRevision: 0, design: { version: 1, eaves: [] } });
  });
  expect(await list()).toEqual(before);
  expect(before[0]?.intact).toBe(true);
});

test.each([
  ['a byte of the record', "UPDATE estimates SET json = replace(json, 'Quillfeather', 'Quillfeathes')"],
  ['the total beside the record', "UPDATE estimates SET total_usd = '1.00'"],
  ['the day beside the record', "UPDATE estimates SET as_of = '2020-01-01'"],
])('%s changed outside of the program is noticed', async (_what, sql) => {
  const folder = temporaryFolder();
  const jobId = await savedEstimate(folder);
  expect(await isIntact(folder, jobId)).toBe(true);
  const database = new BetterSqlite3(join(folder, shopFileName));
  expect(database.prepare(sql).run().changes).toBe(1);
  database.close();
  expect(await isIntact(folder, jobId)).toBe(false);
});

test('a document spoilt outside of the program is told as damage, not as a bug', async () => {
  const folder = temporaryFolder();
  const jobId = await savedEstimate(folder);
  for (const json of ['{"version":1}', 'not json']) {
    const database = new BetterSqlite3(join(folder, shopFileName));
    database.prepare("UPDATE documents SET json = ? WHERE kind = 'survey'").run(json);
    database.close();
    expect(await withHost(folder, (ask) => ask('jobs.get', { id: jobId }))).toEqual({
      code: 'shop-file-damaged',
    });
  }
});
