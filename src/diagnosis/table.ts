/**
 * What every test reads on every car of the list, and how that moves with what cars differ in: worked out once, and shipped
 * (specification of the planner, section 4).
 */
import { applyFaults, CIRCUITS, type Plant } from '../engine/index.ts';
import { CLASSES, hasSeverity, isFault, NODES, type FaultClass } from './hypotheses.ts';
import { GAUGE_GAIN, NUISANCES, sdOf, type Nuisance, type Subject } from './nuisances.ts';
import { readSubject } from './read-subject.ts';
import { isPressure, NUMERIC, WARMTHS, type NumericTest } from './tests.ts';

/** Columns of sensitivity: the twelve nuisances and the gain of the gauge. */
export const SHARED = NUISANCES.length + 1;

/** One test on one car. */
export interface Cell {
  /** Reading of the nominal car, and the mean over cars. */
  readonly nominal: number;
  readonly mean: number;
  /** Move of the reading for one sd of each shared difference. */
  readonly moves: Float64Array;
  /** What the moves leave out, sd. */
  readonly curvature: number;
}
/** All numeric tests on one class at one severity, in the order of NUMERIC. */
export type Row = readonly Cell[];
/** Rows by class, in the order of CLASSES; one for each node of severity, or a single one; none for `unlisted`. */
export type Table = readonly (readonly Row[])[];

export const nominalWarmth: Subject['warmth'] = {
  frost: WARMTHS.frost.at,
  cold: WARMTHS.cold.at,
  hot: WARMTHS.hot.at,
};

/** A transmission with a class of fault at a severity. */
export function withFault(plant: Plant, { name, circuit }: FaultClass, severity: number): Plant {
  if (!isFault(name)) return plant;
  return applyFaults(plant, {
    [name]: circuit === undefined ? { severity } : { severity, circuit },
  });
}

/** Whether a reading can feel a difference at all: half of the moves need not be worked out. */
function feels(
  { kind, at }: NumericTest,
  { id, warmth, circuit }: Nuisance,
  { leaks }: Plant,
): boolean {
  if (kind === 'engineOffTurbine') return false;
  if (kind === 'fluidCup') return id === 'kv40';
  if (kind === 'airTest') {
    if (at.circuit === 'transferSeal') return id === 'crackWidth';
    return circuit === at.circuit;
  }
  if (warmth !== undefined) return warmth === at.warmth;
  const inUse =
    at.circuit ??
    (at.range === 'drive' ? 'forward' : at.range === 'reverse' ? 'reverse' : undefined);
  if (circuit !== undefined) return circuit === inUse;
  if (id === 'crackWidth') {
    return CIRCUITS.some((one) => one === inUse && leaks[one].transferSeal.width > 0);
  }
  return id !== 'feed' || inUse !== undefined;
}

/** What cars differ in they had when they were sound: wear takes each of them to the same worst. */
const spoilt = (sound: Subject, of: FaultClass, severity: number): Subject => ({
  ...sound,
  plant: withFault(sound.plant, of, severity),
});

function cellOf(sound: Subject, of: FaultClass, severity: number, test: NumericTest): Cell {
  const read = (subject: Subject): number => readSubject(spoilt(subject, of, severity), test);
  const nominal = read(sound);
  const moves = new Float64Array(SHARED);
  let mean = nominal;
  let bends = 0;
  NUISANCES.forEach((nuisance, i) => {
    if (!feels(test, nuisance, sound.plant)) return;
    const sd = sdOf(nuisance.half);
    const up = read(nuisance.move(sound, sd));
    const down = read(nuisance.move(sound, -sd));
    moves[i] = (up - down) / 2;
    const bend = (up + down) / 2 - nominal;
    mean += bend;
    bends += bend ** 2;
  });
  if (isPressure(test)) moves[SHARED - 1] = GAUGE_GAIN * mean;
  return { nominal, mean, moves, curvature: Math.sqrt(2 * bends) };
}

/** One row: a class at a severity. */
export function rowOf(plant: Plant, of: FaultClass, severity: number): Row {
  const sound: Subject = { plant, fluid: plant.fluid, warmth: nominalWarmth };
  return NUMERIC.map((test) => cellOf(sound, of, severity, test));
}

const nodesOf = ({ name }: FaultClass): readonly number[] =>
  name === 'unlisted' ? [] : hasSeverity(name) ? NODES : [1];

/** Builds the table row by row, telling how far it has come (0 to 1), so that a worker can report and be stopped. */
export function* buildTable(plant: Plant): Generator<number, Table> {
  const all = CLASSES.reduce((sum, of) => sum + nodesOf(of).length, 0);
  const table: Row[][] = [];
  let done = 0;
  for (const of of CLASSES) {
    const rows: Row[] = [];
    for (const severity of nodesOf(of)) {
      rows.push(rowOf(plant, of, severity));
      done += 1;
      yield done / all;
    }
    table.push(rows);
  }
  return table;
}
