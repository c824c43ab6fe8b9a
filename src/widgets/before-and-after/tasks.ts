import { COMPLAINT_C } from '../../car/repair-names.ts';
import { readAs, SAME_C } from '../../diagnosis/before-after.ts';
import { printer } from '../../quantity/print.ts';
import { pressure, seconds, temperature, temperatureRise } from '../../quantity/quantities.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { COLD_PAIR, HOT_PAIR, pairAt, type ProofGivens, type ProofModel } from './model.ts';
import { printTaken, quantityOf } from './print.ts';
import { words } from './task-words.en.ts';

const SET = { test: 'tap', load: 'idle', rows: '0.1', car: 'a' } as const;
const COLD = COLD_PAIR.after;

const texts = told(words.tasks, (system) => {
  const print = printer(system);
  const untouched = pairAt({ car: 'd', before: COMPLAINT_C, after: COLD });
  const half = pairAt({ car: 'b' });
  const stop = pairAt({ car: 'b', test: 'stop' });
  return {
    hot: print(COMPLAINT_C, temperature),
    cold: print(COLD, temperature),
    same: print(SAME_C, temperatureRise),
    was: print(readAs(untouched.before), pressure),
    is: print(readAs(untouched.after), pressure),
    stop: print(readAs(stop.after), seconds),
    sound: print(stop.right, seconds),
    left: print(readAs(half.after), pressure),
    right: print(half.right, pressure),
    room: print(half.room, pressure),
  };
});
const { reached } = words;

export const tasks: readonly TaskSpec<ProofGivens, ProofModel>[] = [
  {
    id: 'make-it-count',
    ...texts.second,
    start: { ...SET, before: COMPLAINT_C, after: COLD },
    controls: ['after'],
    ...judged(({ givens, pair }) => ({
      is: aim({
        value: givens.after.value,
        least: COMPLAINT_C - SAME_C,
        most: COMPLAINT_C + SAME_C,
        near: 8,
      }),
      reached: (s) =>
        reached.apart({
          apart: printer(s)(pair.value.apartC, temperatureRise),
          same: printer(s)(SAME_C, temperatureRise),
        }),
    })),
  },
  {
    id: 'fooled-by-cold',
    ...texts.fooled,
    start: { ...SET, ...HOT_PAIR, car: 'd' },
    controls: ['before', 'after'],
    ...judged(({ pair }) => {
      const { before, after, difference, doubt } = pair.value;
      return {
        is: aim({ value: difference, least: doubt + 1e-6, near: doubt / 2 }),
        reached: (s) => {
          const print = printer(s);
          return reached.change({
            from: print(readAs(before), pressure),
            to: print(readAs(after), pressure),
            doubt: print(doubt, pressure),
          });
        },
      };
    }),
  },
  {
    id: 'half-cured',
    ...texts.halfCured,
    start: { ...SET, ...HOT_PAIR, test: 'stop', car: 'b' },
    controls: ['test', 'load'],
    ...judged(({ pair, state }) => {
      const { test } = state.value;
      const { after, right, is: found } = pair.value;
      const shows = found === 'notCured';
      if (test === 'stop' && !shows) return null;
      return {
        is: shows ? 'done' : 'not-that',
        reached: (s) => {
          const is = printTaken(after, test, s);
          return shows
            ? reached.shows({ is, right: printer(s)(right, quantityOf(test)) })
            : reached.blind({ is });
        },
      };
    }),
  },
];
