import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import BetterSqlite3 from 'better-sqlite3';
import { expect, test } from 'vitest';
import type { Reply } from '../../core/contract/reply.ts';
import { openHost } from '../../electron/open-host.ts';
import { programRoot } from '../../electron/program-root.ts';
import { shopFileName } from '../../electron/store/open-shop.ts';
import { runChild } from '../store/child.ts';
import { temporaryFolder } from '../store/temporary-folder.ts';
import { randomOf } from './random-of.ts';

const writer = fileURLToPath(new URL('bill-until-stopped.ts', import.meta.url));
const rounds = 4;

/** A shop with the sample job, its quote accepted. */
async function acceptedShop(folder: string): Promise<string> {
  const host = openHost(folder, programRoot(), { shell: 'loopback', saveFile: null });
  if (!host.ok) throw new Error(host.problem.code);
  const ask = async (command: string, input: object): Promise<{ id: string }> => {
    const reply = (await host.value.dispatch(command, input)) as Reply<{ id: string }>;
    if (!reply.ok) throw new Error(`${command}: ${reply.problem.code}`);
    return reply.value;
  };
  const { id: jobId } = await ask('jobs.openSample', {});
  const { id } = await ask('quotes.make', { jobId });
  await ask('quotes.send', { id, knowing: true });
  await ask('quotes.decide', { id, decision: 'accepted', on: '2026-05-18', note: '' });
  host.value.close();
  return jobId;
}

/** The papers in a shop file after a kill, read by SQLite alone. */
function found(folder: string) {
  const database = new BetterSqlite3(join(folder, shopFileName));
  expect(database.pragma('integrity_check', { simple: true })).toBe('ok');
  expect(database.pragma('foreign_key_check')).toEqual([]);
  const papers = database.prepare('SELECT number, json, sha256 FROM invoices ORDER BY number').all() as {
    number: number;
    json: string;
    sha256: string;
  }[];
  const settings = JSON.parse(database.prepare('SELECT json FROM settings').pluck().get() as string) as {
    nextInvoiceNumber: number;
  };
  database.close();
  return { papers, next: settings.nextInvoiceNumber };
}

test('invoices and credits have no gap in their numbers and the settings name the next, wherever the kill falls', async () => {
  const seed = Number(process.env['KILL_SEED'] ?? Date.now() % 1_000_000);
  console.log(`KILL_SEED=${seed}`);
  const random = randomOf(seed);
  const folder = temporaryFolder();
  const jobId = await acceptedShop(folder);
  let acknowledged = 0;
  for (let round = 0; round < rounds; round += 1) {
    const child = runChild([writer, folder, jobId]);
    await child.line((line) => line.startsWith('numbered '));
    await new Promise((resolve) => setTimeout(resolve, 5 + random() * 500));
    child.process.kill('SIGKILL');
    await child.exited;
    const said = child.lines.findLast((line) => line.startsWith('numbered ')) ?? 'numbered 0';
    acknowledged = Number(said.slice('numbered '.length));
    const { papers, next } = found(folder);
    expect(papers.map(({ number }) => number)).toEqual(papers.map((_, index) => index + 1));
    expect([acknowledged, acknowledged + 1]).toContain(papers.length);
    expect(next).toBe(papers.length + 1);
    const hashes = papers.map(({ json }) => createHash('sha256').update(json).digest('hex'));
    expect(hashes).toEqual(papers.map(({ sha256 }) => sha256));
  }
}, 120_000);
