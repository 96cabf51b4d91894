import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it, vi } from 'vitest';
import { formatUsd } from '../../core/units/money.ts';
import { computed, sampleFile, sampleJob } from '../documents/sample.ts';
import { readPdf } from './read-pdf.ts';

// The quote searches the boards of each of the sample's three choices, one after the other.
vi.setConfig({ testTimeout: 180_000 });

const script = fileURLToPath(new URL('../../electron/sample.ts', import.meta.url));

function folder(): string {
  return mkdtempSync(join(tmpdir(), 'eavewright-sample-'));
}

function run(...args: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, '--search', '1', ...args], {
    encoding: 'utf8',
  });
  // On a busy machine a run may take long enough to say what it is doing.
  const lines = stderr.split('\n').filter((line) => line !== '' && !/^(Making|Searching) /.test(line));
  return { status, stdout, lines };
}

function jobFile(
  change: (job: {
    job: { name: string };
    survey: { eaves: { rafters: { readingIn: unknown }[] }[] };
    priceList: { category: string }[];
  }) => void,
): string {
  const job = JSON.parse(readFileSync(sampleFile, 'utf8'));
  change(job);
  const path = join(folder(), 'job.json');
  writeFileSync(path, JSON.stringify(job));
  return path;
}

describe('a job run without a window', () => {
  it('writes every paper and every result, and exits 0 where nothing is missing', () => {
    const out = join(folder(), 'made', 'here');
    expect(run('--out', out, '--paper', 'a4')).toEqual({ status: 0, stdout: '', lines: [] });
    expect(readdirSync(out).sort()).toEqual([
      'calculation.pdf',
      'cut-list.pdf',
      'layout.pdf',
      'lists.pdf',
      'purchase-list.pdf',
      'quote.pdf',
      'results.json',
      'saw-list.pdf',
      'set-up-card.pdf',
      'string-line.pdf',
      'takeoff.pdf',
      'templates.pdf',
    ]);
    const results = JSON.parse(readFileSync(join(out, 'results.json'), 'utf8'));
    const { totalUsd } = results.estimate;
    // Boards are searched here, so it costs what the quick plan says or less.
    expect(Number(totalUsd)).toBeLessThanOrEqual(Number(computed(sampleJob()).estimate.totalUsd));
    expect(Number(totalUsd)).toBeGreaterThan(0);
    const quote = readPdf(readFileSync(join(out, 'quote.pdf')));
    expect(quote[0]?.widthPt).toBeCloseTo(595.28, 1);
    expect(quote.flatMap(({ lines }) => lines)).toContain(`Total ${formatUsd(totalUsd)}`);
  });

  it('tells which entry is wrong and what to do, writes nothing, and exits 1', () => {
    const out = join(folder(), 'none');
    const job = jobFile(({ survey }) => {
      const rafter = survey.eaves[0]?.rafters[2];
      if (rafter !== undefined) rafter.readingIn = `3' 14"`;
    });
    const { status, lines } = run('--out', out, '--job', job);
    expect(status).toBe(1);
    expect(lines).toEqual([
      expect.stringMatching(/^survey\.eaves\.0\.rafters\.2\.readingIn: "3' 14"" has 12 inches or more/),
    ]);
    expect(existsSync(out)).toBe(false);
  });

  it('writes the papers and names what is missing where a price is missing, and exits 1', () => {
    const out = folder();
    const job = jobFile((file) => {
      file.priceList = file.priceList.filter((item) => item.category !== 'edge');
    });
    const { status, lines } = run('--out', out, '--job', job);
    expect(status).toBe(1);
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) expect(line).toMatch(/^missing from the sums: .+\.$/);
    const quote = readPdf(readFileSync(join(out, 'quote.pdf')));
    expect(quote[0]?.lines).toContain('This quote is not complete');
  });

  it('notes characters that no paper can print, and exits 0 all the same', () => {
    const job = jobFile((file) => {
      file.job.name = 'Roof of 山田';
    });
    expect(run('--out', folder(), '--job', job)).toMatchObject({
      status: 0,
      lines: ['note: Some characters could not be printed and show as boxes: 山 (U+5C71), 田 (U+7530).'],
    });
  });

  it('says in one sentence what is wrong with the command itself', () => {
    expect(run()).toMatchObject({ status: 1, lines: [expect.stringContaining('--out DIR')] });
    expect(run('--out', folder(), '--job', join(folder(), 'absent.json'))).toMatchObject({
      status: 1,
      lines: [expect.stringContaining('cannot be read')],
    });
    expect(run('--out', folder(), '--paper', 'a3')).toMatchObject({
      status: 1,
      lines: [expect.stringContaining('--paper letter or --paper a4')],
    });
    expect(
      run(
        '--out',
        join(
          jobFile(() => undefined),
          'x',
        ),
      ),
    ).toMatchObject({
      status: 1,
      lines: [expect.stringContaining('Choose another folder.')],
    });
  });

  it('explains itself', () => {
    const { status, stdout } = run('--help');
    expect(status).toBe(0);
    expect(stdout).toContain('Exit code 1');
  });
});
