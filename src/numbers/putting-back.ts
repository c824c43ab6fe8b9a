import { airAfter, driveAfter, hidersOf, STEPS } from '../car/back-together.ts';
import { count, entry, kPa, mm, percent, type Entries } from './entry.ts';

const [ball, lip] = [driveAfter(['balls']), driveAfter(['lip'])];
/** Lines signed when the gap turns out not to have been measured: down to the pan. */
const signed = STEPS.slice(0, STEPS.indexOf('pan') + 1);
const again = signed.filter((step) => step === 'rings' || hidersOf('rings').includes(step));

/** A question's pan: over the middle, and what its marks hold [mm, L]. */
const ASKED = { over: 20, apart: 10, holds: 0.8 };
const litres = (over: number): number => (over / ASKED.apart) * ASKED.holds;

export const puttingBack: Entries = {
  'back-feeler': mm(0.38, 'feeler that helps a lip into its drum, an example from a manual'),
  'back-ball-20': kPa(ball.cold.forward.kPa, 'ball left out, forward tap, idle, 20 °C'),
  'back-lip-20': kPa(lip.cold.forward.kPa, 'nicked lip, forward tap, idle, 20 °C'),
  'back-lip-100': kPa(lip.hot.forward.kPa, 'nicked lip, forward tap, idle, 100 °C'),
  'back-lip-air': percent(airAfter(['lip']), 'nicked lip, air held on the bench'),
  'back-over': entry(
    'dimension',
    driveAfter(['level']).stickMm,
    'over the middle of the stick in its window, filled cold to MAX',
  ),
  'back-lines-again': count(again.length, 'lines to do again for a ring gap, pan on', {
    'from-the-body': {
      mistake: 'count what lies under the car alone: pan, body and the rings themselves',
      value: 3,
    },
    'all-of-them': { mistake: 'start over from the first line', value: signed.length },
  }),
  'back-let-out': entry('fluidVolume', litres(ASKED.over), 'to let out, 20 mm over the middle', {
    'down-to-max': {
      mistake: 'stop at MAX, and not at the middle',
      value: litres(ASKED.over - ASKED.apart / 2),
    },
    'middle-to-mark': {
      mistake: 'take what the marks hold for what lies between the middle and one mark',
      value: 2 * litres(ASKED.over),
    },
  }),
};
