import { makeCar } from '../../car/index.ts';
import {
  litresPerMinute,
  fluidAt,
  pumpSlipPerPascal,
  viscosityIndex,
  type FluidSpec,
} from '../../engine/index.ts';
import { fluidNumbers, fluidOf } from './ask-engine.ts';
import { quoted, type QuestionNumbers } from './form.ts';

/** An invented press oil of ISO 3448 grade 46; its value at 100 °C and its density are plausible, not published. */
export const pressOil: FluidSpec = { kv40CSt: 46, kv100CSt: 6.8, density15: 870 };
/** 29.0 and 6.5 cSt: a published pair of the same class as the training fluid (the tests of the engine name the source). */
const highIndex = { kv40CSt: 29, kv100CSt: 6.5 } as const;
const low = { kv40CSt: 29.6, kv100CSt: 6 } as const;

const at = (tempC: number) => fluidNumbers(tempC);

/** Backflow [L/min] of a part-worn pump, the one of the lesson, at idle line pressure; so worn, it still holds the line hot. */
function wornSlip(tempC: number): number {
  const { pump } = makeCar({ faults: { pumpWear: { severity: 0.11 } } }).plant;
  return litresPerMinute(pumpSlipPerPascal(pump, fluidAt(fluidOf(), tempC).dynamic) * 600e3);
}

export const hotFluid: QuestionNumbers = {
  'fluid-cst-40': quoted(
    'kinematicViscosity',
    'training fluid at 40 °C',
    () => at(40).kinematicCSt,
  ),
  'fluid-cst-90': quoted(
    'kinematicViscosity',
    'training fluid at 90 °C',
    () => at(90).kinematicCSt,
  ),
  'fluid-cst-100': quoted(
    'kinematicViscosity',
    'training fluid at 100 °C',
    () => at(100).kinematicCSt,
  ),
  'fluid-mpas-20': quoted('dynamicViscosity', 'training fluid at 20 °C', () => at(20).dynamicMPas),
  'fluid-mpas-60': quoted('dynamicViscosity', 'training fluid at 60 °C', () => at(60).dynamicMPas),
  'fluid-mpas-100': quoted(
    'dynamicViscosity',
    'training fluid at 100 °C',
    () => at(100).dynamicMPas,
  ),
  'fluid-density-90': quoted('density', 'training fluid at 90 °C', () => 1000 * at(90).densityKgL),
  'fluid-drop-20-40': quoted(
    'kinematicViscosity',
    'what it loses from 20 to 40 °C',
    () => at(20).kinematicCSt - at(40).kinematicCSt,
  ),
  'fluid-drop-80-100': quoted(
    'kinematicViscosity',
    'what it loses from 80 to 100 °C',
    () => at(80).kinematicCSt - at(100).kinematicCSt,
  ),
  'index-low': quoted('count', 'viscosity index of 29.6 and 6.0 cSt', () =>
    viscosityIndex(low.kv40CSt, low.kv100CSt),
  ),
  'index-high': quoted('count', 'viscosity index of 29.0 and 6.5 cSt', () =>
    viscosityIndex(highIndex.kv40CSt, highIndex.kv100CSt),
  ),
  'worn-slip-60': quoted('flow', 'backflow of the part-worn pump at 60 °C, 600 kPa', () =>
    wornSlip(60),
  ),

  'dynamic-90': {
    quantity: 'dynamicViscosity',
    what: 'dynamic viscosity of the training fluid at 90 °C',
    value: () => at(90).dynamicMPas,
    wrong: {
      'forgot-density': {
        mistake: 'forget the density and read cSt as mPa·s',
        value: () => at(90).kinematicCSt,
      },
      'cold-density': {
        mistake: 'multiply by the density of the cold fluid',
        value: () => at(90).kinematicCSt * at(15).densityKgL,
      },
      divided: {
        mistake: 'divide by the density',
        value: () => at(90).kinematicCSt / at(90).densityKgL,
      },
    },
  },
  'kinematic-70': {
    quantity: 'kinematicViscosity',
    what: 'training fluid at 70 °C from its two published numbers',
    value: () => at(70).kinematicCSt,
    wrong: {
      'straight-line': {
        mistake: 'draw a straight line between the two published numbers',
        value: () => (at(40).kinematicCSt + at(100).kinematicCSt) / 2,
      },
      'hot-number': {
        mistake: 'use the hot number as it stands',
        value: () => at(100).kinematicCSt,
      },
    },
  },
  'press-60': {
    quantity: 'kinematicViscosity',
    what: 'press oil, 46 cSt at 40 °C and 6.8 at 100, at 60 °C',
    value: () => fluidNumbers(60, pressOil).kinematicCSt,
    wrong: {
      'straight-line': {
        mistake: 'draw a straight line between the two published numbers',
        value: () => pressOil.kv40CSt + ((pressOil.kv100CSt - pressOil.kv40CSt) * 20) / 60,
      },
      'grade-number': {
        mistake: 'take the grade number for every temperature',
        value: () => pressOil.kv40CSt,
      },
    },
  },
  'times-thinner-high-index': {
    quantity: 'times',
    what: 'how many times thinner 29.0/6.5 gets from 40 to 100 °C',
    value: () =>
      fluidNumbers(40, { ...highIndex, density15: 845 }).kinematicCSt /
      fluidNumbers(100, { ...highIndex, density15: 845 }).kinematicCSt,
    wrong: {
      'other-fluid': {
        mistake: 'divide the numbers of the other fluid',
        value: () => at(40).kinematicCSt / at(100).kinematicCSt,
      },
      subtracted: {
        mistake: 'take one number from the other',
        value: () => highIndex.kv40CSt - highIndex.kv100CSt,
      },
      'upside-down': {
        mistake: 'divide the hot number by the cold one',
        value: () => highIndex.kv100CSt / highIndex.kv40CSt,
      },
    },
  },
  'worn-slip-100': {
    quantity: 'flow',
    what: 'backflow of the part-worn pump at 100 °C, 600 kPa',
    value: () => wornSlip(100),
    wrong: {
      'temperature-ratio': {
        mistake: 'let the leak grow with the degrees',
        value: () => (wornSlip(60) * 100) / 60,
      },
      'upside-down': {
        mistake: 'turn the ratio of viscosities upside down',
        value: () => (wornSlip(60) * at(100).dynamicMPas) / at(60).dynamicMPas,
      },
      unchanged: {
        mistake: 'take the pump to deliver the same at any temperature',
        value: () => wornSlip(60),
      },
    },
  },
};
