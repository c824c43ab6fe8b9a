// Fetched by every page once it has loaded: stores the site on this device, and asks when there is a newer one.
import { isRefused } from '../storage/site-copy.ts';
import { canStore, register, scope } from './registration.ts';

/** Somebody pays for every megabyte, and has said so to the browser. */
const isSparing = (): boolean =>
  (navigator as { connection?: { saveData?: boolean } }).connection?.saveData === true;

async function start(): Promise<void> {
  if (!canStore() || (await isRefused(scope))) return;
  const there = await navigator.serviceWorker.getRegistration();
  if (there === undefined && isSparing()) return;
  whenNewer(await register());
}

/** A worker that waits behind one in force is a newer version of the site. */
function whenNewer(registration: ServiceWorkerRegistration): void {
  const look = (): void => {
    const { active, waiting } = registration;
    if (active === null || waiting === null) return;
    void import('./newer.ts').then(({ offer }) => offer(waiting));
  };
  look();
  registration.addEventListener('updatefound', () =>
    registration.installing?.addEventListener('statechange', look),
  );
}

// Where the browser keeps nothing, the site is as it is without: /offline/ says why.
await start().catch(() => undefined);
