import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { litresOf, WINDOW_C } from '../../car/pan.ts';
import { training } from '../../engine/index.ts';
import { dimension, fluidVolume } from '../../quantity/part-quantities.ts';
import { printer } from '../../quantity/print.ts';
import { percent, pressure, speed, temperature } from '../../quantity/quantities.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { IDLE_RPM, levelAt, pickUpAt, type LevelGivens, type LevelModel } from './model.ts';
import { AT_MIDDLE_MM } from './print.ts';
import { words } from './task-words.en.ts';

/** What car two is short [L], and the air that its customer notices. */
const SHORT = 0.6;
const NOTICED = 0.1;
const FAST_RPM = 3000;
/** What car three reads hot [kPa]: 75 psi. */
const DOWN_KPA = 517.1;
/** Hot line pressures that are nearly there [kPa]. */
const NEAR_KPA = 60;
/** A fill that does both [L]. */
const FAR_SHORT = -2.3;
const twoShort = { off: -SHORT, temp: WINDOW_C.middle, rpm: IDLE_RPM, place: 'flat' } as const;

const texts = told(words.tasks, (system) => {
  const print = printer(system);
  const low = -levelAt({ temp: COLD_C }).stickMm;
  const air = (state: Partial<LevelGivens>) => print(100 * pickUpAt(state).air, percent);
  return {
    cold: print(COLD_C, temperature),
    hot: print(HOT_C, temperature),
    low: print(low, dimension),
    room: print(litresOf(low), fluidVolume),
    from: print(WINDOW_C.from, temperature),
    to: print(WINDOW_C.to, temperature),
    short: print(SHORT, fluidVolume),
    window: print(WINDOW_C.middle, temperature),
    tenth: print(100 * NOTICED, percent),
    speed: print(FAST_RPM, speed),
    fast: air({ ...twoShort, rpm: FAST_RPM }),
    bend: air({ ...twoShort, place: 'bend' }),
    asked: print(training.testPoints.idle.line / 1e3, pressure),
    down: print(DOWN_KPA, pressure),
    farShort: print(-FAR_SHORT, fluidVolume),
    coldAir: air({ off: FAR_SHORT, temp: COLD_C }),
    hotAir: air({ off: FAR_SHORT, temp: HOT_C }),
    hotLine: print(pickUpAt({ off: FAR_SHORT, temp: HOT_C }).lineKpa, pressure),
  };
});
const { reached } = words;

export const tasks: readonly TaskSpec<LevelGivens, LevelModel>[] = [
  {
    id: 'add-nothing',
    ...texts.alone,
    start: { off: 0, temp: COLD_C, rpm: IDLE_RPM, place: 'flat' },
    controls: ['temp'],
    ...judged(({ level, givens }) => {
      const mm = level.value.stickMm;
      return {
        is: aim({ value: mm, least: -AT_MIDDLE_MM, most: AT_MIDDLE_MM, near: 2 }),
        reached: (system) => {
          const print = printer(system);
          return reached.stick({
            temp: print(givens.temp.value, temperature),
            mm: print(Math.abs(mm), dimension),
          });
        },
      };
    }),
  },
  {
    id: 'driveway',
    ...texts.driveway,
    start: twoShort,
    controls: ['temp', 'rpm', 'place'],
    ...judged(({ pickUp, givens }) => {
      const { air } = pickUp.value;
      if (givens.place.value !== 'flat' || givens.rpm.value > IDLE_RPM)
        return { is: 'not-that', reached: reached.driveway };
      return {
        is: aim({ value: air, least: NOTICED, near: 0.05 }),
        reached: air > 0 ? reached.air({ air: printer('si')(100 * air, percent) }) : reached.noAir,
      };
    }),
  },
  {
    id: 'hot-and-low',
    ...texts.hot,
    start: { off: 0, temp: HOT_C, rpm: IDLE_RPM, place: 'flat' },
    controls: ['off', 'temp'],
    ...judged(({ givens }) => {
      const off = givens.off.value;
      const [cold, hot] = [COLD_C, HOT_C].map((temp) => pickUpAt({ off, temp }));
      if (cold === undefined || hot === undefined) return null;
      return {
        is: cold.lineAtCommand
          ? aim({ value: hot.lineKpa, most: DOWN_KPA, near: NEAR_KPA })
          : 'too-low',
        reached: (system) => {
          const print = printer(system);
          return reached.line({
            cold: print(cold.lineKpa, pressure),
            hot: print(hot.lineKpa, pressure),
          });
        },
      };
    }),
  },
];
