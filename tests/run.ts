import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { ensureBrowser } from './app/ensure-browser.ts';

/**
 * `npm test`: makes sure that a browser is there, builds the renderer that the browser tests drive, runs every test,
 * and ends with `N passed, N failed` from the runner's own counts. Further arguments go to the runner.
 */
const root = fileURLToPath(new URL('..', import.meta.url));
process.chdir(root);
const browser = ensureBrowser();
console.log(`browser: ${browser}`);
await build({ configFile: 'vite.config.ts', logLevel: 'warn' });

const folder = mkdtempSync(join(tmpdir(), 'eavewright-test-'));
const report = join(folder, 'report.json');
const runner = fileURLToPath(new URL('../node_modules/vitest/vitest.mjs', import.meta.url));
const run = spawnSync(
  process.execPath,
  [
    runner,
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
    ...process.argv.slice(2),
  ],
  { stdio: 'inherit', env: { ...process.env, CHROMIUM: browser } },
);

type Counts = {
  numPassedTests: number;
  numFailedTests: number;
  numPendingTests: number;
  numFailedTestSuites: number;
};
let counts: Counts | undefined;
try {
  counts = JSON.parse(readFileSync(report, 'utf8')) as Counts;
} catch {
  console.error('The test runner wrote no report.');
}
rmSync(folder, { recursive: true, force: true });
const failed =
  counts === undefined ? 1 : counts.numFailedTests + (run.status === 0 || counts.numFailedTests > 0 ? 0 : 1);
console.log(`${counts?.numPassedTests ?? 0} passed, ${failed} failed`);
process.exitCode = run.status === 0 && failed === 0 && (counts?.numPassedTests ?? 0) > 0 ? 0 : 1;
