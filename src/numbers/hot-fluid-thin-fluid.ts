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
import { densityKgL, dynamicMPas, fluidState, kinematicCSt } from './ask.ts';
import { count, cSt, entry, lmin, mPas, times, type Entries, type WrongRules } from './entry.ts';

/** An invented press oil of ISO 3448 grade 46; its value at 100 °C and its density are plausible, not published. */
export const pressOil: FluidSpec = { kv40CSt: 46, kv100CSt: 6.8, density15: 870 };
/** 29.0 and 6.5 cSt: a published pair of the same class as the training fluid (the tests of the engine name the source). */
const highIndex: FluidSpec = { kv40CSt: 29, kv100CSt: 6.5, density15: 845 };

const kv = (tempC: number, name: FluidClass = DEFAULT_FLUID, wrong?: WrongRules) =>
  cSt(kinematicCSt(tempC, name), `kinematic viscosity, ${name} fluid, ${tempC} °C`, wrong);
const mu = (tempC: number, wrong?: WrongRules) =>
  mPas(dynamicMPas(tempC), `dynamic viscosity, training fluid, ${tempC} °C`, wrong);
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
const slipLmin = (tempC: number): number =>
  litresPerMinute(
    pumpSlipPerPascal(pump, fluidState(tempC).dynamic) * training.testPoints.idle.line,
  );
const slip = (tempC: number, wrong?: WrongRules) =>
  lmin(slipLmin(tempC), `slip of a part-worn pump, ${tempC} °C, 600 kPa`, wrong);

export const hotFluidThinFluid: Entries = {
  'low-kv-minus-20': kv(-20),
  'low-kv-20': kv(20),
  'low-kv-40': kv(40),
  'low-kv-60': kv(60),
  'low-kv-70': kv(70, DEFAULT_FLUID, {
    'straight-line': {
      mistake: 'draw a straight line between the two published numbers',
      value: (kinematicCSt(40) + kinematicCSt(100)) / 2,
    },
    'hot-number': { mistake: 'use the hot number as it stands', value: kinematicCSt(100) },
  }),
  'low-kv-90': kv(90),
  'low-kv-100': kv(100),
  'low-kv-drop-20-40': cSt(kinematicCSt(20) - kinematicCSt(40), 'what it loses, 20 to 40 °C'),
  'low-kv-drop-80-100': cSt(kinematicCSt(80) - kinematicCSt(100), 'what it loses, 80 to 100 °C'),
  'standard-kv-40': kv(40, 'standard'),
  'standard-kv-100': kv(100, 'standard'),
  'ultra-kv-100': kv(100, 'ultra-low'),
  'low-mu-20': mu(20),
  'low-mu-60': mu(60),
  'low-mu-90': mu(90, {
    'forgot-density': {
      mistake: 'forget the density and read cSt as mPa·s',
      value: kinematicCSt(90),
    },
    'cold-density': {
      mistake: 'multiply by the density of the cold fluid',
      value: kinematicCSt(90) * densityKgL(15),
    },
    divided: { mistake: 'divide by the density', value: kinematicCSt(90) / densityKgL(90) },
  }),
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
  'vi-high': vi(highIndex),
  'low-density-20': density(20),
  'low-density-90': density(90),
  'low-density-100': density(100),
  'worn-pump-slip-20': slip(20),
  'worn-pump-slip-60': slip(60),
  'worn-pump-slip-100': slip(100, {
    root: {
      mistake: 'take the root of how many times thinner it got',
      value: slipLmin(60) * Math.sqrt(dynamicMPas(60) / dynamicMPas(100)),
    },
    'upside-down': {
      mistake: 'turn the ratio of viscosities upside down',
      value: (slipLmin(60) * dynamicMPas(100)) / dynamicMPas(60),
    },
    unchanged: {
      mistake: 'take the pump to deliver the same at any temperature',
      value: slipLmin(60),
    },
  }),
  'press-kv-60': cSt(
    kinematicCSt(60, pressOil),
    'press oil, 46 cSt at 40 °C and 6.8 at 100, at 60 °C',
    {
      'straight-line': {
        mistake: 'draw a straight line between the two published numbers',
        value: pressOil.kv40CSt + ((pressOil.kv100CSt - pressOil.kv40CSt) * 20) / 60,
      },
      'grade-number': {
        mistake: 'take the grade number for every temperature',
        value: pressOil.kv40CSt,
      },
    },
  ),
  'thinner-high-index': times(
    kinematicCSt(40, highIndex) / kinematicCSt(100, highIndex),
    'how many times thinner 29.0/6.5 gets from 40 to 100 °C',
    {
      'other-fluid': {
        mistake: 'divide the numbers of the other fluid',
        value: kinematicCSt(40) / kinematicCSt(100),
      },
      subtracted: {
        mistake: 'take one number from the other',
        value: highIndex.kv40CSt - highIndex.kv100CSt,
      },
      'upside-down': {
        mistake: 'divide the hot number by the cold one',
        value: highIndex.kv100CSt / highIndex.kv40CSt,
      },
    },
  ),
};
