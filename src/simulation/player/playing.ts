/** How the scrub moves: pure, so that the clock and the screen stay with the view. */
export interface Playing {
  /** Where it stands [s]; null before anybody has moved it. */
  readonly at: number | null;
  /** Seconds of the story a second; 0 while it stands. */
  readonly rate: number;
}

export const REAL_TIME = 1;
export const SLOW = 0.25;

/** The next moment after `elapsed` seconds on the wall; it stops at the end by itself. */
export function played(playing: Playing, elapsed: number, end: number): Playing {
  const at = Math.min(end, (playing.at ?? 0) + playing.rate * elapsed);
  return at >= end ? { at: end, rate: 0 } : { at, rate: playing.rate };
}

/** From the start when it had come to the end, else on from where it stands. */
export function started(playing: Playing, rate: number, end: number): Playing {
  return { at: playing.at === null || playing.at >= end ? 0 : playing.at, rate };
}

/** The event after (or before) a moment; where there is none it stays. */
export function steppedTo(times: readonly number[], at: number | null, by: 1 | -1): number | null {
  const from = at ?? 0;
  const near = 1e-6;
  const found =
    by === 1
      ? times.find((time) => time > from + near)
      : [...times].reverse().find((time) => time < from - near);
  return found ?? at;
}
