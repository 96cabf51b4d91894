import * as fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { contract, type CommandName } from '../../core/contract/contract.ts';
import { computeJob } from '../../core/job/compute-job.ts';
import { readJobFile } from '../../core/job/read-job-file.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import type { Reply } from '../../core/contract/reply.ts';
import { openHost, type OpenHost } from '../../electron/open-host.ts';
import { programRoot } from '../../electron/program-root.ts';
import { rmSync, mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sampleText } from './contract-asker.ts';

// Whatever comes over the bridge, the host answers with a value or a sentence, says no bug, and stays the host it was.

let folder: string;
let host: OpenHost;
let jobId: string;
const bugs: string[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'eavewright-fuzz-'));
  const opened = openHost(join(folder, 'data'), programRoot(), { shell: 'loopback', saveFile: null });
  if (!opened.ok) throw new Error(opened.problem.code);
  host = opened.value;
  jobId = ((await host.dispatch('jobs.openSample', {})) as { value: { id: string } }).value.id;
  const write = process.stderr.write.bind(process.stderr);
  process.stderr.write = (text: string) => {
    if (text.startsWith('Eavewright: bug')) bugs.push(text);
    return write(text);
  };
});
afterAll(() => {
  host.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Commands that would do what they say with any input: moving and backing up make files, paper takes long. */
const names = (Object.keys(contract) as CommandName[]).filter(
  (name) => !['shop.backUp', 'shop.exportTables', 'jobs.openSample'].includes(name),
);

const hostileText = fc.oneof(
  fc.string({ maxLength: 40 }),
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.constantFrom(
    '__proto__',
    'constructor',
    '../../etc/passwd',
    'C:\\Windows\\x',
    '\u202Eeave\u202C',
    '\u0000',
    '<img src=x onerror=alert(1)>',
    '=1+1',
    '\ud800',
    'ａ'.repeat(5000),
    "'; DROP TABLE jobs; --",
    '1e999',
    'NaN',
    '१२',
    '٣',
    '31.12.2026',
  ),
);

const anyJson: fc.Arbitrary<unknown> = fc.letrec((tie) => ({
  value: fc.oneof(
    { maxDepth: 4 },
    fc.constant(null),
    fc.boolean(),
    fc.oneof(
      fc.integer(),
      fc.double(),
      fc.constantFrom(1e308, -0, 2 ** 53, Number.NaN, Number.POSITIVE_INFINITY),
    ),
    hostileText,
    fc.array(tie('value'), { maxLength: 4 }),
    fc.dictionary(
      fc.oneof(hostileText, fc.constantFrom('id', 'jobId', 'item', 'survey', 'text')),
      tie('value'),
      {
        maxKeys: 4,
      },
    ),
  ),
})).value;

async function answered(name: unknown, input: unknown): Promise<void> {
  const reply = await host.dispatch(name, input);
  const problem = reply.ok ? undefined : reply.problem;
  expect(problem?.code).not.toBe('internal');
  expect(problem === undefined ? '.' : problemSentence(problem)).toMatch(/[.!?]$/);
  // Nothing of the machine comes out: no stack, no path of ours.
  expect(JSON.stringify(problem ?? {})).not.toMatch(/node_modules|at [A-Z]\w+\.|\.ts:/);
  expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
}

test('any value as any command’s input is answered', async () => {
  await fc.assert(
    fc.asyncProperty(fc.constantFrom(...names), anyJson, async (name, input) => answered(name, input)),
    { numRuns: 600 },
  );
  expect(bugs).toEqual([]);
}, 120_000);

test('any value as the command’s name is answered', async () => {
  await fc.assert(
    fc.asyncProperty(anyJson, async (name) => {
      fc.pre(!(typeof name === 'string' && Object.hasOwn(contract, name)));
      expect(await host.dispatch(name, {})).toEqual({
        ok: false,
        problem: { code: 'not-here', what: 'That' },
      });
    }),
    { numRuns: 300 },
  );
});

/** Places in a document where a value can be put in another's stead. */
function pathsOf(value: unknown, path: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  const entries = Array.isArray(value) ? value.entries() : Object.entries(value);
  return [path, ...[...entries].flatMap(([key, inner]) => pathsOf(inner, [...path, key]))];
}

function withAt(value: unknown, path: readonly (string | number)[], put: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return put;
  const copy: Record<string | number, unknown> | unknown[] = Array.isArray(value)
    ? [...(value as unknown[])]
    : { ...(value as Record<string, unknown>) };
  const at = copy as Record<string | number, unknown>;
  at[key] = withAt(at[key], rest, put);
  return copy;
}

test('a job file with any one entry replaced by anything is computed or answered', async () => {
  const file: unknown = JSON.parse(sampleText);
  const paths = pathsOf(file);
  await fc.assert(
    fc.asyncProperty(fc.nat({ max: paths.length - 1 }), anyJson, async (index, put) => {
      const text = JSON.stringify(withAt(file, paths[index] ?? [], put));
      const reply = (await host.dispatch('jobs.import', { text })) as Reply<{ id: string }>;
      expect(reply.ok ? '' : reply.problem.code).not.toBe('internal');
      if (!reply.ok) return;
      const read = readJobFile(text);
      // The page computes what was taken: a bug there would throw.
      if (read.ok) computeJob(read.value);
      const { id } = reply.value;
      await answered('jobs.get', { id });
      await answered('jobs.export', { id });
      await answered('jobs.archive', { id, archived: true });
    }),
    { numRuns: 150 },
  );
  expect(bugs).toEqual([]);
}, 120_000);

test.each([
  ['nothing', ''],
  ['no JSON', 'eave'],
  ['brackets without end', '['.repeat(100_000)],
  ['a number out of range', '{"format":1e999}'],
  ['a file that names the prototype', '{"__proto__":{"polluted":true},"format":"eavewright-job"}'],
  ['bytes of another encoding', Buffer.from('þÿ\u0000{\u0000}', 'latin1').toString('latin1')],
  ['ten megabytes of notes', JSON.stringify({ format: 'eavewright-job', notes: 'x'.repeat(10_000_000) })],
])('a job file of %s is answered with what is wrong', async (_name, text) => {
  const reply = await host.dispatch('jobs.import', { text });
  expect(reply.ok ? 'taken' : problemSentence(reply.problem)).toMatch(/\.$/);
  expect(bugs).toEqual([]);
});

test.each([
  ['nothing', ''],
  ['a quote without end', 'id,category\n"x'],
  ['only quotes', '"'.repeat(100_001)],
  ['a header alone', 'id,category,description,unit,price_usd,observed_on\n'],
  ['the prototype as a column', '__proto__,constructor\n1,2\n'],
  ['one very long line', `id,${'x'.repeat(5_000_000)}\n`],
  ['zero bytes', '\0\0\0'],
  [
    'a day that no calendar has',
    'id,category,description,unit,price_usd,observed_on\na,other,A,each,1,2026-02-30\n',
  ],
])('a price file of %s is answered with what is wrong, and no price comes in', async (_name, text) => {
  const before = await host.dispatch('prices.list', {});
  const reply = await host.dispatch('prices.importCsv', { text });
  expect(reply.ok ? 'taken' : problemSentence(reply.problem)).toMatch(/\.$/);
  expect(await host.dispatch('prices.list', {})).toEqual(before);
  expect(bugs).toEqual([]);
});

test('notes, names and addresses of any script and length are kept as they were typed', async () => {
  for (const name of ['بيت قديم', 'Дом у реки', '古い家', '\u202Eevae', 'a\u0301', '🏠 eave']) {
    const made = (await host.dispatch('jobs.create', { name })) as Reply<{ id: string }>;
    if (!made.ok) throw new Error(made.problem.code);
    const got = (await host.dispatch('jobs.get', { id: made.value.id })) as {
      value: { info: { name: string } };
    };
    expect(got.value.info.name).toBe(name);
  }
});

test('whatever was asked, nothing was written outside of the data folder', () => {
  expect(readdirSync(folder)).toEqual(['data']);
  expect(jobId).not.toBe('');
});
