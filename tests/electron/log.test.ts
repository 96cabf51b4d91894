import { readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { keepLogIn, lastLogLines, logBug } from '../../electron/log.ts';
import { temporaryFolder } from '../store/temporary-folder.ts';

/** Logs without showing it in the test's own output. */
function quietly(work: () => void): void {
  const write = process.stderr.write.bind(process.stderr);
  process.stderr.write = () => true;
  try {
    work();
  } finally {
    process.stderr.write = write;
  }
}

test('a bug is kept with its place in the program and without the words it was thrown with', () => {
  const folder = temporaryFolder();
  keepLogIn(folder);
  quietly(() => logBug('jobs.save', new Error('cannot save Odalys Quillfeather, 555-0142')));
  const text = readFileSync(join(folder, 'log', 'eavewright.log'), 'utf8');
  expect(text).toMatch(/bug in jobs\.save: Error\n\s+at /);
  expect(text).not.toMatch(/Quillfeather|555/);
  expect(lastLogLines(3).length).toBe(3);
});

test('a log that has grown is begun anew, and one older log is kept', () => {
  const folder = temporaryFolder();
  keepLogIn(folder);
  quietly(() => {
    for (let number = 0; number < 1200; number += 1) logBug(`round ${number}`, new Error('x'));
  });
  expect(readdirSync(join(folder, 'log')).toSorted()).toEqual(['eavewright.log', 'eavewright.log.old']);
  for (const name of readdirSync(join(folder, 'log')))
    expect(statSync(join(folder, 'log', name)).size).toBeLessThanOrEqual(256 * 1024 + 200);
  expect(lastLogLines(100_000).join('\n')).toContain('round 1199');
});

test('a log that cannot be written stops nothing', () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'log'), 'a file where the folder should be');
  keepLogIn(folder);
  quietly(() => expect(() => logBug('x', new Error('y'))).not.toThrow());
  expect(lastLogLines(5)).toEqual([]);
});
