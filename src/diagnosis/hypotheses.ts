/**
 * What can be wrong with a car that comes in, and what is believed before anything is measured. Hypotheses, severities from
 * which a fault shows, and weights are assumptions of this site: no published rates exist (specification of the planner,
 * section 1).
 */
import {
  CIRCUITS,
  FAULT_IDS,
  faultKinds,
  type Circuit,
  type FaultId,
  type FaultKind,
} from '../engine/index.ts';

/** The fifteen faults, a car with nothing wrong, and a cause that is not in this list. */
export const NAMES = [...FAULT_IDS, 'healthy', 'unlisted'] as const;
/** Name of a hypothesis. */
export type Name = (typeof NAMES)[number];

/** Whether a text is a name. */
export const isName = (text: string): text is Name => (NAMES as readonly string[]).includes(text);

/** A hypothesis with its place: the five faults of one circuit come three times. */
export interface FaultClass {
  readonly name: Name;
  readonly circuit?: Circuit;
}

export const isFault = (name: Name): name is FaultId => name !== 'healthy' && name !== 'unlisted';
/** Whether a fault sits in one circuit. */
export const inOneCircuit = (name: Name): boolean => {
  if (!isFault(name)) return false;
  const kind: FaultKind = faultKinds[name];
  return kind.oneCircuit;
};

/** All 27, in the order of the names. */
export const CLASSES: readonly FaultClass[] = NAMES.flatMap((name): readonly FaultClass[] =>
  inOneCircuit(name) ? CIRCUITS.map((circuit) => ({ name, circuit })) : [{ name }],
);

/**
 * Severity from which a fault shows: the nominal car is late by a tenth of a second, or low by a tenth at a tap, or stores a
 * code. Healthy and unlisted have no severity, and a false sensor is there or not.
 */
const SHOWS_FROM: Readonly<Record<FaultId, number>> = {
  transferSeal: 0.3,
  hardLip: 0.7,
  clutchControl: 0.25,
  sealingRings: 0.1,
  pistonSeal: 0.35,
  pumpWear: 0.25,
  regulatorBore: 0.45,
  pressureControl: 0.2,
  filter: 0.55,
  lowFluid: 0.6,
  thinFluid: 0.6,
  feedRestriction: 0.25,
  openPort: 0.35,
  frictionWear: 0.3,
  turbineSensor: 1,
};

/** Distance of the severities at which the table is worked out. */
export const NODE_STEP = 1 / 20;
/** Those severities. */
export const NODES: readonly number[] = Array.from({ length: 20 }, (_, i) => (i + 1) / 20);
/** Distance of the severities that are weighed. */
const CELL = 0.025;

/** The severities of a name that are weighed, from where it shows to 1; one where there is none. */
export function severitiesOf(name: Name): readonly number[] {
  if (!isFault(name)) return [1];
  const from = SHOWS_FROM[name];
  const cells = Math.round((1 - from) / CELL);
  return Array.from({ length: cells + 1 }, (_, i) => Number((from + i * CELL).toFixed(3)));
}

/** Whether a name is worked out at each node of severity, or once. */
export const hasSeverity = (name: Name): boolean => isFault(name) && name !== 'turbineSensor';

/** The two cells of `unlisted`: with what chance each group of readings is broken. */
export const BROKEN = [0.15, 0.35] as const;
/** With what chance a reading of a broken group takes any value. */
export const ANY_VALUE = 0.7;

/** Weight of a name before it is divided by the sum. */
export const usualWeight = (name: Name): number => (name === 'unlisted' ? 2 : 1);
