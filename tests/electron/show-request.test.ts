import { expect, test, vi } from 'vitest';
import { serve } from '../../electron/start/serve.ts';
import { askToShow, onAskedToShow } from '../../electron/show-request.ts';
import { programRoot } from '../../electron/program-root.ts';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { temporaryFolder } from '../store/temporary-folder.ts';

test('a program that is open shows itself whenever another asks, and no longer once it has stopped looking', async () => {
  const folder = temporaryFolder();
  let shown = 0;
  const stop = onAskedToShow(folder, () => {
    shown += 1;
  });
  expect(askToShow(folder)).toBe(true);
  await vi.waitFor(() => expect(shown).toBe(1), { timeout: 10_000 });
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(askToShow(folder)).toBe(true);
  await vi.waitFor(() => expect(shown).toBe(2), { timeout: 10_000 });
  stop();
});

test('a folder that is not there cannot be asked through', () => {
  expect(askToShow(join(temporaryFolder(), 'gone'))).toBe(false);
});

test('a second start on the same shop file says so and asks the first to show itself; no key passes between', async () => {
  const data = temporaryFolder();
  const { promise: told, resolve: end } = Promise.withResolvers<void>();
  const opened: string[] = [];
  const complaints: string[] = [];
  const start = (openBrowser: (address: string) => Promise<string | undefined>, until: Promise<void>) =>
    serve({
      root: programRoot(),
      data,
      openBrowser,
      told: until,
      dev: false,
      because: '',
      say: () => undefined,
      complain: (line) => complaints.push(line),
    });
  const first = start((address) => {
    opened.push(address);
    return Promise.resolve('a browser');
  }, told);
  await vi.waitFor(() => expect(opened).toHaveLength(1), { timeout: 20_000 });
  const second = await start(() => Promise.reject(new Error('the second opens nothing')), told);
  expect(second).toBe(1);
  expect(complaints).toEqual([
    expect.stringContaining('open in another Eavewright'),
    'The one that is open was asked to show itself.',
  ]);
  expect(readFileSync(join(data, 'show-yourself'), 'utf8')).toBe(`${process.pid}\n`);
  await vi.waitFor(() => expect(opened).toHaveLength(2), { timeout: 10_000 });
  end();
  expect(await first).toBe(0);
});
