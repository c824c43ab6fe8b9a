import { printer } from '../../quantity/print.ts';
import { length, seconds, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { makeModel, START, type SealGivens, type SealModel, type Times } from './model.ts';
import { APART, NOTICED } from './sim.ts';
import { SPAN } from './seals.ts';
import { words } from './task-words.en.ts';

const { reached } = words;
/** Later than a sound one by less than this is not late [s]. */
const HARDLY = 0.1;
const FROST_C = 0;
/** A cool shop [°C]. */
const COOL_C = 10;
const wide = { temp: COOL_C, crack: '0.15', lip: '50' } as const;

const texts = told(words.tasks, (system) => {
  const print = printer(system);
  const model = makeModel();
  const time = (of: keyof Times, tempC: number) => print(model.at(tempC)[of] ?? 0, seconds);
  const alike = model.alike.value ?? 0;
  const course = {
    alike: print(alike, temperature),
    both: time('hard', alike),
    sound: time('sound', alike),
  };
  const frost = {
    cold: print(SPAN.min, temperature),
    soundCold: time('sound', SPAN.min),
    frost: print(FROST_C, temperature),
    hard: time('hard', FROST_C),
  };
  model.apply({ crack: '0.4' });
  return {
    ...course,
    ...frost,
    crack: print(0.4, length),
    split: time('split', FROST_C),
    late: print(NOTICED, seconds),
    still: print(HARDLY, seconds),
    cool: print(COOL_C, temperature),
  };
});

const reachedIn =
  ({ givens, late }: SealModel) =>
  (system: UnitSystem): string => {
    const print = printer(system);
    const { split, hard } = late.value;
    const temp = print(givens.temp.value, temperature);
    const more = print(Math.max(0, hard), seconds);
    return Number.isFinite(split)
      ? reached.late({ temp, split: print(Math.max(0, split), seconds), hard: more })
      : reached.given({ temp, hard: more });
  };

export const tasks: readonly TaskSpec<SealGivens, SealModel>[] = [
  {
    id: 'alike',
    ...texts.alike,
    start: { ...START, temp: 60 },
    controls: ['temp'],
    ...judged((model) => {
      const { split, hard } = model.late.value;
      // Colder the hard lip is ahead, warmer the split seal.
      return {
        is: aim({ value: split - hard, least: -APART, most: APART, near: 0.15 }),
        reached: reachedIn(model),
      };
    }),
  },
  {
    id: 'frosty-morning',
    ...texts.frost,
    start: { temp: 80, crack: '0.4', lip: '50' },
    controls: ['temp', 'lip', 'crack'],
    ...judged((model) => {
      const { split, hard } = model.late.value;
      const is =
        hard >= NOTICED
          ? split < HARDLY
            ? 'done'
            : 'not-that'
          : hard > 0.2
            ? 'nearly'
            : 'not-that';
      return { is, reached: reachedIn(model) };
    }),
  },
  {
    id: 'wide-crack',
    ...texts.wide,
    start: wide,
    controls: ['crack', 'temp'],
    ...judged((model) => {
      const { temp } = model.givens;
      if (temp.value > COOL_C) {
        return {
          is: 'not-that',
          reached: (system) => reached.warm({ cool: printer(system)(COOL_C, temperature) }),
        };
      }
      const { split } = model.late.value;
      return { is: aim({ value: split, least: NOTICED, near: 0.1 }), reached: reachedIn(model) };
    }),
  },
];
