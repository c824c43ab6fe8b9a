import { words as states } from '../../car/states/words.en.ts';
import { training } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { pressure, seconds } from '../../quantity/quantities.ts';
import { aim, aimInTime, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { rowAt, START, type WholeCarGivens, type WholeCarModel } from './model.ts';
import { stateAt } from '../../simulation/traces/controller.ts';
import { words } from './task-words.en.ts';

const sealed: Partial<WholeCarGivens> = { ...START, time: 0 };
/** A stop of the time control [s]. */
const STOP = 0.05;
/** Standing in gear, long after a sound clutch has filled and before the brake is let go [s]. */
const STANDING = 2.4;
/** A tenth short is more than two gauges differ by. */
const SHORT = 0.9;

export const tasks: readonly TaskSpec<WholeCarGivens, WholeCarModel>[] = [
  {
    id: 'gives-up',
    ...words.givesUp,
    start: sealed,
    controls: ['time'],
    ...judged(({ givens, hot }) => {
      const gaveUp = hot.value.solved.events.find(({ event }) => event === 'code stored');
      if (gaveUp === undefined) return null;
      const time = givens.time.value;
      return {
        is: aimInTime({
          value: time,
          least: gaveUp.time - 1e-9,
          most: gaveUp.time + STOP,
          near: 0.3,
        }),
        reached: (s) =>
          words.reached.time({
            time: printer(s)(time, seconds),
            state: states[stateAt(hot.value.solved.states, time)],
          }),
      };
    }),
  },
  {
    id: 'line',
    ...words.line,
    start: { ...sealed, time: STANDING },
    controls: ['fault', 'severity'],
    ...judged(({ hot: { value: hot } }) => {
      const has = hot.solved.trace.linePressure[rowAt(hot, STANDING)] ?? 0;
      const { lineLeast } = training.commands;
      return {
        is: aim({ value: has, most: SHORT * lineLeast, near: 0.05 * lineLeast }),
        reached: (s) => {
          const print = printer(s);
          return words.reached.line({
            line: print(has / 1e3, pressure),
            wanted: print(lineLeast / 1e3, pressure),
          });
        },
      };
    }),
  },
  {
    id: 'cold-too',
    ...words.coldToo,
    start: { ...sealed, time: STANDING },
    controls: ['fault', 'severity'],
    done: ({ cold, hot }) => cold.value.gaveUp && hot.value.gaveUp,
  },
];
