import { letsGoAtC, makeCar, REFERENCE_CRACK_MM, type Demand } from '../car/index.ts';
import { training, type FluidClass } from '../engine/index.ts';
import { HAIR_MM } from '../quantity/hairs/hairs.ts';
import { crackLeak, densityKgL, dynamicMPas, gapLeak, holeLeak, read, tapKpa } from './ask.ts';
import {
  count,
  degC,
  kPa,
  lmin,
  mm,
  percent,
  times,
  type Entries,
  type WrongRules,
} from './entry.ts';
import { pressOil } from './hot-fluid-thin-fluid.ts';

/** Pressure behind a leak: what the clutch circuit has at idle, in the lesson, its simulation and its questions. */
const IDLE_KPA = 400;

const leak = (height: number, tempC: number, wrong?: WrongRules) =>
  lmin(
    crackLeak(height, tempC, IDLE_KPA).flow,
    `leak of a ${height} mm crack, ${tempC} °C, ${IDLE_KPA} kPa`,
    wrong,
  );
const share = (height: number, tempC: number) =>
  percent(
    crackLeak(height, tempC, IDLE_KPA).viscousPercent,
    `viscous share, ${height} mm crack, ${tempC} °C, ${IDLE_KPA} kPa`,
  );
const growth = (height: number) =>
  times(
    crackLeak(height, 100, IDLE_KPA).flow / crackLeak(height, 20, IDLE_KPA).flow,
    `leak of a ${height} mm crack at 100 °C over 20 °C, ${IDLE_KPA} kPa`,
  );
const thinner = dynamicMPas(20) / dynamicMPas(100);
const pressThinner = dynamicMPas(20, pressOil) / dynamicMPas(60, pressOil);
const middleViscous = (tempC: number): number =>
  crackLeak(0.16, tempC, IDLE_KPA).viscousPercent / 100;
const wideCold = crackLeak(0.4, 20, IDLE_KPA).flow;
/** The two healthy sealing rings of one circuit. */
const rings = (tempC: number): number =>
  gapLeak(training.leaks.forward.rings, tempC, IDLE_KPA).flow;
const port = (tempC: number): number => holeLeak(1.5, tempC, IDLE_KPA);
/** Press: relief seat scored to a passage like a 2 mm hole at 10 MPa. */
const pressSeat = (tempC: number): number => holeLeak(2, tempC, 10e3, pressOil);

/** Up to where a crack holds a demand on the commands of idle; the lessons use only cracks that cross it. */
const crossingC = (height: number, demand: Demand, fluid?: FluidClass): number =>
  letsGoAtC(makeCar({ crackMm: height, ...(fluid && { fluid }) }), demand);
const crossing = (height: number, demand: Demand, wrong?: WrongRules) =>
  degC(
    crossingC(height, demand),
    `up to where a ${height} mm crack holds the ${demand} demand, idle commands`,
    wrong,
  );
const [gentleC, gentleUltraC] = [
  crossingC(REFERENCE_CRACK_MM, 'gentle'),
  crossingC(REFERENCE_CRACK_MM, 'gentle', 'ultra-low'),
];
const splitKpa = (tempC: number): number => tapKpa({ tempC, crackMm: REFERENCE_CRACK_MM });
const split = (tempC: number) =>
  kPa(splitKpa(tempC), `forward clutch at idle, split transfer seal, ${tempC} °C`);
/** A mistake that leads to one number in both unit systems, as one by the degrees would not. */
const rootRule = 'take the root of how many times thinner it got';

