import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { expect, test } from 'vitest';
import { openHost } from '../../electron/open-host.ts';
import { programRoot } from '../../electron/program-root.ts';
import { shopFileName } from '../../electron/store/open-shop.ts';
import { temporaryFolder } from '../store/temporary-folder.ts';

type Ask = (command: string, input: object) => Promise<{ id: string; code?: string }>;

async function withHost<T>(folder: string, work: (ask: Ask) => Promise<T>): Promise<T> {
  const host = openHost(folder, programRoot(), { shell: 'loopback', saveFile: null, searchLimitMs: 50 });
  if (!host.ok) throw new Error(host.problem.code);
  const done = await work(async (command, input) => {
    const reply = await host.value.dispatch(command, input);
    return (reply.ok ? reply.value : reply.problem) as { id: string };
  });
  host.value.close();
  return done;
}

const day = '2026-05-20';

/** A shop with a change order that is approved, an invoice and a credit on the sample job. */
function billedShop(folder: string): Promise<string> {
  return withHost(folder, async (ask) => {
    const { id: jobId } = await ask('jobs.openSample', {});
    const quote = await ask('quotes.make', { jobId });
    await ask('quotes.send', { id: quote.id, knowing: true });
    await ask('quotes.decide', { id: quote.id, decision: 'accepted', on: day, note: '' });
    const line = {
      id: 'a',
      phase: 'Framing',
      kind: 'labour',
      description: 'Rotted tail repaired',
      quantity: '3',
      unit: 'each',
      unitPriceUsd: '85',
    };
    const change = await ask('billing.saveChange', {
      jobId,
      id: null,
      order: { reason: 'hidden', lines: [line] },
    });
    await ask('billing.moveChange', { id: change.id, to: 'approved', on: day });
    const invoice = await ask('billing.issue', {
      jobId,
      ask: { kind: 'deposit', depositUsd: '500' },
      issuedOn: day,
    });
    await ask('billing.credit', { invoiceId: invoice.id, amountUsd: '100', reason: 'Trial', issuedOn: day });
    return jobId;
  });
}

const spoilers = [
  // A figure in an invoice; the total, the day and what a credit is for beside it.
  "UPDATE invoices SET json = replace(json, '500.00', '900.00') WHERE number = 1",
  "UPDATE invoices SET total_usd = '1.00' WHERE number = 1",
  "UPDATE invoices SET due_on = '2030-01-01' WHERE number = 1",
  'UPDATE invoices SET credits = NULL WHERE number = 2',
  // A price in an approved change order, and the day it was approved beside it.
  `UPDATE change_orders SET json = replace(json, '"85"', '"95"')`,
  "UPDATE change_orders SET decided_on = '2026-01-01'",
];

test('what was issued or approved and was changed outside of the program is noticed before anything is built on it', async () => {
  const shop = temporaryFolder();
  const jobId = await billedShop(shop);
  const open = (folder: string) => withHost(folder, (ask) => ask('billing.get', { jobId }));
  const issue = (folder: string) =>
    withHost(folder, (ask) =>
      ask('billing.issue', { jobId, ask: { kind: 'deposit', depositUsd: '1' }, issuedOn: day }),
    );
  expect((await open(shop)).code).toBeUndefined();
  for (const sql of spoilers) {
    const folder = temporaryFolder();
    copyFileSync(join(shop, shopFileName), join(folder, shopFileName));
    const database = new BetterSqlite3(join(folder, shopFileName));
    expect({ sql, changes: database.prepare(sql).run().changes }).toEqual({ sql, changes: 1 });
    database.close();
    const opened = (await open(folder)).code;
    const issued = (await issue(folder)).code;
    expect({ sql, opened, issued }).toEqual({
      sql,
      opened: 'shop-file-damaged',
      issued: 'shop-file-damaged',
    });
  }
}, 120_000);
