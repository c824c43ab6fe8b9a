// What of the site is on this device, found by asking the store, never from what was begun.
import { isRefused } from '../storage/site-copy.ts';
import type { Standing } from './messages.ts';
import { canStore, register, scope, standingOf, storeRest } from './registration.ts';

export type Found =
  | { readonly kind: 'insecure' | 'none' | 'blocked' | 'off' | 'begun' | 'failed' }
  | { readonly kind: 'ready' | 'storing' | 'broken' | 'full'; readonly standing: Standing };

async function isFull({ bytes, have, of }: Standing): Promise<boolean> {
  const { quota = Infinity, usage = 0 } = await navigator.storage.estimate();
  return (bytes * (of - have)) / of > quota - usage;
}

/** Tells what is found now, and again while that changes; begins to store where nobody said no. */
export function finder() {
  let last: Standing | undefined;
  let registering: Promise<ServiceWorkerRegistration> | undefined;
  let mending = false;

  async function look(): Promise<Found> {
    if (!canStore()) return { kind: isSecureContext ? 'none' : 'insecure' };
    try {
      if (await isRefused(scope)) return { kind: 'off' };
    } catch {
      return { kind: 'blocked' };
    }
    const { active, installing, waiting } = await (registering ??= register());
    if (active !== null) {
      last = await standingOf(active);
      if (last.have === last.of) return { kind: 'ready', standing: last };
      if (mending) return { kind: 'storing', standing: last };
    }
    const coming = installing ?? waiting;
    if (coming !== null) {
      last = await standingOf(coming);
      return { kind: 'storing', standing: last };
    }
    if (last === undefined) return { kind: 'failed' };
    return { kind: (await isFull(last)) ? 'full' : 'broken', standing: last };
  }

  return {
    look: (): Promise<Found> => look().catch(() => ({ kind: 'failed' as const })),
    /** Stores what is missing. The next look registers anew, and a worker that is in force fetches the rest. */
    async again(): Promise<void> {
      const active = (await registering?.catch(() => undefined))?.active;
      registering = undefined;
      if (!active) return;
      mending = true;
      await storeRest(active);
      mending = false;
    },
  };
}
