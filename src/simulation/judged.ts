import type { Verdict } from './sim-spec.ts';

interface Aim {
  /** What the task is about, in its own unit. */
  readonly value: number;
  /** Done from here … */
  readonly least?: number;
  /** … to here. */
  readonly most?: number;
  /** How far outside is still "nearly". */
  readonly near: number;
}

/** Where a value stands that has to come to lie between two. */
export function aim({ value, least = -Infinity, most = Infinity, near }: Aim): Verdict['is'] {
  if (value >= least && value <= most) return 'done';
  if (value >= least - near && value <= most + near) return 'nearly';
  return value < least ? 'too-low' : 'too-high';
}

/** The same for a moment of a story, which is early or late. */
export function aimInTime(asked: Aim): Verdict['is'] {
  const is = aim(asked);
  return is === 'too-low' ? 'too-early' : is === 'too-high' ? 'too-late' : is;
}

/** `verdict` and `done` of a task out of one function, so that the two cannot disagree. */
export function judged<M>(verdict: (model: M) => Verdict | null) {
  return { verdict, done: (model: M) => verdict(model)?.is === 'done' };
}
