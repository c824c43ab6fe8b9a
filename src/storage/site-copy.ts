// The copy of the site that a service worker keeps on the device: whether somebody wants none, and taking it away.

const refusal = (scope: string): string => `no-copy-of ${scope}`;

/** Somebody took the copy away: it does not come back by itself. */
export const isRefused = (scope: string): Promise<boolean> => caches.has(refusal(scope));

export async function allowCopy(scope: string): Promise<void> {
  await caches.delete(refusal(scope));
}

/** @param scope address of the folder of the site; the names of what is kept of it end with that */
export async function removeCopy(scope: string): Promise<void> {
  const names = (await caches.keys()).filter((name) => name.endsWith(scope));
  await Promise.all(names.map((name) => caches.delete(name)));
  await caches.open(refusal(scope));
}
