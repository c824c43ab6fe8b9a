import type { Test } from '../diagnosis/index.ts';
import { fluidVolume } from '../quantity/part-quantities.ts';
import { printer } from '../quantity/print.ts';
import { pressure, temperature } from '../quantity/quantities.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { words, type Limits } from './words.en.ts';

const { cautions } = words;

/** Common practice, no source. */
const GAUGE_KPA = 2000;
const AIR_KPA = 275;
const HAND_WARM_C = 50;
/** A quart, as near as a liter prints alike [L]. */
const DRAINED = 0.96;

function limitsIn(system: UnitSystem): Limits {
  const print = printer(system);
  return {
    gauge: print(GAUGE_KPA, pressure),
    drained: print(DRAINED, fluidVolume),
    handWarm: print(HAND_WARM_C, temperature),
    air: print(AIR_KPA, pressure),
  };
}

/** What stands before a test, since it can hurt somebody (specification of the planner, section 2.1). */
export function cautionsFor({ kind, at, setUps }: Test, system: UnitSystem): readonly string[] {
  const has = (...some: readonly (typeof setUps)[number][]) =>
    some.some((one) => setUps.includes(one));
  const limits = limitsIn(system);
  const gauge = has('gaugeLine', 'gaugeForward', 'gaugeReverse', 'gaugeHigh');
  const runs = at.rpm !== undefined || kind === 'stopTime';
  // In Drive at 3000 rpm the wheels turn, and on a take-off no chock may lie there. In Park a car can still roll.
  const turning = at.rpm === 3000 && kind === 'linePressure';
  // After a night the exhaust is cold.
  const isWarm = at.warmth === undefined || at.warmth === 'hot';
  const under = gauge || has('lift', 'coolerHose', 'panOff');
  // In the order of the work: under the car, then with the engine running.
  return [
    ...(has('hot') ? [cautions.hot] : []),
    ...(under && isWarm ? [cautions.under] : []),
    ...(has('lift') ? [cautions.lift] : []),
    ...(gauge ? [cautions.gauge(limits)] : []),
    ...(has('panOff') ? [cautions.open(limits)] : []),
    ...(kind === 'airTest' || kind === 'airWhere' ? [cautions.air(limits)] : []),
    ...(kind === 'coolerFlow' ? [cautions.cooler(limits)] : []),
    ...(runs ? [cautions.running] : []),
    ...(runs && !turning ? [cautions.chocked] : []),
    ...(kind === 'takeoffSlip' ? [cautions.takeoff] : []),
    ...(at.rpm === 1500 && kind !== 'coolerFlow' ? [cautions.loaded] : []),
    ...(turning ? [cautions.fast] : []),
  ];
}
