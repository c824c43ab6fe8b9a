// The configuration is held against public/_headers, and where nginx is on the machine, nginx itself reads it and serves by it.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { parseHeaders } from '../../src/build/headers.ts';
import { containerFile } from '../../src/hosting/container.ts';
import { nginxConfig } from '../../src/hosting/nginx.ts';

const headers = readFileSync('public/_headers', 'utf8');
const nginx = ['/usr/sbin/nginx', '/usr/local/bin/nginx'].find(existsSync);
const types = '/etc/nginx/mime.types';

/** Directives as words, blocks as their head and what is inside: the grammar of nginx's own "Beginner's Guide". */
type Directive = readonly [words: readonly string[], inside?: readonly Directive[]];
function parse(text: string): readonly Directive[] {
  const tokens = [
    ...text.replace(/^\s*#.*$/gm, '').matchAll(/"((?:[^"\\]|\\.)*)"|([{};])|([^\s{};]+)/g),
  ].map(([, quoted, sign, word]) => ({
    sign,
    word: quoted === undefined ? word : quoted.replace(/\\(.)/g, '$1'),
  }));
  let at = 0;
  const block = (): Directive[] => {
    const found: Directive[] = [];
    let words: string[] = [];
    for (let token = tokens[at++]; token !== undefined; token = tokens[at++]) {
      if (token.sign === '}') {
        expect(words).toEqual([]);
        return found;
      }
      if (token.sign === ';') found.push([words]);
      else if (token.sign === '{') found.push([words, block()]);
      else if (token.word !== undefined) {
        words.push(token.word);
        continue;
      }
      words = [];
    }
    expect(words).toEqual([]);
    return found;
  };
  const all = block();
  expect(at).toBeGreaterThanOrEqual(tokens.length);
  return all;
}

test('every header of public/_headers is sent with every answer, and in one place', () => {
  const config = parse(nginxConfig(headers, { root: '/srv', port: 80, base: '/' }));
  const [, server = []] = config.find(([words]) => words[0] === 'server') ?? [[]];
  const sent = server.flatMap(([[name, ...rest]]) => (name === 'add_header' ? [rest] : []));
  const wanted = parseHeaders(headers);
  expect(wanted.length).toBeGreaterThan(3);
  for (const [name, value] of wanted) expect(sent).toContainEqual([name, value, 'always']);
  // A block inside with a header of its own would drop all of these.
  for (const [, inside = []] of server)
    expect(inside.filter(([[name]]) => name === 'add_header')).toEqual([]);
});

test('a header that nginx would read otherwise is refused', () => {
  const say = () => nginxConfig('/*\n  X-Price: $5\n', { root: '/srv', port: 80, base: '/' });
  expect(say).toThrow('cannot be told to nginx');
});

test('the container has the site where its base says', () => {
  expect(containerFile('/shop/')).toContain('COPY site /usr/share/nginx/html/shop/');
});

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'nginx-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const free = (): Promise<number> =>
  new Promise((resolve) => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const { port } = probe.address() as AddressInfo;
      probe.close(() => resolve(port));
    });
  });

for (const base of ['/', '/shop/']) {
  test.skipIf(nginx === undefined)(`nginx itself serves a site at ${base}`, async () => {
    const files = {
      'index.html': '<p>home',
      '404.html': '<p>miss',
      'lessons/a/index.html': '<p>é',
      '_astro/a.12345678.js': 'export {}',
      'site.webmanifest': '{}',
      'logs/a.csv': 'a,b',
      _headers: headers,
    };
    for (const [name, text] of Object.entries(files)) {
      const file = join(folder, 'site', base, name);
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, text);
    }
    const port = await free();
    const config = nginxConfig(headers, { root: join(folder, 'site'), port, base, types });
    writeFileSync(
      join(folder, 'nginx.conf'),
      `${process.getuid?.() === 0 ? 'user root;' : ''}daemon off;pid ${folder}/pid;error_log ${folder}/log;events{}http{access_log off;${[
        'client_body',
        'proxy',
        'fastcgi',
        'uwsgi',
        'scgi',
      ]
        .map((kind) => `${kind}_temp_path ${folder}/${kind};`)
        .join('')}\n${config}}`,
    );
    const settings = ['-c', join(folder, 'nginx.conf'), '-p', folder];
    const read = spawnSync(nginx ?? '', ['-t', ...settings], { encoding: 'utf8' });
    expect(read.stderr).toContain('syntax is ok');
    const running = spawn(nginx ?? '', settings);
    const at = `http://127.0.0.1:${port}${base}`;
    try {
      await expect
        .poll(() =>
          fetch(at).then(
            ({ ok }) => ok,
            () => false,
          ),
        )
        .toBe(true);
      const page = await fetch(`${at}lessons/a/`);
      expect(await page.text()).toBe('<p>é');
      expect(page.headers.get('content-type')).toBe('text/html; charset=utf-8');
      const script = await fetch(`${at}_astro/a.12345678.js`);
      expect(script.headers.get('content-type')).toMatch(/^(application|text)\/javascript/);
      expect(script.headers.get('cache-control')).toContain('immutable');
      expect(page.headers.get('cache-control')).toBe('no-cache');
      const manifest = await fetch(`${at}site.webmanifest`);
      expect(manifest.headers.get('content-type')).toBe('application/manifest+json');
      const miss = await fetch(`${at}lessons/none/`);
      expect([miss.status, await miss.text()]).toEqual([404, '<p>miss']);
      expect((await fetch(`${at}_headers`)).status).toBe(404);
      for (const answer of [page, script, miss])
        for (const [name, value] of parseHeaders(headers))
          expect(answer.headers.get(name), name).toBe(value);
      const slash = await fetch(`${at}lessons/a`, { redirect: 'manual' });
      expect(slash.headers.get('location')).toBe(`${base}lessons/a/`);
    } finally {
      running.kill();
    }
  });
}
