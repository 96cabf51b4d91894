import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    testTimeout: 30_000,
    hookTimeout: 120_000,
    // On a busy machine the page may take seconds over what it does in a tenth of one otherwise.
    expect: { poll: { timeout: 15_000 } },
    pool: 'forks',
    maxWorkers: 2,
  },
});
