import { makeCar } from '../car/index.ts';
import {
  DEFAULT_FLUID,
  fluidClasses,
  litresPerMinute,
  pumpSlipPerPascal,
  training,
  viscosityIndex,
  type FluidClass,
  type FluidSpec,
} from '../engine/index.ts';
import { dynamicMPas, fluidState, kinematicCSt } from './ask.ts';
import { count, cSt, entry, lmin, mPas, times, type Entries } from './entry.ts';

const kv = (tempC: number, name: FluidClass = DEFAULT_FLUID) =>
  cSt(kinematicCSt(tempC, name), `kinematic viscosity, ${name} fluid, ${tempC} °C`);
const mu = (tempC: number) =>
  mPas(dynamicMPas(tempC), `dynamic viscosity, training fluid, ${tempC} °C`);
const density = (tempC: number) =>
  entry('density', fluidState(tempC).density, `density, training fluid, ${tempC} °C`);
const vi = ({ kv40CSt, kv100CSt }: FluidSpec) =>
  count(viscosityIndex(kv40CSt, kv100CSt), `viscosity index of ${kv40CSt} and ${kv100CSt} cSt`);
const thinner = (coldC: number, hotC: number) =>
  times(
    dynamicMPas(coldC) / dynamicMPas(hotC),
    `how many times thinner, by dynamic viscosity, from ${coldC} to ${hotC} °C`,
  );
/** As the data sheet counts, and the simulation. */
const thinnerCSt = (coldC: number, hotC: number) =>
  times(
    kinematicCSt(coldC) / kinematicCSt(hotC),
    `how many times thinner, by kinematic viscosity, from ${coldC} to ${hotC} °C`,
  );

/** What a part-worn pump, which still holds its line hot, slips at 600 kPa [L/min]. */
const { pump } = makeCar({ faults: { pumpWear: { severity: 0.11 } } }).plant;
const slip = (tempC: number) =>
  lmin(
    litresPerMinute(
      pumpSlipPerPascal(pump, fluidState(tempC).dynamic) * training.testPoints.idle.line,
    ),
    `slip of a part-worn pump, ${tempC} °C, 600 kPa`,
  );

export const hotFluidThinFluid: Entries = {
  'low-kv-minus-20': kv(-20),
  'low-kv-20': kv(20),
  'low-kv-40': kv(40),
  'low-kv-60': kv(60),
  'low-kv-70': kv(70),
  'low-kv-100': kv(100),
  'low-kv-drop-20-40': cSt(kinematicCSt(20) - kinematicCSt(40), 'what it loses, 20 to 40 °C'),
  'low-kv-drop-80-100': cSt(kinematicCSt(80) - kinematicCSt(100), 'what it loses, 80 to 100 °C'),
  'standard-kv-40': kv(40, 'standard'),
  'standard-kv-100': kv(100, 'standard'),
  'ultra-kv-100': kv(100, 'ultra-low'),
  'low-mu-20': mu(20),
  'low-mu-100': mu(100),
  'thinner-20-to-100': thinner(20, 100),
  'thinner-cst-20-to-100': thinnerCSt(20, 100),
  'thinner-cst-20-to-60': thinnerCSt(20, 60),
  'thinner-cst-60-to-100': thinnerCSt(60, 100),
  'standard-over-low-100': times(
    kinematicCSt(100, 'standard') / kinematicCSt(100),
    'kinematic viscosity of the standard fluid over the low-viscosity one at 100 °C',
  ),
  'vi-standard': vi(fluidClasses.standard),
  'vi-low': vi(fluidClasses['low-viscosity']),
  'vi-ultra': vi(fluidClasses['ultra-low']),
  'low-density-20': density(20),
  'low-density-100': density(100),
  'worn-pump-slip-20': slip(20),
  'worn-pump-slip-100': slip(100),
};
