// How a page reaches its service worker. Where it lies follows from the address of the manifest, so that the site may stand in
// a folder of a host; a page without a manifest (in development, in the course package) has no worker.
import type { Ask, Standing, TakenOver } from './messages.ts';

interface TrustedTypes {
  createPolicy(
    name: string,
    rules: { createScriptURL(url: string): string },
  ): { createScriptURL(url: string): string };
}

const manifest = document.querySelector<HTMLLinkElement>('link[rel="manifest"]');
const address = manifest === null ? undefined : new URL('service-worker.js', manifest.href).href;

/** The folder of the site: what is kept of it is named by that. */
export const scope = new URL('./', address ?? location.href).href;

// Text becomes script nowhere else; this passes the one address.
const types = (globalThis as { trustedTypes?: TrustedTypes }).trustedTypes;
const policy = types?.createPolicy('offline', {
  createScriptURL: (url) => {
    if (url === address) return url;
    throw new TypeError(`The site may not be stored by a script from ${url}.`);
  },
});

/** Whether this browser, on this page, has service workers at all. */
export const canStore = (): boolean => address !== undefined && 'serviceWorker' in navigator;

/** Begins to store the site, or looks for a newer version of what is stored. */
export function register(): Promise<ServiceWorkerRegistration> {
  if (address === undefined) return Promise.reject(new Error('There is no site to store.'));
  return navigator.serviceWorker.register(policy?.createScriptURL(address) ?? address);
}

/** How long a worker may say nothing [ms]: one that ends with the question would never answer. */
const SILENCE = 5000;

function ask<Answer>(worker: ServiceWorker, what: Ask, silence?: number): Promise<Answer> {
  const { port1, port2 } = new MessageChannel();
  return new Promise<Answer>((resolve, reject) => {
    port1.onmessage = ({ data }: MessageEvent<Answer>) => resolve(data);
    if (silence !== undefined)
      setTimeout(() => reject(new Error('The service worker did not answer.')), silence);
    worker.postMessage(what, [port2]);
  }).finally(() => port1.close());
}

export const standingOf = (worker: ServiceWorker): Promise<Standing> =>
  ask(worker, 'standing', SILENCE);
export const takeOver = (worker: ServiceWorker): Promise<TakenOver> =>
  ask(worker, 'take over', SILENCE);
/** Fetches what a worker in force misses; answers when it is over, with what is there then. */
export const storeRest = (worker: ServiceWorker): Promise<Standing> => ask(worker, 'store');
