import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import type { CommandOutput } from '../../core/contract/contract.ts';
import { openHost, type OpenHost } from '../../electron/open-host.ts';
import { programRoot } from '../../electron/program-root.ts';
import { openShop, shopFileName } from '../../electron/store/open-shop.ts';
import { sideBySide } from './measure.ts';

/** A shop after ten years, beside one after its first spring. */
export const largeShop = { jobs: 20_000, items: 2_000, prices: 1_000_000 };
export const smallShop = { jobs: 200, items: 2_000, prices: 10_000 };

/**
 * Times what grows with a shop file: opening, the job list and a search in it, a job's input on a day long past, an item's
 * prices, an online backup; and the memory of the host. One shop beside the other in the same run.
 * @returns medians and their ratios, large over small. [ms, MB]
 */
export async function timeStore(): Promise<Readonly<Record<string, number>>> {
  const shops = { large: fillShop(largeShop), small: fillShop(smallShop) };
  try {
    const opening = await sideBySide(
      { large: () => close(open(shops.large)), small: () => close(open(shops.small)) },
      3,
    );
    const hosts = { large: open(shops.large), small: open(shops.small) };
    const works = (name: keyof typeof hosts) => ({
      [`${name} list`]: () => ask(hosts[name], 'jobs.list', { search: '', archived: false }),
      [`${name} search`]: () => ask(hosts[name], 'jobs.list', { search: 'house 123', archived: false }),
      [`${name} day`]: () => ask(hosts[name], 'prices.list', { on: '2021-06-30' }),
      [`${name} item`]: () => ask(hosts[name], 'prices.ofItem', { itemId: 'item-7' }),
    });
    const times = await sideBySide({ ...works('large'), ...works('small') }, 5);
    const backup = await sideBySide(
      {
        large: () => ask(hosts.large, 'shop.backUp', {}),
        small: () => ask(hosts.small, 'shop.backUp', {}),
      },
      2,
    );
    const memoryMb = process.memoryUsage().rss / 1e6;
    close(hosts.large);
    close(hosts.small);
    return {
      fileMb: round(statSync(join(shops.large, shopFileName)).size / 1e6),
      ...pair('open', opening['large'], opening['small']),
      ...pair('jobList', times['large list'], times['small list']),
      ...pair('search', times['large search'], times['small search']),
      ...pair('pricesOfDay', times['large day'], times['small day']),
      ...pair('pricesOfItem', times['large item'], times['small item']),
      ...pair('backUp', backup['large'], backup['small']),
      memoryMb: round(memoryMb),
    };
  } finally {
    for (const folder of Object.values(shops)) rmSync(folder, { recursive: true, force: true });
  }
}

/** Makes a shop's folder with so many jobs, items and prices spread over ten years. */
export function fillShop({ jobs, items, prices }: typeof largeShop): string {
  const folder = mkdtempSync(join(tmpdir(), 'eavewright-bench-'));
  const made = openShop(folder);
  if (!made.ok) throw new Error(made.problem.code);
  made.value.close();
  const database = new BetterSqlite3(join(folder, shopFileName));
  database.pragma('synchronous = OFF');
  const item = database.prepare(
    "INSERT INTO price_items VALUES (?, ?, 'lumber', ?, 'each', 'Yard', 1, 0, '2x6', 'No. 2', 12, '', NULL, NULL, NULL, NULL, NULL, '', 1, '')",
  );
  const price = database.prepare("INSERT INTO prices VALUES (?, ?, ?, ?, 'list', NULL)");
  const job = database.prepare("INSERT INTO jobs VALUES (?, NULL, ?, ?, '', 0, 0, ?, '2026-04-30', NULL)");
  const document = database.prepare('INSERT INTO documents VALUES (?, ?, 1, ?)');
  database.transaction(() => {
    for (let at = 0; at < items; at += 1) item.run(`item-${at}`, at + 1, `Board ${at}`);
    for (let at = 0; at < prices; at += 1) {
      const day = new Date(Date.UTC(2016, 0, 1) + Math.floor((at / prices) * 3650) * 86_400_000);
      price.run(at + 1, `item-${at % items}`, `${10 + (at % 700) / 100}`, day.toISOString().slice(0, 10));
    }
    for (let at = 0; at < jobs; at += 1) {
      job.run(`job-${at}`, `House ${at}, two eaves`, `${at} Sandpiper Rise`, at + 1);
      document.run(`job-${at}`, 'survey', '{"version":1,"eaves":[]}');
      document.run(`job-${at}`, 'design', '{"version":1,"eaves":[]}');
    }
  })();
  database.close();
  return folder;
}

function open(folder: string): OpenHost {
  const host = openHost(folder, programRoot(), { shell: 'loopback', saveFile: null });
  if (!host.ok) throw new Error(host.problem.code);
  return host.value;
}

function close(host: OpenHost): void {
  host.close();
}

async function ask(host: OpenHost, command: string, input: object): Promise<CommandOutput<'jobs.list'>> {
  const reply = await host.dispatch(command, input);
  if (!reply.ok) throw new Error(`${command}: ${reply.problem.code}`);
  return reply.value as CommandOutput<'jobs.list'>;
}

function pair(name: string, largeMs = Number.NaN, smallMs = Number.NaN): Record<string, number> {
  return {
    [`${name}Ms`]: round(largeMs),
    [`${name}SmallMs`]: round(smallMs),
    [`${name}Ratio`]: round(largeMs / smallMs),
  };
}

function round(value: number): number {
  return Number(value.toPrecision(3));
}
