// Serves dist/ on this machine only, with the headers that a real host would take from
// public/_headers, so that what the tests see is what visitors get.
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { readFile, stat } from 'node:fs/promises';
import { extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { parseHeaders } from './headers.ts';

const dist = fileURLToPath(new URL('../../dist', import.meta.url));
const firstPort = 4321;
const lastPort = 4399;

const types: Record<string, string> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml',
};
const packed = new Set(['.css', '.html', '.js', '.json', '.svg', '.txt', '.xml']);

async function fileFor(path: string): Promise<string | undefined> {
  const inside = normalize(join(dist, path));
  if (inside !== dist && !inside.startsWith(dist + sep)) return undefined;
  for (const candidate of [inside, join(inside, 'index.html')]) {
    const found = await stat(candidate).catch(() => undefined);
    if (found?.isFile() === true) return candidate;
  }
  return undefined;
}

function pathOf(request: IncomingMessage): string | undefined {
  try {
    return decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
  } catch {
    return undefined;
  }
}

async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { allow: 'GET, HEAD' }).end();
    return;
  }
  const path = pathOf(request);
  const found = path === undefined ? undefined : await fileFor(path);
  const file = found ?? join(dist, '404.html');
  const extension = extname(file);
  const raw = await readFile(file);
  const pack = packed.has(extension) && (request.headers['accept-encoding'] ?? '').includes('gzip');
  const body = pack ? gzipSync(raw) : raw;
  for (const [name, value] of await siteHeaders) response.setHeader(name, value);
  response.setHeader('content-type', types[extension] ?? 'application/octet-stream');
  response.setHeader('content-length', body.length);
  response.setHeader('cache-control', 'no-cache');
  if (pack) response.setHeader('content-encoding', 'gzip');
  response.writeHead(found === undefined ? 404 : 200);
  response.end(request.method === 'HEAD' ? undefined : body);
}

const siteHeaders = readFile(join(dist, '_headers'), 'utf8').then(
  (text) => parseHeaders(text),
  () => {
    console.error(`There is no built site in ${dist}. Run "npm run build" first.`);
    process.exit(1);
  },
);
await siteHeaders;

const server = createServer((request, response) => {
  answer(request, response).catch((error: unknown) => {
    console.error(error);
    if (!response.headersSent) response.writeHead(500);
    response.end();
  });
});

const asked = process.env['PORT'];
if (asked !== undefined && !/^\d{1,5}$/.test(asked)) {
  console.error(`PORT is "${asked}". It must be a number from 0 to 65535.`);
  process.exit(1);
}
let port = asked === undefined ? firstPort : Number(asked);
server.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EADDRINUSE' && asked === undefined && port < lastPort) {
    port += 1;
    server.listen(port, '127.0.0.1');
    return;
  }
  console.error(
    error.code === 'EADDRINUSE'
      ? `Port ${port} is taken. Set PORT to a free one, or leave it out to get the first free one.`
      : `Could not serve: ${error.message}`,
  );
  process.exit(1);
});
server.on('listening', () => {
  const address = server.address();
  if (address !== null && typeof address === 'object') {
    console.log(`The site is at http://127.0.0.1:${address.port}/  (Ctrl+C stops it)`);
  }
});
server.listen(port, '127.0.0.1');
