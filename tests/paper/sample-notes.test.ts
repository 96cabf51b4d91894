import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { changedText, entryOf } from '../job/changed-job.ts';

const script = fileURLToPath(new URL('../../electron/sample.ts', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'eavewright-notes-'));
const run = (...args: readonly string[]) =>
  spawnSync(process.execPath, [script, '--search', '1', ...args], { encoding: 'utf8' });

it('a job run without a window notes a length that the cut plan goes without, and exits 0 all the same', () => {
  const job = join(folder, 'job.json');
  writeFileSync(
    job,
    changedText((raw) => Object.assign(entryOf(raw.priceList, '2x6-8'), { prices: [] })),
  );
  const { status, stderr } = run('--out', folder, '--job', job);
  expect(stderr).toContain(
    'note: Left out of the cut plan: No price for 2x6 No.2, 8 ft. Add it to the price list.\n',
  );
  expect(stderr).not.toContain('missing from the sums');
  expect(status).toBe(0);
  const { estimate } = JSON.parse(readFileSync(join(folder, 'results.json'), 'utf8')) as {
    estimate: { notes: unknown[]; lacks: unknown[] };
  };
  expect([estimate.notes.length, estimate.lacks.length]).toEqual([1, 0]);
});

it('an entry at the top of a job file that is not known is told without a stray colon in front', () => {
  const job = join(folder, 'strange.json');
  writeFileSync(
    job,
    changedText((raw) => (raw['foo'] = 3)),
  );
  expect(run('--out', folder, '--job', job).stderr).toBe(
    'The job file: Not known here: foo. Check the spelling, or take it out.\n',
  );
});

it('a command that is not understood is answered in whole sentences', () => {
  expect(run('--out').stderr).toMatch(/ missing\. Run with --help to see what is understood\.\n$/);
  expect(run().stderr).toBe('Say where the files go: --out DIR. See --help.\n');
});