export const thinGapOpenHole: Entries = {
  'crack-thin': mm(0.05, 'a thin crack'),
  'crack-default': mm(REFERENCE_CRACK_MM, 'the crack of the lessons'),
  'crack-wide': mm(0.4, 'the widest crack of the training transmission'),
  'leak-thin-20': leak(0.05, 20),
  'growth-default': growth(REFERENCE_CRACK_MM),
  'times-eight': count(8, 'twice the opening, in the law of a thin gap'),
  'leak-thin-20-eightfold': lmin(
    8 * crackLeak(0.05, 20, IDLE_KPA).flow,
    'what the law of a thin gap gives at twice the opening',
  ),
  'growth-hair': growth(HAIR_MM),
  'growth-wide': growth(0.4),
  'growth-hole': times(
    holeLeak(0.6, 100, IDLE_KPA) / holeLeak(0.6, 20, IDLE_KPA),
    'leak of a 0.6 mm drilled hole at 100 °C over 20 °C',
  ),
  'share-thin-20': share(0.05, 20),
  'share-thin-100': share(0.05, 100),
  'split-20': split(20),
  'split-60': split(60),
  'split-80': split(80),
  'split-100': split(100),
  'split-high-100': kPa(
    tapKpa({ tempC: 100, crackMm: REFERENCE_CRACK_MM, circuit: 'high' }),
    'high clutch at idle, split transfer seal, 100 °C',
    {
      'forward-reading': { mistake: 'let the seal hurt every clutch', value: splitKpa(100) },
      halfway: {
        mistake: 'give the high clutch half of the loss',
        value: (splitKpa(100) + tapKpa({ tempC: 100 })) / 2,
      },
    },
  ),
  'split-line-100': kPa(
    read({ tempC: 100, crackMm: REFERENCE_CRACK_MM }).lineKpa,
    'line at idle with forward applied, split transfer seal, 100 °C',
  ),
  'crossing-default-take-off': crossing(REFERENCE_CRACK_MM, 'firm'),
  'crossing-default-gentle': crossing(REFERENCE_CRACK_MM, 'gentle', {
    'last-good': { mistake: 'stop at the last reading that was enough', value: 80 },
    'first-bad': { mistake: 'wait for the first reading that was too low', value: 100 },
    'healthy-line': {
      mistake: 'look for where the pressure has started to fall instead of where it is too low',
      value: 60,
    },
  }),
  'crossing-default-gentle-ultra': degC(gentleUltraC, 'the same with the ultra-low fluid', {
    unchanged: { mistake: 'think that only the crack counts', value: gentleC },
    'wrong-way': { mistake: 'move the crossing the wrong way', value: 2 * gentleC - gentleUltraC },
  }),
  'crossing-default-idle': crossing(REFERENCE_CRACK_MM, 'standing'),

  'growth-thin-at-400': growth(0.05),
  'share-two-hairs-20-at-400': share(0.16, 20),
  'share-two-hairs-100-at-400': share(0.16, 100),
  'share-wide-20-at-400': share(0.4, 20),
  'share-wide-100-at-400': share(0.4, 100),
  'two-hairs-not-viscous': kPa(
    IDLE_KPA * (1 - middleViscous(100)),
    'pressure not spent on rubbing, 0.16 mm, 100 °C, 400 kPa',
    {
      'viscous-part': {
        mistake: 'take the viscous part itself',
        value: IDLE_KPA * middleViscous(100),
      },
      'cold-share': {
        mistake: 'use the share of the cold fluid',
        value: IDLE_KPA * (1 - middleViscous(20)),
      },
      all: { mistake: 'count all of the pressure', value: IDLE_KPA },
    },
  ),
  'leak-wide-20-at-400': leak(0.4, 20),
  'leak-wide-100-at-400': leak(0.4, 100, {
    'gap-rule': { mistake: 'take the crack for a thin gap', value: wideCold * thinner },
    unchanged: { mistake: 'take the crack for a hole', value: wideCold },
  }),
  'sound-rings-leak-20': lmin(rings(20), 'healthy rings, 20 °C, 400 kPa'),
  'sound-rings-leak-100': lmin(rings(100), 'healthy rings, 100 °C, 400 kPa', {
    'hole-rule': {
      mistake: 'take the gap for a hole',
      value: rings(20) * Math.sqrt(densityKgL(20) / densityKgL(100)),
    },
    root: { mistake: rootRule, value: rings(20) * Math.sqrt(thinner) },
    'upside-down': {
      mistake: 'turn the ratio of viscosities upside down',
      value: rings(20) / thinner,
    },
  }),
  'port-leak-20': lmin(port(20), '1.5 mm open port, 20 °C, 400 kPa'),
  'port-leak-100': lmin(port(100), '1.5 mm open port, 100 °C, 400 kPa', {
    'gap-rule': { mistake: 'take the hole for a gap', value: port(20) * thinner },
    root: { mistake: rootRule, value: port(20) * Math.sqrt(thinner) },
  }),
  'port-leak-growth-percent': percent(
    100 * (port(100) / port(20) - 1),
    'what a hole leaks more at 100 than at 20 °C',
  ),
  'press-hole-20': lmin(pressSeat(20), 'scored press seat at 20 °C'),
  'press-hole-60': lmin(pressSeat(60), 'scored press seat at 60 °C', {
    'gap-rule': {
      mistake: 'take the open seat for a thin gap',
      value: pressSeat(20) * pressThinner,
    },
    root: { mistake: rootRule, value: pressSeat(20) * Math.sqrt(pressThinner) },
  }),
};
