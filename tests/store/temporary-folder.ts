import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A folder of its own for the running test, gone when the test is over. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'eavewright-'));
  // Windows lets go of a killed program's files a moment later.
  onTestFinished(() => rmSync(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 50 }));
  return folder;
}

/** SHA-256 of a file's bytes, to see that nobody touched them. */
export function hashOf(path: string): string {
  return createHash('sha256').update(readFileSync(path)).digest('hex');
}
