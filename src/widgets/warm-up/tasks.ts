import { printer } from '../../quantity/print.ts';
import { length, temperature, temperatureRise } from '../../quantity/quantities.ts';
import { crackStop } from '../../simulation/choices/number.ts';
import { aimInTime, judged } from '../../simulation/judged.ts';
import type { TaskSpec, Verdict } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { OUTSIDE, START, type WarmUpGivens, type WarmUpModel } from './model.ts';
import { spoken } from './says.ts';
import { at, goesAt, minuteOf } from './sim.ts';
import { words } from './task-words.en.ts';

/** The time a shop can spare for a test drive, and what the customer needs [min]. */
const SPARE = 15;
const CUSTOMER = 10;
/** Wider than one step of the slider in either system [°C]. */
const NEAR = 2;
/** Above this fluid ages fast (common practice, no source) [°C]. */
const TOO_HOT = 120;
const FROST = -10;

const short: Partial<WarmUpGivens> = {
  ...START,
  kind1: 'pulling',
  minutes1: CUSTOMER,
  minutes2: 0,
  minutes3: 0,
};
const yard: Partial<WarmUpGivens> = { ...START, kind1: 'idling', kind2: 'idling', kind3: 'idling' };

const texts = told(words.tasks, (system) => {
  const print = printer(system);
  return {
    crack: print(START.crack, length),
    goesAt: print(goesAt(at({})), temperature),
    gentle: spoken(minuteOf(at({})) ?? Number.NaN),
    spare: spoken(SPARE),
    fast: spoken(minuteOf(at({ kind1: 'pulling' })) ?? Number.NaN),
    tooHot: print(TOO_HOT, temperature),
    drive: spoken(CUSTOMER),
    near: print(NEAR, temperatureRise),
    frost: print(FROST, temperature),
    frostEnd: print(at({ ...short, outside: FROST }).end.value.tempC, temperature),
    outside: print(START.outside, temperature),
    yardEnd: print(at(yard).end.value.tempC, temperature),
    customer: spoken(CUSTOMER),
    yours: spoken(SPARE),
  };
});
const { reached } = words;

/** Within so many minutes; where the drive does not show it at all, how far it gets. */
const within = (most: number) =>
  judged((model: WarmUpModel): Verdict | null => {
    const minute = minuteOf(model);
    if (minute === null) {
      // A crack that no temperature shows is nothing that a task sets.
      if (model.letsGo.value.kind !== 'at') return null;
      return {
        is: 'too-low',
        reached: (system) => {
          const print = printer(system);
          return reached.ends({
            temp: print(model.end.value.tempC, temperature),
            goesAt: print(goesAt(model), temperature),
          });
        },
      };
    }
    return {
      is: aimInTime({ value: minute, most, near: 2 }),
      reached: reached.after({ minutes: spoken(minute) }),
    };
  });

export const tasks: readonly TaskSpec<WarmUpGivens, WarmUpModel>[] = [
  {
    id: 'quick',
    ...texts.quick,
    start: START,
    controls: ['kind1', 'kind2', 'kind3'],
    ...within(SPARE),
  },
  {
    id: 'winter',
    ...texts.winter,
    start: { ...short, outside: 40 },
    controls: ['outside'],
    ...judged(({ givens, shows, showsAt }) => {
      const outside = givens.outside.value;
      const colder = (by: number) => showsAt(Math.max(OUTSIDE.min - 1, outside - by)).when === 'at';
      const shown = shows.value.when === 'at';
      return {
        is: !shown
          ? showsAt(Math.min(OUTSIDE.max, outside + NEAR)).when === 'at'
            ? 'nearly'
            : 'too-low'
          : !colder(NEAR)
            ? 'done'
            : colder(3 * NEAR)
              ? 'too-high'
              : 'nearly',
        reached: (system) =>
          (shown ? reached.shows : reached.hides)({
            outside: printer(system)(outside, temperature),
          }),
      };
    }),
  },
  {
    id: 'idle',
    ...texts.idle,
    start: yard,
    controls: ['crack'],
    ...judged((model) => {
      const crack = model.givens.crack.value;
      const shown = (mm: number) => minuteOf(at({ ...yard, crack: Math.max(0, mm) })) !== null;
      const lets = model.letsGo.value;
      if (lets.kind !== 'at') return null;
      return {
        is:
          minuteOf(model) === null
            ? 'too-low'
            : shown(crack - crackStop(crack))
              ? 'too-high'
              : 'done',
        reached: (system) => {
          const print = printer(system);
          return reached.crack({
            crack: print(crack, length),
            goesAt: print(lets.tempC, temperature),
          });
        },
      };
    }),
  },
  {
    id: 'lunch',
    ...texts.lunch,
    start: { ...START, minutes1: SPARE, minutes2: 0, minutes3: 0 },
    controls: ['above'],
    ...within(CUSTOMER),
  },
];
