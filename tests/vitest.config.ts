import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['packages/*/src/**/*.test.ts', 'notebook/src/**/*.test.ts', 'tests/**/*.test.ts'],
    exclude: ['**/node_modules/**', '**/dist/**', 'tests/browser/**'],
    testTimeout: 120_000,
    // Files share the modules they load; all that stays there from one to the next is caches.
    isolate: false,
    maxWorkers: 2,
  },
});
