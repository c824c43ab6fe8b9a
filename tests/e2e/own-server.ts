import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer, type RequestListener, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { dist } from '../../src/build/pages.ts';
import { siteServer } from '../../src/build/site-server.ts';

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

/** A server of a test's own, over a copy of the built site. @param refuse paths that it answers with a fault */
export async function ownServer(
  refuse: (path: string) => boolean = () => false,
): Promise<OwnServer> {
  const folder = mkdtempSync(join(tmpdir(), 'offline-'));
  cpSync(dist, folder, { recursive: true });
  const site = siteServer(folder);
  const answer: RequestListener = (request, response) => {
    if (refuse(request.url ?? '')) response.writeHead(503).end();
    else void site(request, response);
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
      rmSync(folder, { recursive: true });
    },
  };
}
