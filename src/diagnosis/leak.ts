/**
 * How big the leak at the transfer seal is: a posterior over height and width of the crack on a grid, each cell with the
 * joint normal law of all pressures given (specification of the planner, section 7).
 */
import {
  CIRCUITS,
  commandsAt,
  litresPerMinute,
  makeFluid,
  revPerSecond,
  solveSteady,
  type Circuit,
  type Plant,
} from '../engine/index.ts';
import {
  GAUGE_GAIN,
  inPlant,
  NUISANCES,
  sdOf,
  withSeals,
  type Nuisance,
  type Subject,
} from './nuisances.ts';
import { readSubject } from './read-subject.ts';
import { spreadOf } from './spread.ts';
import { nominalWarmth } from './table.ts';
import type { TakenReading } from './posterior.ts';
import { errorOf, isNumeric, WARMTHS, type NumericTest } from './tests.ts';

/** What the pressures say of the crack. */
export interface LeakEstimate {
  /** 5, 50 and 95 % points of height and width [mm]. */
  readonly heightMm: readonly [number, number, number];
  readonly widthMm: readonly [number, number, number];
  /** Correlation of the logarithms of height and width. */
  readonly correlation: number;
  /** Whether height and width can be told apart by these readings. */
  readonly apart: boolean;
  /** Width times height squared [mm³], median: what is known where they cannot. */
  readonly widthHeightSquared: number;
  /** What it loses hot at the commands of idle [L/min], 5, 50 and 95 % points. */
  readonly leakLmin: readonly [number, number, number];
  /** Cells of the 90 % highest-density region, as pairs of height and width [mm]. */
  readonly region: readonly (readonly [heightMm: number, widthMm: number])[];
  /** A reading that would help, or that there is none: the crack is too thin for any shop reading to tell. */
  readonly helps: 'forwardColdLoaded' | 'tooThin' | null;
}

/** The grid of sizes that are weighed [mm]. */
export const HEIGHTS_MM: readonly number[] = Array.from({ length: 41 }, (_, i) => 0.04 + i / 100);
export const WIDTHS_MM: readonly number[] = Array.from(
  { length: 24 },
  (_, i) => 4 * Math.exp((i / 23) * Math.log(10)),
);
/** A gauge may be off by so much all along its scale, sd [kPa]. */
const ZERO_KPA = 4;
const OWN_SHARE = 0.02;
const COMMAND_HALF = 0.02;
const LENGTH_HALF = 0.2;
/** Above this spread of ln(width) the two cannot be told apart. */
const SPREAD = 0.25;
/** From this pressure on the crack is too thin to part them [kPa]. */
const TOO_THIN_KPA = 740;
/** Share of the highest-density region. */
export const REGION = 0.9;
const HELPFUL = 'clutch.forward.1500.cold';

/** The transmission with its seal split, in every circuit that passes through it. */
export const crack = (plant: Plant, heightMm: number, widthMm: number): Plant =>
  withSeals(plant, ({ width }) =>
    width === 0 ? {} : { height: heightMm / 1e3, width: widthMm / 1e3 },
  );
const commanded = inPlant((plant, factor) => {
  const { idle, load } = plant.testPoints;
  const moved = (point: typeof idle) => ({
    ...point,
    line: point.line * factor,
    clutch: point.clutch * factor,
  });
  return { ...plant, testPoints: { idle: moved(idle), load: moved(load) } };
});
const cracksLonger = inPlant((plant, factor) =>
  withSeals(plant, ({ length }) => ({ length: length * factor })),
);

/** What differs from car to car here: as for the planner, with the crack's own length for its width, and the command. */
const SHARED_HERE: readonly Pick<Nuisance, 'half' | 'move'>[] = [
  ...NUISANCES.filter(({ id }) => !['crackWidth', 'rings.high', 'temperature.frost'].includes(id)),
  { half: LENGTH_HALF, move: cracksLonger },
  { half: COMMAND_HALF, move: commanded },
];

