import { M3_PER_US_GALLON, pumpFlow, pumpIntake } from '../../src/engine/index.ts';
import { published } from './check.ts';

const ESPOSITO = 'Esposito, Fluid Power with Applications, example ';
const CUBIC_INCH = 0.0254 ** 3;
const perMinute = 60 / M3_PER_US_GALLON;
const ideal = { displacement: 1e-5, slip: 0, suctionResistance: 0, suctionLimit: 6e4, air: 0 };
// The published coefficient is per revolution, the engine's per radian.
const wilson = { ...ideal, slip: 2 * Math.PI * 1.8e-9 };
const WILSON = 'slip law of Wilson as in McCandlish & Dorey, Proc. IMechE 198B (1984)';
const slipShare = (speed: number, pressure: number, dynamic: number) =>
  1 - pumpFlow(wilson, { speed, pressure, dynamic }) / pumpIntake(wilson, speed, dynamic);
const gearPump = { ...ideal, displacement: (Math.PI / 4) * (3 ** 2 - 2 ** 2) * CUBIC_INCH };

published('pump', [
  {
    what: 'slip coefficient 1.8e-9, 0.036 Pa s, 20 MPa, 25 rev/s: 4.0 % of the ideal flow',
    source: `${WILSON}; coefficient printed in an open-source hydraulics library`,
    status: 'computed',
    got: () => slipShare(25, 20e6, 0.036),
    expected: 0.04,
    within: { absolute: 1e-9 },
    because: 'closed form',
  },
  {
    what: 'the same pump at hot idle, 1 MPa, 5.5 mPa s, 750 rpm: 2.6 %',
    source: WILSON,
    status: 'computed',
    got: () => slipShare(750 / 60, 1e6, 5.5e-3),
    expected: 0.026,
    within: { absolute: 5e-4 },
    because: 'worked out to two figures',
  },
  {
    what: 'gear pump 3 in / 2 in, 1 in wide, 1800 rpm: ideal flow 30.6 US gpm',
    source: `${ESPOSITO}5.1`,
    status: 'printed',
    got: () => pumpIntake(gearPump, 30, 0.01) * perMinute,
    expected: 30.6,
    within: { absolute: 0.05 },
    because: 'printed to one decimal',
  },
  {
    what: 'delivering 28 gpm, its volumetric efficiency is 91.5 %: the slip that makes it so',
    source: `${ESPOSITO}5.1`,
    status: 'printed',
    got: () => {
      const lost = pumpIntake(gearPump, 30, 0.01) - 28 / perMinute;
      const slip = (lost * 2 * Math.PI * 0.01) / (gearPump.displacement * 7e6);
      const at = { speed: 30, pressure: 7e6, dynamic: 0.01 };
      return pumpFlow({ ...gearPump, slip }, at) / pumpIntake(gearPump, 30, 0.01);
    },
    expected: 0.915,
    within: { absolute: 5e-4 },
    because: 'printed to three figures',
  },
  {
    what: 'a 5 cubic inch pump at 1000 rpm against its 20 gpm: volumetric efficiency 92.4 %',
    source: `${ESPOSITO}5.8`,
    status: 'printed',
    got: () =>
      20 / (pumpIntake({ ...ideal, displacement: 5 * CUBIC_INCH }, 1000 / 60, 0.01) * perMinute),
    expected: 0.924,
    within: { absolute: 5e-4 },
    because: 'printed to three figures',
  },
]);
