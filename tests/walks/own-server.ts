import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer, type RequestListener, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { moveSite } from '../../src/build/move-site.ts';
import { dist } from '../../src/build/pages.ts';
import { siteServer } from '../../src/build/site-server.ts';
import { storeOffline } from '../../src/build/store-offline.ts';

export interface OwnServer {
  readonly origin: string;
  /** A copy of the built site, to be changed at will. */
  readonly folder: string;
  /** As if its plug were pulled: whoever is connected is cut off. */
  kill(): Promise<void>;
  /** At the same address as before. */
  start(): Promise<void>;
  end(): Promise<void>;
}

interface Own {
  /** Paths that it answers with a fault. */
  readonly refuse?: (path: string) => boolean;
  /** The folder of the host that the site stands in, as a build with SITE_BASE makes it. */
  readonly base?: string;
  /** Folders of the site that this copy goes without: half of the files are the search index. */
  readonly without?: readonly string[];
}

/** A server of a test's own, over a copy of the built site. */
export async function ownServer({
  refuse = () => false,
  base = '/',
  without = [],
}: Own = {}): Promise<OwnServer> {
  const host = mkdtempSync(join(tmpdir(), 'offline-'));
  const folder = join(host, base);
  cpSync(dist, folder, { recursive: true });
  for (const name of without) rmSync(join(folder, name), { recursive: true });
  if (base !== '/') {
    moveSite(folder, base);
    // A host sends one page for every miss.
    cpSync(join(folder, '404.html'), join(host, '404.html'));
  }
  if (base !== '/' || without.length > 0) await storeOffline(folder);
  const site = siteServer(host);
  const answer: RequestListener = (request, response) => {
    // Packing a thousand files takes longer than sending them here.
    delete request.headers['accept-encoding'];
    if (refuse(request.url ?? '')) response.writeHead(503).end();
    else site(request, response);
  };
  let server: Server | undefined;
  let port = 0;
  const start = (): Promise<void> =>
    new Promise((resolve, reject) => {
      server = createServer(answer);
      server.once('error', reject);
      server.listen(port, '127.0.0.1', () => {
        ({ port } = server?.address() as AddressInfo);
        resolve();
      });
    });
  const kill = (): Promise<void> =>
    new Promise((resolve) => {
      if (server === undefined) {
        resolve();
        return;
      }
      server.close(() => resolve());
      server.closeAllConnections();
      server = undefined;
    });
  await start();
  return {
    origin: `http://127.0.0.1:${port}`,
    folder,
    kill,
    start,
    end: async () => {
      await kill();
      rmSync(host, { recursive: true });
    },
  };
}
