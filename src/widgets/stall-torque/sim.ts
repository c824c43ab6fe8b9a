import { printer } from '../../quantity/print.ts';
import { power, pressure, speed, torque } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { stalledTorque } from '../../car/need.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { IDLE_RPM, type StallGivens, type StallModel } from './model.ts';
import { words } from './words.en.ts';

/** Up to a little under the stall speed at full throttle. */
export const ENGINE = { min: 500, max: 2200, step: 10 } as const;
const PRESSURE = { min: 110, max: 800, step: 1 } as const;

const start: StallGivens = { rpm: IDLE_RPM, pressure: 400 };
const end = { rpm: 2 * IDLE_RPM };

function facts(system: UnitSystem, reached = end.rpm) {
  const print = printer(system);
  return {
    idle: print(IDLE_RPM, speed),
    twice: print(reached, speed),
    atIdle: print(stalledTorque(IDLE_RPM), torque),
    atTwice: print(stalledTorque(reached), torque),
  };
}
const { options, ...predict } = told(words.predict, (system) => facts(system));

export const sim: SimSpec<StallGivens, StallModel> = {
  id: 'stall-torque',
  title: words.title,
  linkVersion: 1,
  controls: [
    numberControl('rpm', words.controls.rpm, speed, ENGINE),
    numberControl('pressure', words.controls.pressure, pressure, PRESSURE),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end,
    outcome: ({ asked, givens }) => {
      const times = asked.value / stalledTorque(IDLE_RPM);
      const reached = givens.rpm.value;
      return {
        option: times < 1.5 ? 'same' : times < 3 ? 'twice' : 'fourfold',
        words: (system) => words.outcome(facts(system, reached)),
      };
    },
  },
  says: ({ givens, asked, holds, heat }, system) => {
    const print = printer(system);
    const said = holds.value >= asked.value ? words.says.holds : words.says.slips;
    return [
      said({
        speed: print(givens.rpm.value, speed),
        asked: print(asked.value, torque),
        holds: print(holds.value, torque),
      }),
      words.says.heat({ heat: print(heat.value, power) }),
    ].join(' ');
  },
};
