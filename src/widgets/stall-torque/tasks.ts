import { crackFault, makeCar, REFERENCE_CRACK_MM } from '../../car/car.ts';
import { HOT_C } from '../../car/cold-and-hot.ts';
import { needs } from '../../car/need.ts';
import { clutchKpa } from '../../car/readings.ts';
import { stallSpeed, training, trainingLump } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import {
  length,
  power,
  pressure,
  speed,
  temperatureRise,
  torque,
} from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { heatAt, IDLE_RPM, makeModel, type StallGivens, type StallModel } from './model.ts';
import { ENGINE } from './sim.ts';
import { words } from './task-words.en.ts';

const { drive } = training;
const { reached } = words;
/** Hot at idle with the crack of the course, in whole kPa as the control has it. */
const CRACKED_KPA = Math.round(
  clutchKpa(makeCar({ faults: crackFault(REFERENCE_CRACK_MM) }), { tempC: HOT_C }),
);
/** Ten horsepower [kW]. */
const HEAT_KW = 7.457;
const STALL_RPM = stallSpeed(drive, 1, drive.idleRpm);

const cracked = makeModel();
cracked.apply({ pressure: CRACKED_KPA });

const texts = told(words.tasks, (system) => {
  const print = printer(system);
  return {
    crack: print(REFERENCE_CRACK_MM, length),
    commanded: print(training.testPoints.idle.clutch / 1e3, pressure),
    has: print(CRACKED_KPA, pressure),
    idle: print(IDLE_RPM, speed),
    edge: print(Math.ceil(cracked.letsGo.value / ENGINE.step) * ENGINE.step, speed),
    speed: print(needs.firm.engineRpm, speed),
    needs: print(needs.firm.kPa, pressure),
    idleNeeds: print(needs.standing.kPa, pressure),
    heat: print(HEAT_KW, power),
    stall: print(STALL_RPM, speed),
    double: print(heatAt(STALL_RPM), power),
    rise: print((heatAt(STALL_RPM) * 1e3) / trainingLump.capacity, temperatureRise),
  };
});

const holdsAgainst =
  ({ givens, asked, holds }: StallModel) =>
  (system: UnitSystem) => {
    const print = printer(system);
    return reached.holds({
      speed: print(givens.rpm.value, speed),
      asked: print(asked.value, torque),
      holds: print(holds.value, torque),
    });
  };

export const tasks: readonly TaskSpec<StallGivens, StallModel>[] = [
  {
    id: 'where-it-lets-go',
    ...texts.letsGo,
    start: { rpm: IDLE_RPM, pressure: CRACKED_KPA },
    controls: ['rpm'],
    ...judged((model) => {
      const edge = model.letsGo.value;
      return {
        is: aim({ value: model.givens.rpm.value, least: edge, most: edge + 20, near: 60 }),
        reached: holdsAgainst(model),
      };
    }),
  },
  {
    id: 'firm-take-off',
    ...texts.firm,
    start: { rpm: needs.firm.engineRpm, pressure: CRACKED_KPA },
    controls: ['pressure'],
    ...judged((model) => {
      const least = model.needs.value;
      return {
        is: aim({ value: model.givens.pressure.value, least, most: least + 10, near: 30 }),
        reached: holdsAgainst(model),
      };
    }),
  },
  {
    id: 'ten-horsepower-of-heat',
    ...texts.heat,
    start: { rpm: IDLE_RPM, pressure: 400 },
    controls: ['rpm'],
    ...judged(({ heat, givens }) => ({
      is: aim({ value: heat.value, least: 0.9 * HEAT_KW, most: 1.1 * HEAT_KW, near: 2 }),
      reached: (system) => {
        const print = printer(system);
        return reached.heat({
          speed: print(givens.rpm.value, speed),
          heat: print(heat.value, power),
        });
      },
    })),
  },
];
