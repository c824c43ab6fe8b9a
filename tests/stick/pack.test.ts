// The stick in a bare folder, served by each program that a laptop may have, and by nothing else on its path.
import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { unzipSync, zipSync } from 'fflate';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { stickOf } from '../../src/stick/pack.ts';

const site = {
  'index.html': '<!doctype html><p>home</p>',
  '404.html': '<!doctype html><p>no such page</p>',
  'lessons/a/index.html': '<!doctype html><a href="/">é</a>',
  '_astro/a.12345678.js': 'export const one = 1;',
  'questions/index.json': '{"é":1}',
  'pagefind/us/wasm.en.pagefind': '\u0000asm',
  'site.webmanifest': '{}',
  'logs/a.csv': 'a,b',
  _headers: '/*',
};
let outer = '';
let bare = '';
beforeAll(() => {
  outer = mkdtempSync(join(tmpdir(), 'stick-'));
  write(join(outer, 'dist'), site);
  const zip = unzipSync(zipSync(stickOf(join(outer, 'dist'))));
  bare = join(outer, 'bare');
  write(bare, zip);
  // What an unpacking program reads from the zip; fflate's own does not.
  chmodSync(join(bare, 'slips-when-hot', 'start-linux.sh'), 0o755);
});
afterAll(() => rmSync(outer, { recursive: true }));

function write(folder: string, files: Readonly<Record<string, string | Uint8Array>>): void {
  for (const [name, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), content);
  }
}
const found = (name: string, ...say: string[]): string | undefined => {
  const { stdout, status } = spawnSync('sh', ['-c', say.join(' ') || `command -v ${name}`], {
    encoding: 'utf8',
  });
  return status === 0 && stdout.trim() !== '' ? stdout.trim() : undefined;
};
/** The program itself, and not a script that looks for it along the path. */
const programs = {
  python3: found('python3', "python3 -c 'import sys; print(sys.executable)'"),
  node: process.execPath,
  php: found('php'),
  ruby: found('ruby', 'ruby -e \'require "webrick"; require "rbconfig"; print RbConfig.ruby\''),
};
const free = (): Promise<number> =>
  new Promise((resolve) => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const { port } = probe.address() as AddressInfo;
      probe.close(() => resolve(port));
    });
  });

test('the start files can be started, and Windows gets its own ends of lines', () => {
  const stick = stickOf(join(outer, 'dist'));
  const zip = zipSync(stick);
  const file = join(outer, 'stick.zip');
  writeFileSync(file, zip);
  const text = (name: string) =>
    Buffer.from(unzipSync(zip)[`slips-when-hot/${name}`] ?? []).toString();
  for (const name of ['start-windows.cmd', 'server/serve.ps1']) {
    expect(text(name)).toMatch(/\r\n/);
    expect(text(name)).not.toMatch(/[^\r]\n/);
    // Windows PowerShell 5 reads a script without a mark in the code page of the machine.
    expect(text(name)).toMatch(/^[\x20-\x7e\r\n]+$/);
  }
  expect(text('READ ME FIRST.html')).not.toMatch(/<script|<link|src=/);
  if (found('unzip') === undefined) return;
  spawnSync('unzip', ['-q', file, '-d', join(outer, 'unzipped')]);
  for (const name of ['start-linux.sh', 'start-mac.command'])
    expect(statSync(join(outer, 'unzipped', 'slips-when-hot', name)).mode & 0o111).toBe(0o111);
});

let running: ChildProcess | undefined;
afterEach(() => {
  // The shell and what it started.
  if (running?.pid !== undefined) process.kill(-running.pid);
  running = undefined;
});

/** A path with one program on it and what the start file itself needs. */
async function startWith(name: string, program: string): Promise<string> {
  const path = join(outer, `path-${name}`);
  mkdirSync(path);
  for (const tool of ['dirname', 'uname', 'sleep'])
    symlinkSync(found(tool) ?? '', join(path, tool));
  symlinkSync(program, join(path, name));
  const port = await free();
  running = spawn('/bin/sh', [join(bare, 'slips-when-hot', 'start-linux.sh')], {
    cwd: '/',
    detached: true,
    env: { PATH: path, PORT: String(port), NO_BROWSER: '1' },
  });
  const at = `http://127.0.0.1:${port}`;
  await expect
    .poll(
      () =>
        fetch(at).then(
          ({ ok }) => ok,
          () => false,
        ),
      { timeout: 20_000 },
    )
    .toBe(true);
  return at;
}

describe('on a path with one program alone', () => {
  for (const [name, program = ''] of Object.entries(programs)) {
    test.skipIf(program === '')(name, { timeout: 30_000 }, async () => {
      const at = await startWith(name, program);
      for (const [path, type] of [
        ['index.html', 'text/html; charset=utf-8'],
        ['lessons/a/index.html', 'text/html; charset=utf-8'],
        ['_astro/a.12345678.js', 'text/javascript; charset=utf-8'],
        ['questions/index.json', 'application/json'],
        ['pagefind/us/wasm.en.pagefind', 'application/octet-stream'],
        ['site.webmanifest', 'application/manifest+json'],
        ['logs/a.csv', 'text/csv; charset=utf-8'],
      ] as const) {
        const answer = await fetch(`${at}/${path.replace(/index\.html$/, '')}?q=1`);
        expect([answer.status, answer.headers.get('content-type')], path).toEqual([200, type]);
        expect(Buffer.from(await answer.arrayBuffer()).toString(), path).toBe(site[path]);
      }
      for (const path of ['/nowhere/', '/lessons/']) {
        const answer = await fetch(at + path);
        expect([answer.status, await answer.text()], path).toEqual([404, site['404.html']]);
        expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
      }
      // Out of the folder of the site leads no address.
      for (const path of ['/..%2fserver/types.json', '/%2e%2e/server/types.json']) {
        const answer = await fetch(at + path);
        expect([400, 404], path).toContain(answer.status);
        expect(await answer.text(), path).not.toContain('application/');
      }
      expect((await fetch(at, { method: 'HEAD' })).status).toBe(200);
    });
  }

  test('with none of them it says what to install', () => {
    const path = join(outer, 'path-none');
    mkdirSync(path);
    for (const tool of ['dirname', 'uname']) symlinkSync(found(tool) ?? '', join(path, tool));
    const { stdout, status } = spawnSync(
      '/bin/sh',
      [join(bare, 'slips-when-hot', 'start-linux.sh')],
      { env: { PATH: path, NO_BROWSER: '1' }, encoding: 'utf8' },
    );
    expect(status).toBe(1);
    expect(stdout).toContain('Install one of them');
  });
});
