import { COLD_C, HOT_C } from '../car/cold-and-hot.ts';
import {
  levelOf,
  litresOf,
  MARK_MM,
  pickUpOf,
  PLUG_C,
  swollenBy,
  WINDOW_C,
  type Fill,
} from '../car/pan.ts';
import { training } from '../engine/index.ts';
import { degC, entry, kPa, percent, rpm, type Entries } from './entry.ts';

const { idle } = training.testPoints;
const litres = (value: number, what: string) => entry('fluidVolume', value, what);
const fill = (given: Partial<Fill>): Fill => ({
  offL: 0,
  tempC: COLD_C,
  engineRpm: idle.engineRpm,
  place: 'flat',
  ...given,
});
const stickMm = (given: Partial<Fill>): number => levelOf(fill(given)).stickMm;
const low = (given: Partial<Fill>, what: string) =>
  entry('dimension', -stickMm(given), `under the middle of the stick, ${what}`);
const air = (given: Partial<Fill>, what: string) =>
  percent(100 * pickUpOf(fill(given)).air, `air in what the pump draws, ${what}`);
const line = (given: Partial<Fill>, what: string) => kPa(pickUpOf(fill(given)).lineKpa, what);

/** What a right fill was topped up by to stand at MAX cold, what is a little short, and what is far short [L]. */
const TOPPED_UP = 0.6;
const LITTLE = -0.6;
const FAR = -2.3;
/** How fast the engine turns where speed uncovers the pick-up. */
const FAST_RPM = 3000;
/** A plug opened too hot: what stands over its pipe runs out [L]. */
const PLUG_HOT_C = 80;
const runsOut = swollenBy(PLUG_HOT_C) - swollenBy(PLUG_C.middle);
const swelling = swollenBy(HOT_C) / (training.sump.fill * 1e3);

export const outsideFirst: Entries = {
  'window-from': degC(WINDOW_C.from, 'where the stick of the training transmission is read, from'),
  'window-to': degC(WINDOW_C.to, 'where the stick of the training transmission is read, to'),
  'window-middle': degC(WINDOW_C.middle, 'middle of that window'),
  'plug-from': degC(PLUG_C.from, 'where a plug with an overflow pipe is often read, from'),
  'plug-to': degC(PLUG_C.to, 'where a plug with an overflow pipe is often read, to'),
  'plug-middle': degC(PLUG_C.middle, 'middle of that'),
  'plug-hot': degC(PLUG_HOT_C, 'a plug opened too hot'),
  'plug-runs-out': litres(runsOut, 'what swelling alone puts over the pipe, 40 to 80 °C'),
  'pan-fill': litres(training.sump.fill * 1e3, 'all the fluid in the training transmission'),
  'swell-percent': percent(100 * swelling, 'swelling of the fluid, 20 to 100 °C'),
  'swell-litres': litres(swollenBy(HOT_C), 'swelling of the whole fill, 20 to 100 °C'),
  'marks-litres': litres(litresOf(2 * MARK_MM), 'between MIN and MAX'),
  'marks-apart': entry('dimension', 2 * MARK_MM, 'between MIN and MAX on the stick'),
  'stick-low-20': low({}, 'right fill, 20 °C'),
  'stick-low-20-litres': litres(litresOf(-stickMm({})), 'the same as an amount of fluid'),
  'topped-up': litres(TOPPED_UP, 'a right fill topped up cold to MAX'),
  'topped-up-over-100': entry(
    'dimension',
    stickMm({ offL: TOPPED_UP, tempC: HOT_C }),
    'over the middle of the stick, topped up cold to MAX, 100 °C',
  ),
  'little-short': litres(-LITTLE, 'a little short'),
  'little-air-0': air({ offL: LITTLE, tempC: 0 }, 'a little short, 0 °C, idle'),
  'little-air-window-fast': air(
    { offL: LITTLE, tempC: WINDOW_C.middle, engineRpm: FAST_RPM },
    'a little short, in the window, 3000 rpm',
  ),
  'little-air-window-bend': air(
    { offL: LITTLE, tempC: WINDOW_C.middle, place: 'bend' },
    'a little short, in the window, in a bend',
  ),
  'pan-fast': rpm(FAST_RPM, 'where speed uncovers the pick-up'),
  'far-short': litres(-FAR, 'far short'),
  'far-air-20': air({ offL: FAR }, 'far short, 20 °C'),
  'far-air-100': air({ offL: FAR, tempC: HOT_C }, 'far short, 100 °C'),
  'far-line-20': line({ offL: FAR }, 'line, idle, far short, 20 °C'),
  'far-line-100': line({ offL: FAR, tempC: HOT_C }, 'line, idle, far short, 100 °C'),
};
