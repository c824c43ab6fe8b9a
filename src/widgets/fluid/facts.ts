/** What the question and the tasks name of the two fluids they are about, worked out once. */
import { findRoot, fluidClasses, kinematicCSt, makeFluid } from '../../engine/index.ts';
import { COOL_C, coolAndHot, HOT_C } from '../../simulation/choices/temperatures.ts';
import { printer } from '../../quantity/print.ts';
import { temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { indexOf } from './model.ts';
import { printCst, printIndex, printTimes } from './print.ts';

const low = makeFluid(fluidClasses['low-viscosity']);
const standard = makeFluid(fluidClasses.standard);

const thinnerThanCool = (tempC: number): number =>
  kinematicCSt(low, COOL_C) / kinematicCSt(low, tempC);
const reaches = (times: number): number =>
  findRoot((tempC) => thinnerThanCool(tempC) - times, COOL_C, 140).root;
const [twice, fiveTimes, tenTimes] = [reaches(2), reaches(5), reaches(10)];
const apart = (tempC: number): number => kinematicCSt(standard, tempC) - kinematicCSt(low, tempC);
const cross = findRoot(apart, -30, COOL_C).root;

export function facts(system: UnitSystem) {
  const print = printer(system);
  return {
    ...coolAndHot(system),
    deepCold: print(-20, temperature),
    twice: print(twice, temperature),
    fiveTimes: print(fiveTimes, temperature),
    tenTimes: print(tenTimes, temperature),
    cross: print(cross, temperature),
    from: printCst(kinematicCSt(low, COOL_C)),
    to: printCst(kinematicCSt(low, HOT_C)),
    times: printTimes(thinnerThanCool(HOT_C)),
    lowIndex: printIndex(indexOf(low)),
    standardIndex: printIndex(indexOf(standard)),
  };
}
