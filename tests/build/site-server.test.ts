import { mkdirSync, mkdtempSync, rmSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { createServer, request, type IncomingMessage, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { siteServer } from '../../src/build/site-server.ts';

let outer = '';
let site = '';
let server: Server;
const long = '<p>Holds cold. Slips hot.</p>'.repeat(100);
const put = (name: string, text: string) => writeFileSync(join(site, name), text);

beforeEach(async () => {
  outer = mkdtempSync(join(tmpdir(), 'serve-'));
  site = join(outer, 'dist');
  mkdirSync(join(site, 'course'), { recursive: true });
  put('index.html', 'home');
  put('course/index.html', long);
  put('404.html', 'No such page');
  put('_headers', "/*\n  Content-Security-Policy: frame-ancestors 'none'\n");
  put('.hidden', 'secret');
  put('notes.txt', 'für');
  put('x.pf_meta', 'x');
  writeFileSync(join(outer, 'secret.txt'), 'secret');
  server = createServer(siteServer(site)).listen(0, '127.0.0.1');
  await new Promise((resolve) => server.once('listening', resolve));
});
afterEach(() => {
  server.close();
  rmSync(outer, { recursive: true });
});

interface Answer {
  readonly status: number;
  readonly headers: IncomingMessage['headers'];
  readonly body: Buffer;
}

/** Not fetch(): that tidies the path and unpacks the body, and both are what is tested. */
const get = (path: string, headers = {}, method = 'GET'): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const { port } = server.address() as AddressInfo;
    request({ host: '127.0.0.1', port, path, headers, method }, (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('end', () =>
        resolve({
          status: response.statusCode ?? 0,
          headers: response.headers,
          body: Buffer.concat(parts),
        }),
      );
      response.on('error', reject);
    })
      .on('error', reject)
      .end();
  });

describe('how a page is packed', () => {
  test.each([
    [undefined, undefined],
    ['', undefined],
    ['gzip;q=0', undefined],
    ['br;q=0, gzip;q=0', undefined],
    ['gzip', 'gzip'],
    ['gzip, br', 'br'],
    ['gzip;q=1, br;q=0', 'gzip'],
  ])('asked for %o it is %o', async (asked, packed) => {
    const headers = asked === undefined ? {} : { 'accept-encoding': asked };
    const answer = await get('/course/', headers);
    expect(answer.headers['content-encoding']).toBe(packed);
    const unpack = { br: brotliDecompressSync, gzip: gunzipSync }[packed ?? ''];
    expect((unpack?.(answer.body) ?? answer.body).toString()).toBe(long);
    expect(answer.headers.vary?.toLowerCase()).toContain('accept-encoding');
  });
});

test('what has not changed is not sent again', async () => {
  const { headers } = await get('/course/');
  expect(headers['cache-control']).toBe('no-cache');
  const etag = headers.etag ?? '';
  expect((await get('/course/', { 'if-none-match': etag })).status).toBe(304);
  put('course/index.html', 'changed');
  utimesSync(join(site, 'course/index.html'), new Date(), new Date(Date.now() + 1000));
  const changed = await get('/course/', { 'if-none-match': etag });
  expect(changed.body.toString()).toBe('changed');
});

test('every answer carries the headers of the site', async () => {
  for (const path of ['/', '/no-such-page/', '/_headers']) {
    const { headers } = await get(path);
    expect(headers['content-security-policy']).toBe("frame-ancestors 'none'");
  }
});

test('types are told, also where sirv knows none', async () => {
  const type = async (path: string) => (await get(path)).headers['content-type'];
  expect(await type('/course/')).toBe('text/html;charset=utf-8');
  expect(await type('/notes.txt')).toBe('text/plain; charset=utf-8');
  expect(await type('/x.pf_meta')).toBe('application/octet-stream');
});

describe('what is not public is not there', () => {
  beforeEach(() => {
    symlinkSync(join(outer, 'secret.txt'), join(site, 'link.txt'));
    symlinkSync(outer, join(site, 'out'));
    mkdirSync(join(site, 'page'));
    symlinkSync(join(outer, 'secret.txt'), join(site, 'page', 'index.html'));
  });
  test.each([
    '/_headers',
    '/%5Fheaders',
    '/course/../_headers',
    '//_headers',
    '/.hidden',
    '/%2ehidden',
    '/link.txt',
    '/out/secret.txt',
    '/page/',
    '/page',
    '/../secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/..%5csecret.txt',
    '/%00',
    '/%zz',
    '/index.html%3F',
  ])('%s', async (path) => {
    const { status, body } = await get(path);
    expect(status).toBe(404);
    expect(body.toString()).toBe('No such page');
  });
});

test('a link that stays inside is followed', async () => {
  symlinkSync(join(site, 'notes.txt'), join(site, 'same.txt'));
  expect((await get('/same.txt')).body.toString()).toBe('für');
});

test('a page that goes is a plain 404, and the server stands', async () => {
  expect((await get('/course/')).status).toBe(200);
  rmSync(join(site, 'course'), { recursive: true });
  expect((await get('/course/')).status).toBe(404);
  rmSync(join(site, '404.html'));
  const { status, headers, body } = await get('/course/');
  expect(status).toBe(404);
  expect(headers['content-type']).toBe('text/plain; charset=utf-8');
  expect(body.toString()).toBe('There is no such page here.\n');
  rmSync(site, { recursive: true });
  expect((await get('/')).status).toBe(404);
});

test('a file that goes between being found and being opened ends its own answer alone', async () => {
  // The file is opened after the handler has returned.
  server.on('request', ({ url }) => {
    if (url === '/course/') rmSync(join(site, 'course'), { recursive: true });
  });
  await expect(get('/course/')).rejects.toThrow();
  expect((await get('/')).status).toBe(200);
});

test('a part of a file is answered with all of it', async () => {
  const { status, body } = await get('/course/', { range: 'bytes=-5' });
  expect(status).toBe(200);
  expect(body.toString()).toBe(long);
});

test('only reading is allowed', async () => {
  const { status, headers } = await get('/', {}, 'POST');
  expect(status).toBe(405);
  expect(headers.allow).toBe('GET, HEAD');
  expect((await get('/', {}, 'HEAD')).body).toHaveLength(0);
});
