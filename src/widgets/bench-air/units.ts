import { crackFault, makeCar, oneFault, REFERENCE_CRACK_MM, type Car } from '../../car/car.ts';
import type { AirTestTarget, Circuit, FaultSet } from '../../engine/index.ts';

/** What a unit can be said to have, as far as air is asked. */
export const FINDINGS = [
  'sealingRings',
  'pistonSeal',
  'openPort',
  'transferSeal',
  'nothing',
] as const;
export type Finding = (typeof FINDINGS)[number];

export interface Unit {
  readonly faults: FaultSet;
  /** What air finds of it. */
  readonly finding: Finding;
  /** Where it is found; the circuit of the complaint where air finds nothing. */
  readonly at: AirTestTarget;
}
const of = (finding: Finding, at: AirTestTarget, faults: FaultSet): Unit => ({
  finding,
  at,
  faults,
});
const worn = (id: 'sealingRings' | 'pistonSeal' | 'openPort', percent: number, at: Circuit) =>
  of(id, at, oneFault(id, percent, at));

/** The transmissions that lie on the bench, by their number from 1; how bad each is, is chosen so that it plays as it is told. */
export const UNITS: readonly Unit[] = [
  of('transferSeal', 'transferSeal', crackFault(REFERENCE_CRACK_MM)),
  worn('sealingRings', 20, 'reverse'),
  worn('openPort', 70, 'forward'),
  worn('pistonSeal', 60, 'high'),
  // Its own valve fades hot; that lies on the bench with the valve body.
  of('nothing', 'forward', oneFault('clutchControl', 80, 'forward')),
  of('nothing', 'forward', {}),
];

const cars = new Map<Unit, Car>();
/** Made when it is first asked for. */
export function carOf(unit: Unit): Car {
  const made = cars.get(unit) ?? makeCar({ faults: unit.faults });
  cars.set(unit, made);
  return made;
}
