import { availableParallelism } from 'node:os';
import { configDefaults, defineConfig } from 'vitest/config';

const inBrowser = 'tests/browser/**/*.test.ts';

export default defineConfig({
  test: {
    testTimeout: 30_000,
    // On two cores one worker alone would leave half of the machine idle.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          // Loading the sources anew for each file takes as long as the checks beside the sources themselves. None may
          // leave anything behind in a module; vitest takes spies and time limits back after each file.
          isolate: false,
          include: ['src/**/*.test.{ts,tsx}', 'tests/**/*.test.{ts,tsx}'],
          exclude: [...configDefaults.exclude, inBrowser],
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          isolate: false,
          include: [inBrowser],
          globalSetup: ['tests/browser/setUp.ts'],
          // Measuring takes longer when the other checks run beside it.
          testTimeout: 300_000,
          hookTimeout: 120_000,
          // A tap is on the disk in milliseconds, but two browsers on a busy core can hold it up for seconds.
          // What such a moment still breaks is tried once more, and the closing lines name it.
          retry: 1,
          expect: { poll: { timeout: 20_000 } },
        },
      },
    ],
  },
});
