import { oneFault, PARK_BELOW_KMH } from '../../car/index.ts';
import { faultAmount } from '../../engine/index.ts';
import { steady } from './ask-engine.ts';
import { quoted, type QuestionNumbers } from './form.ts';

/** A lever or cable that leaves the manual valve under a fifth of the feed area. */
const misSet = oneFault('feedRestriction', 90);
const forward = (tempC: number): number => steady({ tempC, faults: misSet }).clutchKpa.forward;

export const select: QuestionNumbers = {
  'park-below': quoted('roadSpeed', 'the pawl may drop in below this speed', () => PARK_BELOW_KMH),
  'cable-area-left': quoted(
    'percent',
    'feed area left by the mis-set cable',
    () => 100 * faultAmount('feedRestriction', 0.9),
  ),
  'cable-cold': quoted('pressure', 'forward, mis-set cable, 20 °C idle', () => forward(20)),
  'cable-hot': {
    quantity: 'pressure',
    what: 'forward, mis-set cable, 100 °C idle',
    value: () => forward(100),
    wrong: {
      unchanged: {
        mistake: 'let a narrow way fill the clutch to full pressure hot as well',
        value: () => steady({ tempC: 100 }).clutchKpa.forward,
      },
      'area-share': {
        mistake: 'cut the pressure by the same share as the area',
        value: () => 400 * faultAmount('feedRestriction', 0.9),
      },
    },
  },
};
