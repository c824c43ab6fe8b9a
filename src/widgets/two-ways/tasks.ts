import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { needs } from '../../car/need.ts';
import { printer } from '../../quantity/print.ts';
import { percent, pressure, seconds, temperature } from '../../quantity/quantities.ts';
import { judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { FEED, pressureAt, START, type WaysGivens, type WaysModel } from './model.ts';
import { stoppedAfter } from './stopping.ts';
import { words } from './task-words.en.ts';

/** Wider than one step of the slider. */
const NEAR = 2;
const NEED = needs.firm.kPa;

/** The widest port [%] that lets the hot clutch fall short. */
export function edge(): number {
  let open: number = FEED.max;
  while (pressureAt('forward', open, HOT_C) >= NEED) open -= FEED.step;
  return open;
}

const texts = told(words.tasks, (system) => {
  const print = printer(system);
  return {
    need: print(NEED, pressure),
    near: print(NEAR, percent),
    cool: print(COLD_C, temperature),
    get has() {
      return print(pressureAt('forward', edge(), COLD_C), pressure);
    },
    get late() {
      return print(stoppedAfter('forward', edge(), COLD_C) ?? NaN, seconds);
    },
  };
});

export const tasks: readonly TaskSpec<WaysGivens, WaysModel>[] = [
  {
    id: 'hand',
    ...texts.hand,
    start: { ...START, fault: 'slip' },
    controls: ['range'],
    done: ({ parked }) => parked.value.mechanical,
  },
  {
    id: 'shut',
    ...texts.shut,
    start: { ...START, fault: 'misSet', feed: FEED.max },
    controls: ['feed'],
    ...judged(({ circuit, open, hot }) => {
      const holds = (by: number): boolean =>
        pressureAt(circuit.value, Math.min(FEED.max, open.value + by), HOT_C) >= NEED;
      const short = () => (holds(NEAR) ? 'done' : holds(3 * NEAR) ? 'nearly' : 'too-low');
      return {
        is: hot.value >= NEED ? 'too-high' : short(),
        reached: (s) =>
          words.reached({ has: printer(s)(hot.value, pressure), need: printer(s)(NEED, pressure) }),
      };
    }),
  },
  {
    id: 'home',
    ...texts.home,
    start: { ...START, range: 'P', fault: 'noPower' },
    controls: ['range', 'failSafe'],
    done: ({ fed }) => fed.value.mechanical !== undefined && fed.value.electronic === undefined,
  },
  {
    id: 'neutral-first',
    ...texts.neutralFirst,
    start: START,
    controls: ['fault', 'car'],
    done: ({ electronicEnd }) => electronicEnd.value === 'failSafeNeutral',
  },
];
