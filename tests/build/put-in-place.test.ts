import { execFileSync } from 'node:child_process';
import type * as fs from 'node:fs';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { folderAside } from '../../src/build/aside.ts';
import { putInPlace } from '../../src/build/put-in-place.ts';

let outer = '';
beforeEach(() => {
  outer = mkdtempSync(join(tmpdir(), 'place-'));
});
afterEach(() => rmSync(outer, { recursive: true }));

function write(folder: string, files: Record<string, string>): string {
  for (const [name, text] of Object.entries(files)) {
    const file = join(outer, folder, name);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
  return join(outer, folder);
}
const list = (folder: string) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .sort();

const old = { 'index.html': 'old', 'gone/index.html': 'old', '_astro/a.1.js': 'old' };
const fresh = { 'index.html': 'new', 'more/index.html': 'new', '_astro/a.2.js': 'new' };

test('the new site replaces the old one whole', () => {
  const site = write('dist', old);
  const built = write('dist.next', fresh);
  putInPlace(built, site);
  expect(list(site)).toEqual(Object.keys(fresh).sort());
  expect(readdirSync(site)).not.toContain('gone');
  expect(readFileSync(join(site, 'index.html'), 'utf8')).toBe('new');
  expect(existsSync(built)).toBe(false);
});

test('the first site comes to a place where nothing was', () => {
  putInPlace(write('dist.next', fresh), join(outer, 'dist'));
  expect(list(join(outer, 'dist'))).toEqual(Object.keys(fresh).sort());
});

test('no page is missing, or there before its scripts, at any moment', async () => {
  const site = write('dist', old);
  const built = write('dist.next', fresh);
  const seen: string[] = [];
  // Looks at the site before each single change of it.
  vi.resetModules();
  vi.doMock('node:fs', async (original) => {
    const real = await original<typeof fs>();
    const look =
      <Args extends unknown[]>(change: (...args: Args) => void) =>
      (...args: Args): void => {
        const page = real.readFileSync(join(site, 'index.html'), 'utf8');
        const script = `_astro/a.${page === 'new' ? '2' : '1'}.js`;
        seen.push(`${page} ${real.existsSync(join(site, script)) ? 'whole' : 'broken'}`);
        change(...args);
      };
    return { ...real, renameSync: look(real.renameSync), rmSync: look(real.rmSync) };
  });
  const watched = await import('../../src/build/put-in-place.ts');
  watched.putInPlace(built, site);
  vi.doUnmock('node:fs');
  expect(new Set(seen)).toEqual(new Set(['old whole', 'new whole']));
});

test('the service worker comes after the pages that it stores', async () => {
  const site = write('dist', { ...old, 'service-worker.js': 'old' });
  const built = write('dist.next', { ...fresh, 'service-worker.js': 'new' });
  const order: string[] = [];
  vi.resetModules();
  vi.doMock('node:fs', async (original) => {
    const real = await original<typeof fs>();
    const renameSync: typeof fs.renameSync = (from, to) => {
      order.push(String(to).slice(site.length + 1));
      real.renameSync(from, to);
    };
    return { ...real, renameSync };
  });
  const watched = await import('../../src/build/put-in-place.ts');
  watched.putInPlace(built, site);
  vi.doUnmock('node:fs');
  expect(order.at(-1)).toBe('service-worker.js');
  expect(order[0]).toBe('_astro/a.2.js');
});

test('a build has a folder of its own beside the site', () => {
  const site = join(outer, 'dist');
  const mine = folderAside(site);
  expect(dirname(mine)).toBe(outer);
  expect(folderAside(site, 1)).not.toBe(mine);
});

test('what a broken-off build left is removed, what another is making is not', () => {
  const ended = Number(execFileSync(process.execPath, ['-p', 'process.pid'], { encoding: 'utf8' }));
  const site = join(outer, 'dist');
  for (const pid of [ended, process.ppid]) mkdirSync(`${site}.next-${pid}`);
  mkdirSync(`${site}.next-mine`);
  folderAside(site);
  expect(readdirSync(outer).sort()).toEqual([`dist.next-${process.ppid}`, 'dist.next-mine'].sort());
});
