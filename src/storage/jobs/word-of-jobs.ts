/** By this the next visit knows before it is painted whether jobs will come: src/measure/jobs/early.js. */
const KEY = 'hot-clutch:jobs';

/** Leaves word whether there are jobs on this device. Without it the page moves when they come, and no more. */
export function leaveWord(any: boolean): void {
  try {
    if (any) localStorage.setItem(KEY, '1');
    else localStorage.removeItem(KEY);
  } catch {
    // Blocked or full.
  }
}
