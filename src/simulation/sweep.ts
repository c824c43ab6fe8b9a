import type { Givens } from './sim-spec.ts';

export const SWEEP_MS = 1500;

/** Givens on the way from one state to another, `share` from 0 to 1: numbers move, the rest has arrived. */
export function between<G extends Givens>(
  from: Partial<G>,
  to: Partial<G>,
  share: number,
): Partial<G> {
  const part = Math.min(1, Math.max(0, share));
  const eased = part * part * (3 - 2 * part);
  const mixed: Partial<G> = { ...to };
  for (const key of Object.keys(to) as (keyof G)[]) {
    const a: unknown = from[key];
    const b: unknown = to[key];
    // Exactly the end at the end: a + (b - a) can miss b by a bit.
    if (typeof a === 'number' && typeof b === 'number' && part < 1) {
      mixed[key] = (a + (b - a) * eased) as G[keyof G];
    }
  }
  return mixed;
}

interface SweepOptions<G> {
  readonly from: Partial<G>;
  readonly to: Partial<G>;
  /** [ms] */
  readonly lasts?: number | undefined;
  readonly apply: (partial: Partial<G>) => void;
  readonly onEnd: () => void;
}

const stillWanted = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;

/** Moves the givens over a second and a half unless told otherwise, or at once where motion is not wanted. Returns how to stop it. */
export function sweep<G extends Givens>(options: SweepOptions<G>): () => void {
  const { from, to, apply, onEnd, lasts = SWEEP_MS } = options;
  let frame = 0;
  let begun: number | undefined;
  if (stillWanted()) {
    apply(to);
    onEnd();
    return () => undefined;
  }
  const tick = (now: number) => {
    begun ??= now;
    const share = (now - begun) / lasts;
    apply(between(from, to, share));
    if (share >= 1) onEnd();
    else frame = requestAnimationFrame(tick);
  };
  frame = requestAnimationFrame(tick);
  return () => cancelAnimationFrame(frame);
}
