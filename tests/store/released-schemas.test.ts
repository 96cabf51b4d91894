import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import BetterSqlite3 from 'better-sqlite3';
import { expect, test } from 'vitest';
import type { CommandOutput } from '../../core/contract/contract.ts';
import { openHost } from '../../electron/open-host.ts';
import { programRoot } from '../../electron/program-root.ts';
import { shopFileName } from '../../electron/store/open-shop.ts';
import { migrations } from '../../migrations/migrations.ts';
import { temporaryFolder } from './temporary-folder.ts';

// Shop files as earlier programs left them, each with the sample job and an estimate saved on it. Made once by the program
// of their day and never changed; the total is the one that the quote of that day bore.
const shops = fileURLToPath(new URL('../../fixtures/shops/', import.meta.url));
const totals: Readonly<Record<string, string>> = {
  'schema-10.eavewright': '7570.00',
  'schema-20.eavewright': '10520.00',
};

function count(database: BetterSqlite3.Database, table: string): unknown {
  return database.prepare(`SELECT count(*) FROM ${table}`).pluck().get();
}

test('there is a shop file of every schema that was released before today’s', () => {
  const released = migrations.map(({ version }) => `schema-${version}.eavewright`);
  expect(readdirSync(shops).toSorted()).toEqual(released.slice(0, -1).toSorted());
  expect(Object.keys(totals)).toEqual(readdirSync(shops));
});

test.each(Object.entries(totals))(
  '%s opens with today’s program and prints its quote again at $%s',
  async (fileName, totalUsd) => {
    const folder = temporaryFolder();
    copyFileSync(join(shops, fileName), join(folder, shopFileName));
    const before = new BetterSqlite3(join(shops, fileName), { readonly: true });
    const tables = ['jobs', 'prices', 'price_items', 'estimates', 'customers'];
    const counts = tables.map((table) => count(before, table));
    before.close();

    const host = openHost(folder, programRoot(), {
      shell: 'loopback',
      saveFile: null,
      searchLimitMs: 50,
    });
    if (!host.ok) throw new Error(host.problem.code);
    const ask = async (command: string, input: unknown): Promise<unknown> => {
      const reply = await host.value.dispatch(command, input);
      if (!reply.ok) throw new Error(`${command}: ${JSON.stringify(reply.problem)}`);
      return reply.value;
    };
    const jobs = (await ask('jobs.list', {
      search: 'quillfeather',
      archived: false,
    })) as CommandOutput<'jobs.list'>;
    const jobId = jobs[0]?.id ?? '';
    const [estimate] = (await ask('estimates.list', { jobId })) as CommandOutput<'estimates.list'>;
    expect(estimate).toMatchObject({ totalUsd, intact: true });
    const paper = (await ask('paper.ofEstimate', {
      estimateId: estimate?.id,
      sheet: 'quote',
      paperSize: 'letter',
    })) as CommandOutput<'paper.ofEstimate'>;
    const path = join(folder, 'quote.pdf');
    writeFileSync(path, Buffer.from(paper.pdfBase64, 'base64'));
    const printed = execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' });
    const [dollars = '', cents = ''] = totalUsd.split('.');
    expect(printed).toContain(`$${Number(dollars).toLocaleString('en-US')}.${cents}`);
    // The job itself still opens, and today's program reckons it.
    await ask('jobs.get', { id: jobId });
    await ask('estimates.save', { jobId });
    host.value.close();

    const after = new BetterSqlite3(join(folder, shopFileName), { readonly: true });
    expect(after.pragma('foreign_key_check')).toEqual([]);
    expect(tables.map((table) => count(after, table))).toEqual(
      counts.map((rows, index) => (tables[index] === 'estimates' ? Number(rows) + 1 : rows)),
    );
    after.close();
    mkdirSync(join(folder, 'backups'), { recursive: true });
    expect(readdirSync(join(folder, 'backups')).join()).toMatch(/before-update-from-\d+\.eavewright/);
  },
);
