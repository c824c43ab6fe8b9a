import { defineConfig } from 'vitest/config';

const jsx = { jsx: { runtime: 'automatic', importSource: 'preact' } } as const;

export default defineConfig({
  test: {
    projects: [
      {
        oxc: jsx,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/content/**', 'tests/e2e/**'],
        },
      },
      {
        // Reads the words in content/ and the built pages in dist/, so it runs after the build.
        oxc: jsx,
        test: { name: 'content', include: ['tests/content/**/*.test.ts'] },
      },
    ],
  },
});
