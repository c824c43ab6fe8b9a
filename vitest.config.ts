import { defineConfig } from 'vitest/config';

const jsx = { jsx: { runtime: 'automatic', importSource: 'preact' } } as const;

/**
 * In milliseconds, and only for a test that hangs: one that tries 150 states takes 2 s on a free machine,
 * and on one that also builds and browses it took ten times that.
 */
const testTimeout = 60_000;

export default defineConfig({
  test: {
    // Left to itself Vitest keeps a core free, which on a machine of two is half of it.
    maxWorkers: '100%',
    projects: [
      {
        oxc: jsx,
        test: {
          name: 'unit',
          testTimeout,
          // A fresh set of modules for each of 150 files costs more than what most of them test. So a test that
          // changes something which a module keeps (the units, a storage) puts it back.
          isolate: false,
          setupFiles: ['tests/one-seed.ts'],
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [
            'tests/content/**',
            'tests/e2e/**',
            'tests/fuzz/**',
            'tests/mutation/**',
            'tests/quality/**',
            'tests/walks/**',
          ],
        },
      },
      {
        // Reads the words in content/ and the built pages in dist/, so it runs after the build.
        oxc: jsx,
        test: { name: 'content', testTimeout, include: ['tests/content/**/*.test.ts'] },
      },
      {
        // 200,000 broken inputs: a part of `npm run quality`.
        oxc: jsx,
        test: { name: 'fuzz', testTimeout, include: ['tests/fuzz/**/*.test.ts'] },
      },
    ],
  },
});
