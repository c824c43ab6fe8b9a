import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { builtPages, dist } from '../../src/build/pages.ts';

const notices = readFileSync(join(dist, 'third-party-notices.txt'), 'utf8');

// Written down from what the pages load, not from what the build collects.
test.each([
  ['preact', 'MIT', 'Jason Miller'],
  ['@preact/signals', 'MIT', 'Preact Team'],
  ['@preact/signals-core', 'MIT', 'Preact Team'],
  ['@astrojs/preact', 'MIT', 'Fred K. Schott'],
  ['astro', 'MIT', 'Fred K. Schott'],
  ['vite', 'MIT', 'VoidZero'],
  // In the worker of the log reader.
  ['papaparse', 'MIT', 'Matthew Holt'],
  ['pagefind', 'MIT', 'Copyright (c) Pagefind'],
  ['@fontsource-variable/atkinson-hyperlegible-next', 'OFL-1.1', 'SIL OPEN FONT LICENSE'],
])('%s is named, under %s', (name, licence, holder) => {
  expect(notices).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+: ${licence}$`, 'm'));
  const [, text = ''] = notices.split(new RegExp(`^=+\\n${name} [\\d.]+\\n=+$`, 'm'));
  expect(text.split(/^={20}/m)[0]).toContain(holder);
});

test('what only makes the pages is not named', () => {
  expect(notices).not.toMatch(/^(katex|typescript|vitest|sirv) /m);
});

test('the licence of a font lies beside it', () => {
  const files = readdirSync(join(dist, '_astro'));
  const fonts = files.filter((name) => name.endsWith('.woff2'));
  expect(fonts.length).toBeGreaterThan(0);
  for (const font of fonts) {
    const licence = join(dist, '_astro', font.replace('.woff2', '.licence.txt'));
    expect(readFileSync(licence, 'utf8')).toContain('SIL OPEN FONT LICENSE Version 1.1');
  }
});

test('every page leads to the notices', () => {
  for (const { address, html } of builtPages()) {
    expect(html, address).toMatch(
      /<footer[^]*href="(\/[a-z]{2})?\/third-party-notices\.txt"[^]*<\/footer>/,
    );
  }
});
