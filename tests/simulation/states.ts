import fc from 'fast-check';
import type { ControlSpec, Givens } from '../../src/simulation/sim-spec.ts';

type Control = ControlSpec<Givens>;
export type State = Readonly<Record<string, number | string | boolean>>;

/** Values of a number control on its own stops, `parts` + 1 of them from end to end. */
function stops({ min, max, step }: Extract<Control, { kind: 'number' }>, parts: number): number[] {
  const last = Math.round((max - min) / step);
  const values = Array.from({ length: parts + 1 }, (_, i) => Math.round((i * last) / parts));
  // As a slider gives it: 0.07, not 0.07 and a bit.
  return [...new Set(values)].map((n) => Number((min + n * step).toFixed(9)));
}

/** Values of a control: all of a choice, both of a switch, some of a range. */
function valuesOf(control: Control, parts: number): State[string][] {
  switch (control.kind) {
    case 'number':
      return stops(control, parts);
    case 'choice':
      return control.options.map(({ value }) => value);
    case 'flag':
      return [false, true];
  }
}

/** Every control by itself from end to end, and a scatter of all of them at once. */
export function grid(controls: readonly Control[], start: State, scattered = 30): State[] {
  const alone = controls.flatMap((control) =>
    valuesOf(control, 4).map((value) => ({ ...start, [control.key]: value })),
  );
  const together = fc.record(
    Object.fromEntries(
      controls.map((control) => [control.key, fc.constantFrom(...valuesOf(control, 20))]),
    ),
  );
  return [...alone, ...fc.sample(together, { seed: 7, numRuns: scattered })];
}

/** How many stops of one control are tried before the others move as well. */
const ALONE = 201;
const FINENESS = [2, 5, 10, 20, 50, 200, 1000, 5000];

/** The `n`th setting of all the lists at once. */
function setting(keys: readonly string[], lists: readonly State[string][][], n: number): State {
  let rest = n;
  return Object.fromEntries(
    keys.map((key, i) => {
      const list = lists[i] ?? [];
      const value = list[rest % list.length] ?? 0;
      rest = Math.floor(rest / list.length);
      return [key, value];
    }),
  );
}

/**
 * The first setting of some controls that is wanted, out of at most `most`: each control moved by
 * itself, the others left where they are, then all of them together, coarse first and finer by and
 * by. A task is solved by moving what is live, so nothing else moves.
 */
export function search(
  controls: readonly Control[],
  most: number,
  wanted: (moved: State) => boolean,
): State | null {
  let tried = 0;
  for (const moving of [...controls.map((control) => [control]), controls]) {
    const keys = moving.map(({ key }) => key);
    for (const parts of FINENESS) {
      const lists = moving.map((control) => valuesOf(control, parts));
      const size = lists.reduce((product, { length }) => product * length, 1);
      if (moving.length < controls.length && size > ALONE) break;
      for (let n = 0; n < size && tried < most; n += 1) {
        tried += 1;
        const moved = setting(keys, lists, n);
        if (wanted(moved)) return moved;
      }
    }
  }
  return null;
}
