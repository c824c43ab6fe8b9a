import { useEffect, useState } from 'preact/hooks';

/** How long the givens must rest before a task is judged: a slider swept past the answer is no answer. */
export const REST_MS = 500;

/** Whether `met` has been true without a break, and with nothing moving, for `REST_MS`. */
export function useSettled(met: boolean, state: string): boolean {
  const [settledOn, setSettledOn] = useState<string | null>(null);
  useEffect(() => {
    if (!met) return undefined;
    const timer = setTimeout(() => setSettledOn(state), REST_MS);
    return () => clearTimeout(timer);
  }, [met, state]);
  return met && settledOn === state;
}