/** ln of the normal density of y - m under the covariance S (n by n, row by row), by Cholesky. */
function logNormal(off: readonly number[], S: readonly (readonly number[])[]): number {
  const n = off.length;
  const L: number[][] = off.map(() => new Array<number>(n).fill(0));
  let log = 0;
  const solved: number[] = [];
  for (let i = 0; i < n; i += 1) {
    const row = L[i] ?? [];
    for (let j = 0; j <= i; j += 1) {
      const other = L[j] ?? [];
      let sum = S[i]?.[j] ?? 0;
      for (let k = 0; k < j; k += 1) sum -= (row[k] ?? 0) * (other[k] ?? 0);
      row[j] = i === j ? Math.sqrt(sum) : sum / (other[j] ?? 1);
    }
    let left = off[i] ?? 0;
    for (let k = 0; k < i; k += 1) left -= (row[k] ?? 0) * (solved[k] ?? 0);
    solved[i] = left / (row[i] ?? 1);
    log -= Math.log(row[i] ?? 1) + 0.5 * (solved[i] ?? 0) ** 2;
  }
  return log;
}

/** A pressure that is taken, and where the fluid was not at the nominal temperature [°C]. */
interface Tap {
  readonly test: NumericTest;
  readonly temperatureC?: number | undefined;
}
/** A size of crack, with the joint law of the pressures it gives: their means and their covariance [kPa]. */
export interface CrackLaw {
  readonly heightMm: number;
  readonly widthMm: number;
  readonly means: readonly number[];
  readonly covariance: readonly (readonly number[])[];
}

function lawOf(
  subject: Subject,
  pressures: readonly Tap[],
): Omit<CrackLaw, 'heightMm' | 'widthMm'> {
  const at = (one: Subject) =>
    pressures.map(({ test, temperatureC }) => {
      const { warmth } = test.at;
      if (temperatureC === undefined || warmth === undefined) return readSubject(one, test);
      const off = temperatureC - WARMTHS[warmth].at;
      return readSubject(
        { ...one, warmth: { ...one.warmth, [warmth]: one.warmth[warmth] + off } },
        test,
      );
    });
  const means = at(subject);
  const columns = SHARED_HERE.map(({ half, move }) => {
    const sd = sdOf(half);
    const [up, down] = [at(move(subject, sd)), at(move(subject, -sd))];
    return up.map((value, i) => (value - (down[i] ?? 0)) / 2);
  });
  columns.push(
    means.map((mean) => GAUGE_GAIN * mean),
    means.map(() => ZERO_KPA),
  );
  const covariance = means.map((mean, i) =>
    means.map((_other, j) => {
      const shared = columns.reduce((sum, column) => sum + (column[i] ?? 0) * (column[j] ?? 0), 0);
      const test = pressures[i]?.test;
      const own = i === j && test ? errorOf(test, mean) ** 2 + (OWN_SHARE * mean) ** 2 : 0;
      return shared + own;
    }),
  );
  return { means, covariance };
}

/** The law of the pressures at some taps for every size of crack. A second of work for each pressure. */
export const crackLaws = (plant: Plant, pressures: readonly Tap[]): readonly CrackLaw[] =>
  HEIGHTS_MM.flatMap((heightMm) =>
    WIDTHS_MM.map((widthMm) => ({
      heightMm,
      widthMm,
      ...lawOf(
        { plant: crack(plant, heightMm, widthMm), fluid: plant.fluid, warmth: nominalWarmth },
        pressures,
      ),
    })),
  );

/** Share of each size once the pressures are read [kPa]. */
export function crackShares(laws: readonly CrackLaw[], read: readonly number[]): readonly number[] {
  const logs = laws.map(({ means, covariance }) =>
    logNormal(
      means.map((mean, i) => (read[i] ?? 0) - mean),
      covariance,
    ),
  );
  const most = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - most));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}

