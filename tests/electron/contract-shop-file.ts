import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import type { Asker } from './contract-asker.ts';

/** The shop file as a file: backups, moving, everything as CSV, the report. Runs on the shop that the others filled. */
export function checkShopFile(asker: Asker): void {
  const { value, problem } = asker;
  test('a backup by hand stands in the list, and brings back what was when it is restored', async () => {
    const { fileName } = await value('shop.backUp', {});
    const state = await value('shop.state', {});
    expect(state).toMatchObject({ problem: null, backupProblem: null });
    expect(state.backups.map((one) => one.fileName)).toContain(fileName);
    const { id } = await value('jobs.create', { name: 'Only after the backup' });
    const { keptAs } = await value('shop.restore', { fileName });
    expect(keptAs).toContain('before-restore');
    expect(await problem('jobs.get', { id })).toEqual({ code: 'not-found', what: 'job' });
  });

  test('a backup that is not in the list is not restored, whatever its name says', async () => {
    expect(await problem('shop.restore', { fileName: '../shop.eavewright' })).toEqual({
      code: 'not-found',
      what: 'backup',
    });
  });

  test('the shop file moves to a folder of his choice and goes on there; half a path is answered at the field', async () => {
    expect(await problem('shop.move', { folder: 'somewhere' })).toMatchObject({
      code: 'entry-invalid',
      field: 'folder',
    });
    const before = await value('jobs.list', { search: '', archived: false });
    const folder = join(mkdtempSync(join(tmpdir(), 'eavewright-')), 'moved');
    expect(await value('shop.move', { folder })).toEqual({ folder });
    expect((await value('shop.state', {})).folder).toBe(folder);
    expect(await value('jobs.list', { search: '', archived: false })).toEqual(before);
  });

  test('every table comes out as CSV, and a cell that a spreadsheet would run comes out as text', async () => {
    await value('jobs.create', { name: '=HYPERLINK("x")' });
    const { fileName, base64 } = await value('shop.exportTables', {});
    expect(fileName).toMatch(/^eavewright-tables-\d{4}-\d{2}-\d{2}\.zip$/);
    const files = unzipSync(Buffer.from(base64, 'base64'));
    expect(Object.keys(files)).toEqual(expect.arrayContaining(['jobs.csv', 'prices.csv', 'settings.csv']));
    const jobs = strFromU8(files['jobs.csv'] ?? new Uint8Array());
    expect(jobs).toContain(`"'=HYPERLINK(""x"")"`);
    expect(jobs.split('\r\n')[0]).toContain('"site_address"');
  });

  test('the report says versions and counts, and nothing of a customer', async () => {
    const { text, fileName } = await value('app.report', {});
    expect(fileName).toMatch(/^eavewright-report-.*\.txt$/);
    expect(text).toMatch(/Shop file: open, \d+ backups/);
    expect(text).toMatch(/jobs: \d+ rows/);
    for (const { name, customerName, siteAddress } of await value('jobs.list', {
      search: '',
      archived: false,
    }))
      for (const words of [name, customerName, siteAddress].filter((one) => one !== ''))
        expect(text).not.toContain(words);
  });
}
