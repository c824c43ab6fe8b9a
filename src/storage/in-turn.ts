/** A page that has the turn and was frozen by its browser must not hold up the others for ever. */
const PATIENCE_MS = 2000;

/**
 * Does the work while no other tab does work of this name; where the browser has no locks, refuses
 * them or keeps one waiting, it does it all the same. A turn makes a lost write rare and not
 * impossible: browsers run tabs in processes of their own, and one that gets its turn may still see
 * storage as it was some milliseconds ago. So the work is to look whether a write is still there.
 */
export async function inTurn<R>(name: string, work: () => R): Promise<R> {
  const result: R[] = [];
  const signal = AbortSignal.timeout(PATIENCE_MS);
  try {
    await navigator.locks.request(name, { signal }, () => void result.push(work()));
  } catch {
    if (result.length === 0) result.push(work());
  }
  return result[0] as R;
}
