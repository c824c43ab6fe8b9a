import { words as names } from '../car/words.en.ts';
import type { Warmth } from '../diagnosis/tests.ts';

interface Place {
  readonly circuit: string;
  readonly range: string;
  readonly warm: string;
  readonly speed: string;
}
const warmths: Record<Warmth, string> = { frost: 'in frost', cold: 'cold', hot: 'hot' };

/** What a shop calls the readings of a short case. */
export const words = {
  warmths,
  ranges: names.ranges,
  circuits: names.circuits,
  tests: {
    engineOffTurbine: () => 'Turbine speed, engine off, key on',
    stopTime: (p: Place) => `Time until the turbine stops, ${p.range}, ${p.warm}`,
    takeoffSlip: (p: Place) => `Peak slip on take-off, ${p.range}, ${p.warm}`,
    linePressure: (p: Place) => `Line pressure, ${p.range}, ${p.speed}, ${p.warm}`,
    clutchPressure: (p: Place) => `Clutch pressure, ${p.circuit}, ${p.speed}, ${p.warm}`,
    coolerFlow: (p: Place) => `Cooler return, ${p.range}, ${p.speed}, ${p.warm}`,
  },
  never: 'It does not stop',
};
