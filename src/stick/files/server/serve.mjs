// Serves the folder "site" beside this one to this computer alone. Needs Node 14 and nothing else.
import { readFile } from 'node:fs';
import { createServer } from 'node:http';
import { dirname, extname, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readFileSync } from 'node:fs';

const here = dirname(fileURLToPath(import.meta.url));
const site = join(here, '..', 'site');
const types = JSON.parse(readFileSync(join(here, 'types.json'), 'utf8'));

function fileOf(url) {
  try {
    const path = decodeURIComponent(url.replace(/[?#].*$/, ''));
    const file = join(site, path.endsWith('/') ? `${path}index.html` : path);
    return file.startsWith(site + sep) && !path.includes('\0') ? file : undefined;
  } catch {
    return undefined;
  }
}

createServer((request, response) => {
  const send = (status, file, body) => {
    response.writeHead(status, {
      'content-type': types[extname(file).slice(1)] || 'application/octet-stream',
      'content-length': body.length,
      'cache-control': 'no-cache',
    });
    response.end(request.method === 'HEAD' ? undefined : body);
  };
  const miss = () => {
    const page = join(site, '404.html');
    readFile(page, (error, body) =>
      error ? response.writeHead(404).end() : send(404, page, body),
    );
  };
  const file = fileOf(request.url || '/');
  if (file === undefined) miss();
  else readFile(file, (error, body) => (error ? miss() : send(200, file, body)));
}).listen(Number(process.argv[2]), '127.0.0.1');
