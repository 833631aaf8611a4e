import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    // Some tests start a process of their own; on a busy machine that takes seconds.
    testTimeout: 60_000,
    exclude: ['tests/browser/**', 'node_modules/**'],
  },
});
