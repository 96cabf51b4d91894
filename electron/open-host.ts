import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Problem } from '../core/problems/problem.ts';
import { ok, type Result } from '../core/result.ts';
import { civilDateOf } from './clock.ts';
import { createHost, type Host } from './host.ts';
import { logBug } from './log.ts';
import type { Context } from './services/context.ts';
import { openShop } from './store/open-shop.ts';

export type OpenHost = Host & { close(): void };

/**
 * Opens the shop file of a folder and puts the program on it.
 * @param folder - the data folder.
 * @param root - the program's own folder.
 * @param shell - what only the shell can do.
 */
export function openHost(
  folder: string,
  root: string,
  shell: Pick<Context, 'shell' | 'saveFile'>,
): Result<OpenHost, Problem> {
  const store = openShop(folder);
  if (!store.ok) return store;
  const host = createHost(
    {
      ...shell,
      store: store.value,
      version: programVersion(root),
      today: () => civilDateOf(new Date()),
      newId: randomUUID,
      sampleJob: () => readFile(join(root, 'fixtures', 'sample-job.json'), 'utf8'),
    },
    logBug,
  );
  return ok({ ...host, close: () => store.value.close() });
}

function programVersion(root: string): string {
  const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version?: unknown };
  return typeof manifest.version === 'string' ? manifest.version : '0';
}
