import type { Advice, Ranked } from '../diagnosis/index.ts';

/** So long a page may be held up at once [ms]: a key or a press is answered within a frame, also where this takes longer. */
const SLICE_MS = 8;

/** Ranks the tests in slices, with the page free in between; returns the way to stop it. */
export function inSlices({ ranking }: Advice, told: (next: readonly Ranked[]) => void): () => void {
  const steps = ranking();
  const slice = (): void => {
    const until = performance.now() + SLICE_MS;
    let step = steps.next();
    while (step.done !== true && performance.now() < until) step = steps.next();
    if (step.done === true) told(step.value);
    else timer = setTimeout(slice);
  };
  let timer = setTimeout(slice);
  return () => clearTimeout(timer);
}
