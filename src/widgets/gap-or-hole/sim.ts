import { fluidControl } from '../../simulation/choices/fluid-class.ts';
import { numberControl, temperatureControl } from '../../simulation/choices/number.ts';
import { COOL_C, coolAndHot, HOT_C } from '../../simulation/choices/temperatures.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { hairs } from '../../quantity/hairs/hairs.ts';
import { printer } from '../../quantity/print.ts';
import { count, length, pressure, temperature } from '../../quantity/quantities.ts';
import type { GapOrHoleGivens, GapOrHoleModel } from './model.ts';
import { limit, printLeak, printTimes } from './print.ts';
import { words } from './words.en.ts';

/** Above this the two did not "grow alike". */
export const CLEARLY_MORE = 1.5;
const HEIGHT = { min: 0.02, max: 0.4, step: 0.01 };
const PRESSURE = { min: 100, max: 1000, step: 10 };
export const ONE_HAIR = { height: 0.07, pressure: 400, fluid: 'low-viscosity' } as const;

const { options, ...predict } = told(words.predict, coolAndHot);
const { controls, says } = words;

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