/** Places of the likeliest sizes that together hold a share: the highest-density region. */
export function likeliest(shares: readonly number[], wanted: number): readonly number[] {
  const places = shares.map((_share, i) => i);
  places.sort((a, b) => (shares[b] ?? 0) - (shares[a] ?? 0));
  let held = 0;
  const most = places.findIndex((i) => (held += shares[i] ?? 0) >= wanted);
  return most < 0 ? places : places.slice(0, most + 1);
}

/** Circuits that pass through the transfer seal. */
const sealed = ({ leaks }: Plant): readonly Circuit[] =>
  CIRCUITS.filter((circuit) => leaks[circuit].transferSeal.width > 0);

/** What a crack loses hot on the commands of idle, in the first circuit through the seal [L/min]. */
function hotIdleLeak(plant: Plant): number {
  const [circuit = 'forward'] = sealed(plant);
  const { line, clutch } = commandsAt(plant, 'idle', circuit);
  const { circuits } = solveSteady({
    plant,
    fluid: makeFluid(plant.fluid),
    tempC: WARMTHS.hot.at,
    engineSpeed: revPerSecond(plant.testPoints.idle.engineRpm),
    lineCommand: line,
    clutchCommand: clutch,
    applied: [circuit],
  });
  return litresPerMinute(circuits[circuit]?.parts.transferSeal ?? 0);
}

/** The crack from two or more pressures of circuits that pass through the seal; null where there are fewer. */
export function estimateLeak(plant: Plant, readings: readonly TakenReading[]): LeakEstimate | null {
  const through = sealed(plant);
  const pressures = readings.flatMap((reading) => {
    const { test } = reading;
    const fits =
      isNumeric(test) &&
      test.kind === 'clutchPressure' &&
      through.some((circuit) => circuit === test.at.circuit);
    return fits ? [{ ...reading, test }] : [];
  });
  if (pressures.length < 2) return null;
  const laws = crackLaws(plant, pressures);
  const each = crackShares(
    laws,
    pressures.map(({ value }) => value as number),
  );
  const shares = laws.map(({ heightMm, widthMm }, i) => ({
    height: heightMm,
    width: widthMm,
    share: each[i] ?? 0,
  }));
  const mean = (of: (cell: (typeof shares)[number]) => number): number =>
    shares.reduce((sum, cell) => sum + cell.share * of(cell), 0);
  const [lnH, lnW] = [mean(({ height }) => Math.log(height)), mean(({ width }) => Math.log(width))];
  const spread = (one: (cell: (typeof shares)[number]) => number, other = one) =>
    mean((cell) => one(cell) * other(cell));
  const h = (cell: { height: number }) => Math.log(cell.height) - lnH;
  const w = (cell: { width: number }) => Math.log(cell.width) - lnW;
  const apart = Math.sqrt(spread(w)) <= SPREAD;
  const region = likeliest(each, REGION).map((i): readonly [number, number] => [
    laws[i]?.heightMm ?? NaN,
    laws[i]?.widthMm ?? NaN,
  ]);
  const helpful = readings.find(({ test }) => test.id === HELPFUL);
  return {
    heightMm: spreadOf(shares.map(({ height, share }) => [height, share])),
    widthMm: spreadOf(shares.map(({ width, share }) => [width, share])),
    leakLmin: spreadOf(
      shares.map(({ height, width, share }) => [hotIdleLeak(crack(plant, height, width)), share]),
    ),
    correlation: spread(h, w) / Math.sqrt(spread(h) * spread(w)),
    apart,
    widthHeightSquared: spreadOf(
      shares.map(({ height, width, share }) => [width * height ** 2, share]),
    )[1],
    region,
    helps:
      apart || !through.includes('forward')
        ? null
        : helpful === undefined
          ? 'forwardColdLoaded'
          : (helpful.value as number) >= TOO_THIN_KPA
            ? 'tooThin'
            : null,
  };
}
