import { words as names } from '../../car/names/words.en.ts';

interface Pressure {
  pressure: string;
}
type InCircuit = Pressure & { circuit: string };

export const words = {
  title: 'The whole hydraulic path',
  circuits: names.circuits,
  clutch: 'Clutch',
  rings: 'Rings',
  taps: 'Taps',
  valveBody: ['Valve', 'body'],
  shared: 'shared seal',
  hole: 'Hole',
  valve: 'Valve',
  solenoid: 'Solenoid',
  /** Where each fault sits. */
  faults: {
    transferSeal: 'the transfer seal',
    hardLip: 'the piston lip',
    clutchControl: 'the clutch regulating valve',
    sealingRings: 'the sealing rings',
    pistonSeal: 'the piston seal',
    pumpWear: 'the pump',
    regulatorBore: 'the regulator bore',
    pressureControl: 'the pressure control solenoid',
    filter: 'the filter',
    lowFluid: 'the fluid level',
    thinFluid: 'the fluid itself',
    feedRestriction: 'the feed hole',
    openPort: 'a port that stands open',
    frictionWear: 'the friction plates',
    turbineSensor: 'the turbine speed sensor',
  },
  faultIn: {
    forward: (p: { place: string }) => `${p.place} (forward)`,
    reverse: (p: { place: string }) => `${p.place} (reverse)`,
    high: (p: { place: string }) => `${p.place} (high)`,
  },
  describe: {
    line: {
      cold: (p: Pressure) =>
        `The whole hydraulic path, with cold fluid and line pressure at ${p.pressure}.`,
      hot: (p: Pressure) =>
        `The whole hydraulic path, with hot fluid and line pressure at ${p.pressure}.`,
    },
    circuit: {
      off: (p: InCircuit) => `${p.circuit} is not applied`,
      on: (p: InCircuit) => `${p.circuit} is applied with ${p.pressure}`,
      holds: (p: InCircuit) => `${p.circuit} is applied with ${p.pressure} and holds`,
      slips: (p: InCircuit) => `${p.circuit} is applied with ${p.pressure} and slips`,
    },
    /** One of these for each circuit, in one sentence. */
    circuits: (each: readonly string[]) => `${each.join('; ')}.`,
    shared: 'Forward and reverse share the transfer seal; high does not pass through it.',
    ringed: (places: readonly string[]) => `Ringed on the drawing: ${places.join(', ')}.`,
  },
};
