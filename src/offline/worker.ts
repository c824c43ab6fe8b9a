// The service worker: keeps the whole site on the device and answers from there. src/build/store-offline.ts bundles it and
// puts the list of files beside it.
import { PrecacheController, PrecacheRoute } from 'workbox-precaching';
import { registerRoute } from 'workbox-routing';
import type { Ask, Standing, TakenOver } from './messages.ts';
import { deadLink, pageFor } from './addresses.ts';

interface Lasting extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Asked extends Lasting {
  readonly data: Ask;
  readonly ports: readonly MessagePort[];
}
interface Scope {
  /** Set by the list of files, which stands in a script of its own because it is longer than this one. */
  readonly offlineFiles: {
    /** Address from the root of the site; for a file whose name does not change with its content, its sum too. */
    readonly files: readonly (string | readonly [url: string, sum: string])[];
    readonly bytes: number;
    readonly sent: number;
  };
  readonly clients: {
    matchAll(of: { type: 'window'; includeUncontrolled: true }): Promise<readonly unknown[]>;
    claim(): Promise<void>;
  };
  skipWaiting(): Promise<void>;
  importScripts(address: string): void;
  addEventListener(kind: 'install' | 'activate', call: (event: Lasting) => void): void;
  addEventListener(kind: 'message', call: (event: Asked) => void): void;
}
declare const self: Scope;
declare const OFFLINE_FILES: string;

/** At once: one by one a slow network takes minutes, and many would keep the page that is being read waiting. */
const LANES = 4;

self.importScripts(OFFLINE_FILES);
const { files, bytes, sent } = self.offlineFiles;

const stored = new PrecacheController();
stored.addToCacheList(
  files.map((file) => {
    if (typeof file === 'string') return { url: file, revision: null };
    const [url, sum] = file;
    // With the sum, a page of another version is refused where a host is just being brought up to date.
    return { url, revision: sum, integrity: `sha256-${sum}` };
  }),
);

/** What is there already, whole, is not fetched again: so a store that broke off goes on where it was. */
async function store(event: Lasting): Promise<void> {
  // Workbox stores what it fetches during an installation, and a file may be missing later too: browsers clear what they keep.
  const installing = {
    type: 'install',
    waitUntil: (work: Promise<unknown>) => event.waitUntil(work),
  };
  const waiting = [...stored.getURLsToCacheKeys()];
  const lane = async (): Promise<void> => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
      const [url, cacheKey] = next;
      const integrity = stored.getIntegrityForCacheKey(cacheKey);
      const request = new Request(url, {
        credentials: 'same-origin',
        ...(integrity === undefined ? {} : { integrity, cache: 'reload' as const }),
      });
      await Promise.all(
        stored.strategy.handleAll({
          event: installing,
          request,
          params: { cacheKey },
        }),
      );
    }
  };
  await Promise.all(Array.from({ length: LANES }, lane));
}

async function standing(): Promise<Standing> {
  const cache = await caches.open(stored.strategy.cacheName);
  const there = new Set((await cache.keys()).map(({ url }) => url));
  const wanted = [...stored.getURLsToCacheKeys().values()];
  return { of: wanted.length, have: wanted.filter((key) => there.has(key)).length, bytes, sent };
}

/** Another window would be left with a page of the old version and the scripts of the new one. */
async function takeOver(): Promise<TakenOver> {
  const windows = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const others = Math.max(0, windows.length - 1);
  if (others === 0) await self.skipWaiting();
  return { others };
}

self.addEventListener('install', (event) => event.waitUntil(store(event)));
self.addEventListener('activate', (event) => {
  // What the version before had and this one has not is deleted here.
  event.waitUntil(stored.activate(event).then(() => self.clients.claim()));
});
function answer(event: Asked): Promise<Standing | TakenOver> {
  switch (event.data) {
    case 'take over':
      return takeOver();
    case 'store':
      // Whether it went well is told by what is there afterwards.
      return store(event).then(standing, standing);
    case 'standing':
      return standing();
  }
}
self.addEventListener('message', (event) =>
  event.waitUntil(answer(event).then((said) => event.ports[0]?.postMessage(said))),
);

registerRoute(
  new PrecacheRoute(stored, {
    // What a page is told in its address is read by the page: case, seed, words of a search.
    ignoreURLParametersMatching: [/./],
    cleanURLs: false,
    urlManipulation: ({ url }) => pageFor(url),
  }),
);
registerRoute(
  ({ request }) => request.mode === 'navigate',
  async ({ request }) => {
    try {
      return await fetch(request);
    } catch {
      return deadLink(await stored.matchPrecache('404.html'));
    }
  },
);
