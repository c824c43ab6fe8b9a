import { useLayoutEffect, useState } from 'preact/hooks';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { units } from './units-signal.ts';

/** What the server prints wherever both systems cannot stand side by side. */
export const SERVER_UNITS: UnitSystem = 'us';

/**
 * False on the server and during hydration, true from the first effect on. Preact does not
 * repair attributes while it hydrates, so the first client render has to equal the server's
 * letter for letter; whatever only the browser knows has to wait for this.
 */
export function useReady(): boolean {
  const [ready, setReady] = useState(false);
  useLayoutEffect(() => {
    setReady(true);
  }, []);
  return ready;
}

/** The reader's unit system; re-renders the caller when it changes. */
export function useUnits(): UnitSystem {
  const ready = useReady();
  return ready ? units.value : SERVER_UNITS;
}
