import { letsGoAtC, makeCar, needs, REFERENCE_CRACK_MM } from '../../car/index.ts';
import { training, type FluidClass } from '../../engine/index.ts';
import { crackLeak, fluidNumbers, gapLeak, holeLeak, steady } from './ask-engine.ts';
import { quoted, type QuestionNumbers } from './form.ts';
import { pressOil } from './hot-fluid.ts';

/** Up to where the crack that the course follows holds a gentle take-off on the idle commands [°C]. */
const gentleCrossingC = (fluid: FluidClass): number =>
  letsGoAtC(makeCar({ crackMm: REFERENCE_CRACK_MM, fluid }), 'gentle');

const had = (crackMm: number, tempC: number): number =>
  steady({ tempC, crackMm }).clutchKpa.forward;
const inReverse = (crackMm: number) => steady({ tempC: 100, crackMm, applied: ['reverse'] });
const viscosityRatio = (): number => fluidNumbers(20).dynamicMPas / fluidNumbers(100).dynamicMPas;

/** The two healthy sealing rings of one circuit. */
const rings = (tempC: number): number => {
  const { width, height, length } = training.leaks.forward.rings;
  return gapLeak({
    widthMm: width * 1e3,
    heightMm: height * 1e3,
    lengthMm: length * 1e3,
    kPa: 400,
    tempC,
  }).flow;
};
const port = (tempC: number): number => holeLeak({ diameterMm: 1.5, kPa: 400, tempC });

/** Press: relief seat scored to a passage like a 2 mm hole at 10 MPa. */
const pressHole = (tempC: number): number =>
  holeLeak({ diameterMm: 2, kPa: 10000, tempC, fluid: pressOil });

