import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { offlineList, storeOffline } from '../../src/build/store-offline.ts';

let site = '';
const write = (name: string, text: string) => {
  mkdirSync(dirname(join(site, name)), { recursive: true });
  writeFileSync(join(site, name), text);
};
beforeEach(() => {
  site = mkdtempSync(join(tmpdir(), 'store-'));
  write('index.html', '<p>home');
  write('es/lessons/a/index.html', '<p>hola');
  write('_astro/page.BI0Wv-zM.js', 'export {}');
  write('es/_astro/page.DkCE5j91.js', 'export {}');
  write('questions/a.json', '{}');
  write('questions/qti3-us.zip', 'zip');
  write('pagefind/us/fragment/en_4f3a21c.pf_fragment', 'packed');
  write('pagefind/us/pagefind.js', 'export {}');
  write('_headers', '/*');
  write('robots.txt', '');
});
afterEach(() => rmSync(site, { recursive: true }));

test('everything that a visitor can come to is listed, with a sum where the name stays when the file changes', async () => {
  const { files, bytes } = await offlineList(site);
  const byName = new Map(files.map((file) => (typeof file === 'string' ? [file, ''] : file)));
  // By Node's own digest, as Subresource Integrity (W3C) writes it.
  const sum = createHash('sha256').update('<p>home').digest('base64');
  expect(byName.get('index.html')).toBe(sum);
  expect([...byName.keys()].sort()).toEqual([
    '_astro/page.BI0Wv-zM.js',
    'es/_astro/page.DkCE5j91.js',
    'es/lessons/a/index.html',
    'index.html',
    'pagefind/us/fragment/en_4f3a21c.pf_fragment',
    'pagefind/us/pagefind.js',
    'questions/a.json',
  ]);
  expect([...byName].flatMap(([name, sum]) => (sum === '' ? [name] : [])).sort()).toEqual([
    '_astro/page.BI0Wv-zM.js',
    'es/_astro/page.DkCE5j91.js',
    'pagefind/us/fragment/en_4f3a21c.pf_fragment',
  ]);
  expect(bytes).toBe(
    [...byName.keys()].reduce((all, name) => all + readFileSync(join(site, name)).length, 0),
  );
});

test('the worker changes with any file, and only then', async () => {
  const worker = async () => {
    expect(await storeOffline(site)).toEqual([]);
    return readFileSync(join(site, 'service-worker.js'), 'utf8');
  };
  const first = await worker();
  expect(await worker()).toBe(first);
  write('questions/a.json', '{"new":1}');
  const second = await worker();
  expect(second).not.toBe(first);
  for (const text of [first, second]) {
    const [name = ''] = /offline-files\.[\w-]+\.js/.exec(text) ?? [];
    expect(readdirSync(site)).toContain(name);
  }
  // A page decides when a newer version comes into force.
  expect(second.match(/skipWaiting/g)).toHaveLength(1);
});
