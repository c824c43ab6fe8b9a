import { GAP_REYNOLDS_LIMIT } from '../../engine/index.ts';
import { fluidControl } from '../../simulation/choices/fluid-class.ts';
import { numberControl, temperatureControl } from '../../simulation/choices/number.ts';
import { COOL_C, coolAndHot, HOT_C } from '../../simulation/choices/temperatures.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { hairs } from '../../quantity/hairs.ts';
import { printer } from '../../quantity/print.ts';
import { count, length, pressure, temperature } from '../../quantity/quantities.ts';
import type { GapOrHoleGivens, GapOrHoleModel } from './model.ts';
import { limit, printLeak, printTimes } from './print.ts';
import { words } from './words.en.ts';

/** Above this the two did not "grow alike". */
const CLEARLY_MORE = 1.5;
const HEIGHT = { min: 0.02, max: 0.4, step: 0.01 };
const PRESSURE = { min: 100, max: 1000, step: 10 };
const ONE_HAIR = { height: 0.07, pressure: 400, fluid: 'low-viscosity' } as const;

const { options, ...predict } = told(words.predict, coolAndHot);
const tasks = told(words.tasks, (s) => ({ ...coolAndHot(s), limit }));
const { controls, says, reached } = words;

/** Judged by how many times more the crack leaks hot than cold. */
const growing = (bounds: { readonly least?: number; readonly most?: number; near: number }) =>
  judged(({ growth }: GapOrHoleModel) => {
    const value = growth.value.crack;
    return {
      is: aim({ value, ...bounds }),
      reached: (s) => reached.grown({ ...coolAndHot(s), times: printTimes(value) }),
    };
  });

export const sim: SimSpec<GapOrHoleGivens, GapOrHoleModel> = {
  id: 'gap-or-hole',
  title: words.title,
  linkVersion: 1,
  controls: [
    temperatureControl('temp'),
    numberControl('height', controls.height, length, HEIGHT, hairs),
    numberControl('pressure', controls.pressure, pressure, PRESSURE),
    fluidControl('fluid'),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start: { temp: COOL_C, ...ONE_HAIR },
    end: { temp: HOT_C },
    outcome: ({ crack, hole, growth }) => {
      const { leak } = crack.value;
      const { crack: crackTimes, hole: holeTimes } = growth.value;
      const apart = crackTimes / holeTimes;
      return {
        option: apart > CLEARLY_MORE ? 'crack' : apart < 1 / CLEARLY_MORE ? 'hole' : 'alike',
        words: (s) =>
          words.outcome({
            ...coolAndHot(s),
            crack: printLeak(leak, s),
            crackTimes: printTimes(crackTimes),
            hole: printLeak(hole.value, s),
            holeTimes: printTimes(holeTimes),
          }),
      };
    },
  },
  tasks: [
    {
      id: 'eight-times',
      ...tasks.eightTimes,
      start: { temp: HOT_C, height: 0.25, pressure: 400, fluid: 'low-viscosity' },
      controls: ['height'],
      ...growing({ least: 8, near: 1 }),
    },
    {
      id: 'like-a-hole',
      ...tasks.likeHole,
      start: { temp: HOT_C, height: 0.07, pressure: 600, fluid: 'low-viscosity' },
      controls: ['height', 'pressure'],
      ...growing({ most: CLEARLY_MORE, near: 0.3 }),
    },
    {
      id: 'five-to-one',
      ...tasks.fiveToOne,
      start: { temp: COOL_C, ...ONE_HAIR },
      controls: ['temp'],
      ...judged(({ crack, hole, givens }) => {
        const value = crack.value.leak / hole.value;
        const temp = givens.temp.value;
        const times = printTimes(value);
        return {
          is: aim({ value, least: 4.7, most: 5.3, near: 0.7 }),
          reached: (s) => reached.apart({ temp: printer(s)(temp, temperature), times }),
        };
      }),
    },
    {
      id: 'end-of-law',
      ...tasks.endOfLaw,
      start: { temp: COOL_C, ...ONE_HAIR },
      controls: ['temp', 'height', 'pressure'],
      ...judged(({ crack }) => {
        const { reynolds, laminarLawValid } = crack.value;
        const missed = aim({ value: reynolds, least: GAP_REYNOLDS_LIMIT, near: 300 });
        return {
          is: laminarLawValid ? missed : 'done',
          reached: (s) => reached.reynolds({ reynolds: printer(s)(reynolds, count) }),
        };
      }),
    },
  ],
  says: ({ crack, hole, growth, givens }, s) => {
    const print = printer(s);
    const { leak, reynolds, laminarLawValid } = crack.value;
    const sentences = [
      says.leaks({
        temp: print(givens.temp.value, temperature),
        pressure: print(givens.pressure.value, pressure),
        crack: printLeak(leak, s),
        hole: printLeak(hole.value, s),
      }),
      says.growth({
        ...coolAndHot(s),
        crackTimes: printTimes(growth.value.crack),
        holeTimes: printTimes(growth.value.hole),
      }),
    ];
    if (!laminarLawValid) sentences.push(says.wild({ reynolds: print(reynolds, count), limit }));
    return sentences.join(' ');
  },
};
