import { airAfter, driveAfter, hidersOf, STEPS } from '../car/back-together.ts';
import { count, entry, kPa, mm, percent, type Entries } from './entry.ts';

const [ball, lip] = [driveAfter(['balls']), driveAfter(['lip'])];
/** Lines signed when the gap turns out not to have been measured: down to the pan. */
const signed = STEPS.slice(0, STEPS.indexOf('pan') + 1);
const again = signed.filter((step) => step === 'rings' || hidersOf('rings').includes(step));

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
};
