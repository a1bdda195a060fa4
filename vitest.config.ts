import { defaultServerConditions } from 'vite';
import { defineConfig } from 'vitest/config';

// Tests read the engine's TypeScript through this private export condition, so nothing has to be built first.
const conditions = ['@foregone/source', ...defaultServerConditions];

export default defineConfig({
  test: {
    pool: 'threads',
    maxWorkers: 2,
    projects: [
      {
        resolve: { conditions },
        ssr: { resolve: { conditions } },
        test: {
          name: 'node',
          environment: 'node',
          // Modules are pure; loading the engine anew for every file would take as long as the tests.
          isolate: false,
          include: [
            'packages/*/src/**/*.test.ts',
            'packages/*/testing/**/*.test.ts',
            'scripts/**/*.test.{ts,mjs}',
          ],
          testTimeout: 90_000,
          hookTimeout: 20_000,
        },
      },
    ],
  },
});
