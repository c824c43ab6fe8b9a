/** The fifteen cars of the bench, and every car that their sheets are held against: brought along by the page, solved. */
import type { Circuit, FaultId } from '../../engine/index.ts';

export interface BenchCar {
  readonly fault: FaultId;
  /** The circuit that a fault of one circuit sits in. */
  readonly circuit: Circuit;
  /** Of the way from healthy to worst [%]. */
  readonly percent: number;
}
const car = (fault: FaultId, percent: number, circuit: Circuit = 'forward'): BenchCar => ({
  fault,
  circuit,
  percent,
});

/** By their number, from 1. Each fault once, in no order. */
export const CARS: readonly BenchCar[] = [
  car('openPort', 70),
  car('pumpWear', 40),
  car('sealingRings', 25, 'high'),
  car('frictionWear', 80),
  car('regulatorBore', 60),
  car('pistonSeal', 70),
  car('transferSeal', 60),
  car('filter', 100),
  car('feedRestriction', 80),
  car('turbineSensor', 100),
  car('hardLip', 90),
  car('lowFluid', 90),
  car('pressureControl', 50),
  car('clutchControl', 60, 'reverse'),
  car('thinFluid', 90),
];

/** A car as solved: pressures [kPa] in the order of the sheet. */
export interface Solved {
  readonly name: FaultId | 'healthy' | 'command';
  readonly circuit: Circuit | '';
  readonly percent: number;
  readonly kPa: readonly number[];
}

let brought: readonly Solved[] = [];

/**
 * Takes what the page brought along: a line a car, of which the second is the sound one, and a reading left out is the sound
 * car's. The same on every page, so it need not say for whom.
 */
export function bringCars(text: string): void {
  let sound: readonly number[] = [];
  brought = text.split('\n').map((line, i) => {
    const [name = '', circuit = '', percent = '', ...kPa] = line.split(',');
    const values = kPa.map((one, at) => (one === '' ? (sound[at] ?? 0) : Number(one)));
    if (i === 1) sound = values;
    return { name, circuit, percent: Number(percent), kPa: values } as Solved;
  });
}

export function solved(): readonly Solved[] {
  if (brought.length === 0) throw new Error('The page brought no cars.');
  return brought;
}
/** What the controller commands, reading by reading [kPa]. */
export const commands = (): readonly number[] => solved()[0]?.kPa ?? [];

/** A car of the bench among those that were brought. */
export function solvedOf({ fault, circuit, percent }: BenchCar): Solved {
  const one = solved().find(
    (other) =>
      other.name === fault &&
      other.percent === percent &&
      (other.circuit === '' || other.circuit === circuit),
  );
  if (!one) throw new Error(`Nobody solved ${fault} ${percent} % ${circuit}.`);
  return one;
}
