import {
  crackFault,
  engage,
  gaveUp,
  makeCar,
  oneFault,
  REFERENCE_CRACK_MM,
  type Car,
} from '../car/index.ts';
import { LIP, SHOP_C, slowness, squeezeMm, standsOffBelowC } from '../car/lip.ts';
import { degC, entry, mm, times, type Entries } from './entry.ts';

const sound = makeCar({});
const split = makeCar({ faults: crackFault(REFERENCE_CRACK_MM) });
const hard = makeCar({ faults: oneFault('hardLip', 100) });

const stops = (car: Car, tempC: number): number =>
  engage(car, { tempC }).stoppedAfter ?? Number.NaN;
const late = (what: string, car: Car, tempC: number) =>
  entry('seconds', stops(car, tempC), `${what}, Drive engages, ${tempC} °C`);

/** The temperature between two at which something turns true, to a tenth of a degree. */
function turnsAt(from: number, to: number, is: (tempC: number) => boolean): number {
  let [no, yes] = [from, to];
  while (yes - no > 0.05) {
    const middle = (no + yes) / 2;
    if (is(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}
const alike = turnsAt(0, 60, (tempC) => stops(split, tempC) >= stops(hard, tempC));
/** What is left of nine tenths set. */
const SET = 0.9;
const DROP = 20;

export const partsThatSeal: Entries = {
  'seals-article-cold': degC((-30 - 32) / 1.8, 'where nitrile has hardened, in an article: -30 °F'),
  'seals-sound-0': late('sound', sound, 0),
  'seals-split-0': late('split seal', split, 0),
  'seals-hard-0': late('hard lip', hard, 0),
  'seals-sound-100': late('sound', sound, 100),
  'seals-hard-100': late('hard lip', hard, 100),
  'seals-sound-minus-20': late('sound', sound, -20),
  'seals-given-up': degC(
    turnsAt(40, 100, (tempC) => gaveUp(engage(split, { tempC }))),
    'split seal: from here on the controller gives the clutch up',
  ),
  'seals-alike': degC(alike, 'split seal and hard lip engage alike'),
  'seals-alike-time': entry('seconds', stops(hard, alike), 'both, where they engage alike'),
  'seals-drop': entry('temperatureRise', DROP, 'a drop of temperature'),
  'seals-reach': entry('dimension', LIP.reachMm, 'free rubber of the lip'),
  'seals-new': mm(LIP.newMm, 'squeeze of a new lip'),
  'seals-shrinks': mm(
    squeezeMm(0, SHOP_C) - squeezeMm(0, SHOP_C - DROP),
    'what the lip loses on that drop',
  ),
  'seals-stands-off': degC(standsOffBelowC(SET), 'a lip set by nine tenths stands off below'),
  'seals-slow-0': times(slowness(0), 'times as long to spring back, 0 against 20 °C'),
};
