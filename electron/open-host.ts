import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { searchLimitMs } from '../core/job/unsettled-plans.ts';
import type { Problem } from '../core/problems/problem.ts';
import { ok, type Result } from '../core/result.ts';
import { civilDateOf } from './clock.ts';
import { createHost, type Host } from './host.ts';
import { keepLogIn, logBug } from './log.ts';
import type { Context } from './services/context.ts';
import { followSign } from './store/moved-folder.ts';
import { keepShop } from './store/shop-keeper.ts';
import { startCuttingPort } from './workers/cutting-port.ts';
import { createProver } from './workers/prover.ts';

export type OpenHost = Host & {
  /** What is wrong with the shop file where it has to be restored first. */
  problem(): Problem | undefined;
  close(): void;
};

/** A program left open over night makes the next day's backup within this time. [ms] */
const lookForNewDayMs = 3_600_000;

/**
 * Opens the shop file of a folder and puts the program on it.
 * @param folder - the data folder.
 * @param root - the program's own folder.
 * @param shell - what only the shell can do; and, for tests, a shorter search for boards. [ms]
 */
export function openHost(
  folder: string,
  root: string,
  shell: Pick<Context, 'shell' | 'saveFile'> & Partial<Pick<Context, 'searchLimitMs'>>,
): Result<OpenHost, Problem> {
  const kept = keepShop(followSign(folder));
  if (!kept.ok) return kept;
  const shop = kept.value;
  keepLogIn(shop.folder());
  const prover = createProver({
    startPort: startCuttingPort,
    reportBug: (error) => logBug('cutting', error),
  });
  const host = createHost(
    {
      ...shell,
      store: shop.store,
      shop,
      prover,
      searchLimitMs: shell.searchLimitMs ?? searchLimitMs,
      version: programVersion(root),
      today,
      newId: randomUUID,
      sampleJob: () => readFile(join(root, 'fixtures', 'sample-job.json'), 'utf8'),
      sampleHistory: () => readFile(join(root, 'fixtures', 'sample-history.json'), 'utf8'),
    },
    logBug,
  );
  const backUp = (): void => void shop.backUpDaily(today());
  backUp();
  const daily = setInterval(backUp, lookForNewDayMs).unref();
  return ok({
    ...host,
    problem: shop.problem,
    close() {
      clearInterval(daily);
      shop.close();
      void prover.close();
    },
  });
}

function programVersion(root: string): string {
  const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version?: unknown };
  return typeof manifest.version === 'string' ? manifest.version : '0';
}

/** The civil day where the machine stands. */
function today(): string {
  return civilDateOf(new Date());
}
