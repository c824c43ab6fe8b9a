import { useLayoutEffect, useState } from 'preact/hooks';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { onPaper } from './on-paper.ts';
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

/**
 * The reader's unit system; re-renders the caller when it changes. Not when an island has come alive, but where the
 * reader's is not the one the server printed: half of what coming alive took was drawing everything twice.
 */
export function useUnits(): UnitSystem {
  // Read in any case, or no change would be heard of.
  const shown = units.value;
  const [other, setOther] = useState(false);
  useLayoutEffect(() => {
    if (shown !== SERVER_UNITS) setOther(true);
  }, [shown]);
  if (import.meta.env.SSR && onPaper.units !== null) return onPaper.units;
  return other ? shown : SERVER_UNITS;
}
