import { findRoot } from './find-root.ts';
import { insideStep } from './rosenbrock.ts';
import type { Step } from './rosenbrock.ts';

/**
 * First time within an accepted step at which a value of the state reaches zero from below, or null.
 *
 * The step is looked through in pieces, since a value can dip over its limit and back within one long step; the root is
 * then found between the ends of a piece.
 *
 * @param step an accepted step: times [s], states and slopes [any]
 * @param until where to stop looking [s]
 * @param piece how finely to look [s]
 * @param value of a state, reached where it is zero or above [any]
 * @param scratch room for one state, overwritten [any]
 * @returns time [s] or null
 * Range: until within the step.
 * Source: event location on dense output, Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I, II.6.
 * @example
 * firstReached({ t0: 0, t1: 1, y0: Float64Array.of(0), y1: Float64Array.of(1), f0: Float64Array.of(1), f1: Float64Array.of(1) }, 1, 0.1, (y) => y[0] - 0.25, Float64Array.of(0)) // 0.25
 */
export function firstReached(
  step: Step,
  until: number,
  piece: number,
  value: (state: Float64Array) => number,
  scratch: Float64Array,
): number | null {
  const at = (time: number): number => {
    insideStep(step, time, scratch);
    return value(scratch);
  };
  const pieces = Math.max(1, Math.ceil((until - step.t0) / piece));
  let from = step.t0;
  let before = at(from);
  if (before >= 0) return from;
  for (let count = 1; count <= pieces; count += 1) {
    const to = step.t0 + ((until - step.t0) * count) / pieces;
    const after = at(to);
    if (after >= 0) return findRoot(at, from, to, before, after).root;
    from = to;
    before = after;
  }
  return null;
}
