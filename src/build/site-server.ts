// Answers requests for a built site as a static host does, with the headers of its _headers file.
// sirv finds and sends the files, compression negotiates how they are packed. What stands here is
// what both leave to the host: what is not public, symbolic links, and the page for a miss.
import { readFileSync, realpathSync } from 'node:fs';
import type { IncomingMessage, RequestListener, ServerResponse } from 'node:http';
import { extname, join, posix, sep } from 'node:path';
import compression from 'compression';
import { lookup } from 'mrmime';
import sirv from 'sirv';
import { parseHeaders } from './headers.ts';

function read(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return undefined;
  }
}

function realPath(file: string): string | undefined {
  try {
    return realpathSync(file);
  } catch {
    return undefined;
  }
}

/** The path that a request asks for, without "..", or undefined where it asks for none. */
function pathOf({ url = '/' }: IncomingMessage): string | undefined {
  try {
    const path = decodeURIComponent(new URL(`http://localhost${url}`).pathname);
    return path.includes('\0') || path.includes('\\') ? undefined : posix.normalize(path);
  } catch {
    return undefined;
  }
}

/** Hidden files are for tools, `_headers` and its like are for the host. */
const isPublic = (path: string): boolean => !/(^|\/)\./.test(path) && !/^\/_[^/]*$/.test(path);

/** What sirv may send for a path. */
const endings = ['', '.html', '/index', '/index.html'];

/** A symbolic link could publish any file of the machine: only what lies in the folder is sent. */
function staysInside(folder: string, path: string): boolean {
  const root = realPath(folder);
  return endings
    .map((ending) => realPath(join(folder, path.replace(/\/$/, '') + ending)))
    .every((file) => file === undefined || file === root || file.startsWith(`${root ?? ''}${sep}`));
}

/** sirv names no charset but for HTML, and no type at all for the files of the search index. */
function setType(response: ServerResponse, path: string): void {
  if (extname(path) === '') return;
  const type = lookup(path) ?? 'application/octet-stream';
  response.setHeader('content-type', type.startsWith('text/') ? `${type}; charset=utf-8` : type);
}

export function siteServer(folder: string): RequestListener {
  const pack = compression();
  // `dev`: looks at the disk for each request, because a build may put a new site into the folder.
  const send = sirv(folder, { dev: true, etag: true, extensions: ['html'], setHeaders: setType });

  const miss = (response: ServerResponse): void => {
    const page = read(join(folder, '404.html'));
    response.writeHead(404, {
      'content-type': `text/${page === undefined ? 'plain' : 'html'}; charset=utf-8`,
      'cache-control': 'no-cache',
    });
    response.end(page ?? 'There is no such page here.\n');
  };

  return (request, response) => {
    for (const [name, value] of parseHeaders(read(join(folder, '_headers')) ?? '')) {
      response.setHeader(name, value);
    }
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { allow: 'GET, HEAD' }).end();
      return;
    }
    // A file can go between being found and being opened; without this the server would go too.
    response.on('pipe', (source) => source.on('error', () => response.destroy()));
    // Parts of a file are nothing that a page of ours asks for, and of a packed one they are wrong.
    delete request.headers.range;
    const path = pathOf(request);
    pack(request, response, () => {
      if (path === undefined || !isPublic(path) || !staysInside(folder, path)) {
        miss(response);
        return;
      }
      request.url = path.split('/').map(encodeURIComponent).join('/');
      send(request, response, () => miss(response));
    });
  };
}
