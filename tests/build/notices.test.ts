import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { allNotices, fontPackage, noticeOf, printNotices } from '../../src/build/notices.ts';

let modules = '';
const font = '@fontsource-variable/face';
function install(name: string, about: object, licence: string, file = 'LICENSE'): void {
  const folder = join(modules, name);
  mkdirSync(join(folder, file, '..'), { recursive: true });
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ version: '1.0.0', ...about }));
  if (licence !== '') writeFileSync(join(folder, file), licence);
}
beforeAll(() => {
  modules = mkdtempSync(join(tmpdir(), 'modules-'));
  install('astro', { license: 'MIT' }, 'Astro terms');
  install('pagefind', { license: 'MIT' }, 'Search terms', 'LICENSE/LICENSE');
  install('vite', { license: 'MIT' }, 'Vite terms\n# Licenses of bundled dependencies\nOthers');
  for (const part of ['core', 'precaching', 'routing', 'strategies'])
    install(`workbox-${part}`, { license: 'MIT' }, `Worker terms of ${part}`);
  install(font, { license: 'OFL-1.1' }, 'Font terms', 'LICENCE.md');
  install('bare', { license: 'MIT' }, '');
  mkdirSync(join(modules, font, 'files'));
  writeFileSync(join(modules, font, 'files', 'face-latin.woff2'), 'bytes');
});
afterAll(() => rmSync(modules, { recursive: true }));

const bundled = [{ name: 'preact', version: '10.0.0', identifier: 'MIT', text: 'Preact terms' }];

test('everything that ships is named with its licence and its text', () => {
  const printed = printNotices(allNotices(bundled, [font], modules));
  for (const line of ['preact 10.0.0: MIT', `${font} 1.0.0: OFL-1.1`, 'pagefind 1.0.0: MIT']) {
    expect(printed.split('\n')).toContain(line);
  }
  for (const terms of [
    'Preact terms',
    'Font terms',
    'Search terms',
    'Astro terms',
    'Worker terms of core',
  ]) {
    expect(printed).toContain(terms);
  }
  expect(printed).not.toContain('Others');
});

test('what has no licence, or none in words, stops the build with its name', () => {
  expect(() => allNotices([{ name: 'odd', version: '1' }], [], modules)).toThrow(/named: odd\.$/);
  expect(() => allNotices([], ['bare'], modules)).toThrow(/named: bare\.$/);
  expect(noticeOf('bare', modules).text).toBe('');
});

test('a font is traced by its bytes', () => {
  const built = join(modules, 'face-latin.Ab12.woff2');
  writeFileSync(built, 'bytes');
  expect(fontPackage(built, modules)).toBe(font);
  writeFileSync(built, 'other bytes');
  expect(() => fontPackage(built, modules)).toThrow('face-latin.Ab12.woff2, so its licence');
});