export const gapHole: QuestionNumbers = {
  'thin-ratio': quoted(
    'times',
    'leak of a 0.05 mm crack, 100 over 20 °C',
    () => crackLeak(0.05, 100).flow / crackLeak(0.05, 20).flow,
  ),
  'hole-ratio-percent': quoted(
    'percent',
    'what a hole leaks more at 100 than at 20 °C',
    () => 100 * (port(100) / port(20) - 1),
  ),
  'middle-share-hot': quoted(
    'percent',
    'viscous share, 0.16 mm, 100 °C',
    () => crackLeak(0.16, 100).viscousPercent,
  ),
  'middle-share-cold': quoted(
    'percent',
    'viscous share, 0.16 mm, 20 °C',
    () => crackLeak(0.16, 20).viscousPercent,
  ),
  'wide-share-cold': quoted(
    'percent',
    'viscous share, 0.40 mm, 20 °C',
    () => crackLeak(0.4, 20).viscousPercent,
  ),
  'wide-share-hot': quoted(
    'percent',
    'viscous share, 0.40 mm, 100 °C',
    () => crackLeak(0.4, 100).viscousPercent,
  ),
  'wide-leak-cold': quoted(
    'flow',
    'leak of a 0.40 mm crack at 20 °C',
    () => crackLeak(0.4, 20).flow,
  ),
  'wide-had-cold': quoted('pressure', 'forward clutch, 0.40 mm, 20 °C idle', () => had(0.4, 20)),
  'rings-cold': quoted('flow', 'healthy rings at 20 °C', () => rings(20)),
  'port-cold': quoted('flow', '1.5 mm open port at 20 °C', () => port(20)),
  'need-gentle': quoted('pressure', 'gentle take-off', () => needs.gentle.kPa),
  'need-idle': quoted('pressure', 'to hold at idle against the brake', () => needs.standing.kPa),
  'had-025-60': quoted('pressure', 'forward clutch, 0.25 mm, 60 °C idle', () => had(0.25, 60)),
  'had-025-80': quoted('pressure', 'forward clutch, 0.25 mm, 80 °C idle', () => had(0.25, 80)),
  'had-healthy-100': quoted('pressure', 'forward clutch, healthy, 100 °C idle', () => had(0, 100)),
  'had-025-100': quoted('pressure', 'forward clutch, 0.25 mm, 100 °C idle', () => had(0.25, 100)),
  'reverse-025-100': quoted(
    'pressure',
    'reverse clutch, 0.25 mm, 100 °C idle',
    () => inReverse(0.25).clutchKpa.reverse,
  ),
  'reverse-healthy-100': quoted(
    'pressure',
    'reverse clutch, healthy, 100 °C idle',
    () => inReverse(0).clutchKpa.reverse,
  ),
  'reverse-line-025-100': quoted(
    'pressure',
    'line in Reverse, 0.25 mm, 100 °C idle',
    () => inReverse(0.25).lineKpa,
  ),
  'reverse-line-healthy': quoted(
    'pressure',
    'line in Reverse, healthy, 100 °C idle',
    () => inReverse(0).lineKpa,
  ),
  'press-hole-cold': quoted('flow', 'scored press seat at 20 °C', () => pressHole(20)),

  'rings-hot': {
    quantity: 'flow',
    what: 'healthy rings at 100 °C',
    value: () => rings(100),
    wrong: {
      'hole-rule': {
        mistake: 'take the gap for a hole',
        value: () =>
          rings(20) * Math.sqrt(fluidNumbers(20).densityKgL / fluidNumbers(100).densityKgL),
      },
      'temperature-ratio': {
        mistake: 'let the leak grow with the degrees',
        value: () => rings(20) * 5,
      },
      'upside-down': {
        mistake: 'turn the ratio of viscosities upside down',
        value: () => rings(20) / viscosityRatio(),
      },
    },
  },
  'port-hot': {
    quantity: 'flow',
    what: '1.5 mm open port at 100 °C',
    value: () => port(100),
    wrong: {
      'gap-rule': { mistake: 'take the hole for a gap', value: () => port(20) * viscosityRatio() },
      'temperature-ratio': {
        mistake: 'let the leak grow with the degrees',
        value: () => port(20) * 5,
      },
    },
  },
  'press-hole-hot': {
    quantity: 'flow',
    what: 'scored press seat at 60 °C',
    value: () => pressHole(60),
    wrong: {
      'gap-rule': {
        mistake: 'take the open seat for a thin gap',
        value: () =>
          (pressHole(20) * fluidNumbers(20, pressOil).dynamicMPas) /
          fluidNumbers(60, pressOil).dynamicMPas,
      },
      'temperature-ratio': {
        mistake: 'let the leak grow with the degrees',
        value: () => pressHole(20) * 3,
      },
    },
  },
  'middle-not-viscous': {
    quantity: 'pressure',
    what: 'pressure not spent on rubbing, 0.16 mm, 100 °C, 400 kPa',
    value: () => 400 * (1 - crackLeak(0.16, 100).viscousPercent / 100),
    wrong: {
      'viscous-part': {
        mistake: 'take the viscous part itself',
        value: () => 4 * crackLeak(0.16, 100).viscousPercent,
      },
      'cold-share': {
        mistake: 'use the share of the cold fluid',
        value: () => 400 * (1 - crackLeak(0.16, 20).viscousPercent / 100),
      },
      all: { mistake: 'count all of the pressure', value: () => 400 },
    },
  },
  'wide-leak-hot': {
    quantity: 'flow',
    what: 'leak of a 0.40 mm crack at 100 °C',
    value: () => crackLeak(0.4, 100).flow,
    wrong: {
      'gap-rule': {
        mistake: 'take the crack for a thin gap',
        value: () => crackLeak(0.4, 20).flow * viscosityRatio(),
      },
      unchanged: { mistake: 'take the crack for a hole', value: () => crackLeak(0.4, 20).flow },
    },
  },
  'crossing-gentle': {
    quantity: 'temperature',
    what: 'up to where the clutch holds a gentle take-off, 0.25 mm',
    value: () => gentleCrossingC('low-viscosity'),
    wrong: {
      'last-good': { mistake: 'stop at the last reading that was enough', value: () => 80 },
      'first-bad': { mistake: 'wait for the first reading that was too low', value: () => 100 },
      'healthy-line': {
        mistake: 'look for where the pressure has started to fall instead of where it is too low',
        value: () => 60,
      },
    },
  },
  'crossing-gentle-ultra': {
    quantity: 'temperature',
    what: 'the same with the ultra-low fluid',
    value: () => gentleCrossingC('ultra-low'),
    wrong: {
      unchanged: {
        mistake: 'think that only the crack counts',
        value: () => gentleCrossingC('low-viscosity'),
      },
      'wrong-way': {
        mistake: 'move the crossing the wrong way',
        value: () => 2 * gentleCrossingC('low-viscosity') - gentleCrossingC('ultra-low'),
      },
    },
  },
  'high-025-100': {
    quantity: 'pressure',
    what: 'high clutch, 0.25 mm crack, 100 °C idle',
    value: () => steady({ tempC: 100, crackMm: 0.25, applied: ['high'] }).clutchKpa.high,
    wrong: {
      'forward-reading': { mistake: 'let the seal hurt every clutch', value: () => had(0.25, 100) },
      halfway: {
        mistake: 'give the high clutch half of the loss',
        value: () => (had(0.25, 100) + had(0, 100)) / 2,
      },
    },
  },
};
