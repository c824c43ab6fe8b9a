import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { REFERENCE_CRACK_MM } from '../../car/car.ts';
import { faultSeverity } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { percent, pressure, temperature } from '../../quantity/quantities.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { HEALTHY_AIR, type HeatAndAirGivens, type HeatAndAirModel } from './model.ts';
import { at, GOOD_AIR } from './sim.ts';
import { words } from './task-words.en.ts';

/** Within a tenth of a healthy one reads right. */
const RIGHT = 0.9;
/** Where a lip gone hard has closed again [°C]. */
const WARM_C = 60;
/** What counts as short, hot at idle [kPa]: 35 psi. */
const SHORT_KPA = 241.3;
/** How worn the rings of the third car are [%]. */
const WORN = 20;

/** Hot pressures that a shop gauge would call the same [kPa]. */
const NEAR_KPA = 15;

const isRight = (model: HeatAndAirModel, tempC: number): boolean => {
  const { here, healthy } = model.at(tempC);
  return here >= RIGHT * healthy;
};
const hotKpa = (model: HeatAndAirModel): number => model.at(HOT_C).here;
const ringsWorn = at({ circuit: 'reverse', severity: WORN });
const hotWorn = hotKpa(ringsWorn);
const heldWorn = ringsWorn.air.value.circuit;

/** The piston seal that is as low hot as those rings. */
function cutAlike(): HeatAndAirModel {
  let severity = 0;
  const cut = (percentBad: number) =>
    at({ fault: 'pistonSeal', circuit: 'reverse', severity: percentBad });
  while (severity < 100 && hotKpa(cut(severity)) > hotWorn) severity += 1;
  return cut(severity);
}

const { byAir, ...firstTwo } = words.tasks;
const texts = told(firstTwo, (system) => {
  const print = printer(system);
  const choked = at({ fault: 'feedRestriction', severity: 100 }).otherHot.value;
  const course = 100 * faultSeverity('transferSeal', REFERENCE_CRACK_MM);
  return {
    cold: print(COLD_C, temperature),
    warm: print(WARM_C, temperature),
    hot: print(HOT_C, temperature),
    held: print(at({ fault: 'hardLip', severity: 90 }).air.value.circuit, percent),
    pistonHeld: print(at({ fault: 'pistonSeal', severity: 100 }).air.value.circuit, percent),
    short: print(SHORT_KPA, pressure),
    sealHeld: print(at({ fault: 'transferSeal', severity: course }).air.value.seal, percent),
    feedReverse: print(choked.here, pressure),
    reverse: print(choked.healthy, pressure),
  };
});
const thirdCar = told(byAir, (system) => {
  const print = printer(system);
  return {
    cold: print(ringsWorn.at(COLD_C).here, pressure),
    hot: print(hotWorn, pressure),
    held: print(heldWorn, percent),
    whole: print(HEALTHY_AIR.circuit, percent),
    piston: print(cutAlike().air.value.circuit, percent),
  };
});
const { reached } = words;

export const tasks: readonly TaskSpec<HeatAndAirGivens, HeatAndAirModel>[] = [
  {
    id: 'only-in-the-morning',
    ...texts.morning,
    start: { fault: 'sealingRings', severity: 40, temp: COLD_C, circuit: 'forward' },
    controls: ['fault', 'severity', 'temp'],
    ...judged((model) => {
      const cold = model.at(COLD_C);
      if (!isRight(model, WARM_C) || !isRight(model, HOT_C)) return null;
      const hides = isRight(model, COLD_C);
      // A fault that is too small to show is told of for the right one alone: for another it would be a hint.
      if (hides && model.givens.fault.value !== 'hardLip') return null;
      return {
        is: hides ? 'nearly' : 'done',
        reached: (system) => {
          const print = printer(system);
          return reached.cold({
            cold: print(cold.here, pressure),
            healthy: print(cold.healthy, pressure),
          });
        },
      };
    }),
  },
  {
    id: 'passes-the-air-test',
    ...texts.passesAir,
    start: { fault: 'pistonSeal', severity: 60, temp: HOT_C, circuit: 'forward' },
    controls: ['fault', 'severity', 'temp'],
    ...judged((model) => {
      const { air, otherHot } = model;
      const { here, healthy } = otherHot.value;
      const passes = air.value.circuit >= GOOD_AIR && air.value.seal >= GOOD_AIR;
      if (!passes || here < RIGHT * healthy || !isRight(model, COLD_C)) return null;
      const hot = hotKpa(model);
      if (hot > SHORT_KPA && model.givens.fault.value !== 'clutchControl') return null;
      return {
        is: aim({ value: hot, most: SHORT_KPA, near: 20 }),
        reached: (system) => reached.hot({ hot: printer(system)(hot, pressure) }),
      };
    }),
  },
  {
    id: 'by-air',
    ...thirdCar,
    start: { fault: 'transferSeal', severity: 50, temp: HOT_C, circuit: 'reverse' },
    controls: ['fault', 'severity', 'temp'],
    ...judged((model) => {
      const { circuit, seal } = model.air.value;
      const hot = hotKpa(model);
      const readsSo = seal === 100 && isRight(model, COLD_C) && Math.abs(hot - hotWorn) < NEAR_KPA;
      const is = aim({ value: circuit, least: heldWorn - 1, most: heldWorn + 1, near: 5 });
      if (model.givens.fault.value !== 'sealingRings' && !(readsSo && is === 'done')) return null;
      return {
        is,
        reached: (system) => {
          const print = printer(system);
          return reached.air({
            held: print(circuit, percent),
            hot: print(hot, pressure),
          });
        },
      };
    }),
  },
];
