// Serves dist/, or the folder that it is given, on this machine only unless HOST says otherwise, with the headers that a real host
// would take from public/_headers, so that what the tests see is what visitors get.
import { createServer } from 'node:http';
import { dist, noSiteIn } from './pages.ts';
import { readPort } from './port.mjs';
import { siteServer } from './site-server.ts';

const firstPort = 4321;
const lastPort = 4399;

function fail(sentence: string): never {
  console.error(sentence);
  process.exit(1);
}

const { port: asked, wrong } = readPort(process.env['PORT']);
if (wrong !== undefined) fail(wrong);
const site = process.argv[2] ?? dist;
const missing = noSiteIn(site);
if (missing !== undefined) fail(missing);
const host = process.env['HOST'] || '127.0.0.1';
let port = asked ?? firstPort;

function whyNot({ code, message }: NodeJS.ErrnoException): string {
  switch (code) {
    case 'EADDRINUSE':
      return asked === undefined
        ? `The ports ${firstPort} to ${lastPort} are all taken. Set PORT to a free one.`
        : `Port ${port} is taken. Set PORT to a free one, or leave it out to get the first free one.`;
    case 'EACCES':
      return `Port ${port} needs an administrator. Set PORT to one from 1024 to 65535.`;
    case 'EADDRNOTAVAIL':
    case 'ENOTFOUND':
      return `HOST is "${host}", and this machine has no such address. Leave it out to serve this machine alone.`;
    default:
      return `Could not serve: ${message}`;
  }
}

const server = createServer(siteServer(site));
server.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EADDRINUSE' && asked === undefined && port < lastPort) {
    port += 1;
    server.listen(port, host);
    return;
  }
  fail(whyNot(error));
});
server.on('listening', () => {
  const address = server.address();
  if (address !== null && typeof address === 'object') {
    const name = address.family === 'IPv6' ? `[${address.address}]` : address.address;
    console.log(`The site is at http://${name}:${address.port}/  (Ctrl+C stops it)`);
  }
});
server.listen(port, host);
