import { letsGoAtC, makeCar, REFERENCE_CRACK_MM, type Demand } from '../car/index.ts';
import { HAIR_MM } from '../quantity/hairs/hairs.ts';
import { crackLeak, holeLeak, read, tapKpa } from './ask.ts';
import { count, degC, kPa, lmin, mm, percent, times, type Entries } from './entry.ts';

/** Pressure behind a leak: what the clutch circuit has at idle, in the lesson, its simulation and its questions. */
const IDLE_KPA = 400;

const leak = (height: number, tempC: number) =>
  lmin(
    crackLeak(height, tempC, IDLE_KPA).flow,
    `leak of a ${height} mm crack, ${tempC} °C, ${IDLE_KPA} kPa`,
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
const port = (tempC: number): number => holeLeak(1.5, tempC, IDLE_KPA);

/** Up to where a crack holds a demand on the commands of idle; the lessons use only cracks that cross it. */
const crossing = (height: number, demand: Demand) =>
  degC(
    letsGoAtC(makeCar({ crackMm: height }), demand),
    `up to where a ${height} mm crack holds the ${demand} demand, idle commands`,
  );
const split = (tempC: number) =>
  kPa(
    tapKpa({ tempC, crackMm: REFERENCE_CRACK_MM }),
    `forward clutch at idle, split transfer seal, ${tempC} °C`,
  );

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
  ),
  'split-line-100': kPa(
    read({ tempC: 100, crackMm: REFERENCE_CRACK_MM }).lineKpa,
    'line at idle with forward applied, split transfer seal, 100 °C',
  ),
  'crossing-default-take-off': crossing(REFERENCE_CRACK_MM, 'firm'),
  'crossing-default-gentle': crossing(REFERENCE_CRACK_MM, 'gentle'),
  'crossing-default-idle': crossing(REFERENCE_CRACK_MM, 'standing'),

  'growth-thin-at-400': growth(0.05),
  'share-wide-20-at-400': share(0.4, 20),
  'share-wide-100-at-400': share(0.4, 100),
  'leak-wide-20-at-400': leak(0.4, 20),
  'port-leak-growth-percent': percent(
    100 * (port(100) / port(20) - 1),
    'what a hole leaks more at 100 than at 20 °C',
  ),
};
