/**
 * How likely each outcome is that the physics does not produce: what one sees, feels and reads in codes (specification of
 * the planner, section 2.2). Assumptions of this site; no published rates exist.
 */
import { CODES, OUTCOMES, type OutcomeKind, type OutcomeTest } from './tests.ts';
import type { FaultClass, Name } from './hypotheses.ts';
import { normalBelow } from './normal.ts';

const clip = (value: number, least: number, most: number): number =>
  Math.min(most, Math.max(least, value));

/** Leaks and controls: they slip a clutch, and a clutch that slips darkens the fluid. */
const DARKENS: readonly Name[] = [
  'transferSeal',
  'sealingRings',
  'pistonSeal',
  'openPort',
  'regulatorBore',
  'pressureControl',
  'feedRestriction',
];

type Table = (of: FaultClass, severity: number, at: OutcomeTest['at']) => readonly number[];

const tables: Readonly<Record<OutcomeKind, Table>> = {
  fluidLevel: ({ name }, s) => {
    if (name !== 'lowFluid') return [0.88, 0.1, 0.02];
    const v = clip(1.2 * s - 0.1, 0.05, 0.9);
    return [0.05, 0.95 - v, v];
  },
  fluidLook: ({ name }, s) => {
    if (name === 'frictionWear') {
      const d = 0.15 + 0.65 * s;
      return [0.95 - d, d, 0.03, 0.02];
    }
    if (name === 'pumpWear') {
      const m = 0.1 + 0.45 * s;
      return [0.82 - m, 0.12, m, 0.06];
    }
    if (name === 'lowFluid') {
      const f = 0.1 + 0.65 * s;
      return [0.8 - f, 0.15, 0.05, f];
    }
    if (DARKENS.includes(name)) {
      const d = 0.1 + 0.3 * s;
      return [0.94 - d, d, 0.04, 0.02];
    }
    return name === 'filter' ? [0.68, 0.2, 0.1, 0.02] : [0.86, 0.08, 0.03, 0.03];
  },
  cable: ({ name }) => (name === 'feedRestriction' ? [0.35, 0.65] : [0.95, 0.05]),
  solenoidCurrent: ({ name, circuit }, _s, at) => {
    if (name === 'pressureControl' && at.circuit === 'line') return [0.35, 0.65];
    if (name === 'clutchControl' && at.circuit === circuit) return [0.45, 0.55];
    return [0.96, 0.04];
  },
  gaugeFlutter: ({ name }, s) => {
    if (name === 'lowFluid') {
      const air = clip(0.9 * s, 0, 0.9);
      const p = 0.04 + 0.9 * normalBelow((air - 0.15) / 0.08);
      return [1 - p, p];
    }
    return name === 'filter' ? [0.75, 0.25] : [0.95, 0.05];
  },
  panFilter: ({ name }, s) => {
    if (name === 'filter') {
      const c = clip(0.35 + 0.6 * s, 0, 0.93);
      return [0.97 - c, 0.02, 0.01, c];
    }
    if (name === 'frictionWear') {
      const d = 0.25 + 0.6 * s;
      return [0.93 - d, d, 0.04, 0.03];
    }
    if (name === 'pumpWear') {
      const m = 0.2 + 0.55 * s;
      return [0.87 - m, 0.09, m, 0.04];
    }
    if (DARKENS.includes(name)) {
      const d = 0.1 + 0.3 * s;
      return [0.92 - d, d, 0.05, 0.03];
    }
    return [0.84, 0.09, 0.04, 0.03];
  },
  airWhere: ({ name, circuit }, s, at) => {
    const places: Partial<Record<Name, readonly number[]>> = {
      sealingRings: [0.85, 0.1, 0.05],
      pistonSeal: [0.1, 0.85, 0.05],
      hardLip: [0.1, 0.85, 0.05],
      openPort: [0.06, 0.06, 0.88],
    };
    const where = places[name];
    if (where === undefined || at.circuit !== circuit) return [0.91, 0.05, 0.02, 0.02];
    const d = clip(0.2 + 0.9 * s, 0, 0.93);
    return [1 - d, ...where.map((share) => d * share)];
  },
  boreVacuum: ({ name }, s) => {
    if (name !== 'regulatorBore') return [0.94, 0.06];
    const d = clip(0.25 + 0.7 * s, 0, 0.93);
    return [1 - d, d];
  },
};

/** What the table of numbers says of a car where codes are concerned: stop times [s], ln(slip + 30), the high tap hot [kPa]. */
export interface CodeSigns {
  readonly stop: { readonly drive: number; readonly reverse: number };
  readonly slip: { readonly drive: number; readonly reverse: number };
  readonly highTap: number;
}

const stored = (value: number, middle: number, width: number): number =>
  0.04 + 0.86 * normalBelow((value - middle) / width);

/** With what chance each of CODES is stored, each range on its own. */
export function codeChances({ name }: FaultClass, signs: CodeSigns): readonly number[] {
  const range = (stop: number, slip: number): number =>
    Math.max(stored(stop, 1.5, 0.25), stored(slip, Math.log(180), 0.4));
  // A sensor that never reads zero: the turbine "never stops", and only the ranges that stand are judged by it.
  const lies = name === 'turbineSensor';
  return [
    range(lies ? 5 : signs.stop.drive, signs.slip.drive),
    range(lies ? 5 : signs.stop.reverse, signs.slip.reverse),
    lies ? 0.04 : stored(300 - signs.highTap, 0, 60),
  ];
}

/** The sets of codes there can be, each as which of CODES is in it. */
export const CODE_SETS: readonly (readonly boolean[])[] = Array.from(
  { length: 2 ** CODES.length },
  (_, set) => CODES.map((_code, i) => Math.floor(set / 2 ** i) % 2 === 1),
);

/** Chance of each outcome of a test in words, in the order of OUTCOMES, or of CODE_SETS. */
export function outcomeChances(
  { kind, at }: OutcomeTest,
  of: FaultClass,
  severity: number,
  signs: CodeSigns,
): readonly number[] {
  if (kind !== 'codes') return tables[kind](of, severity, at);
  const each = codeChances(of, signs);
  return CODE_SETS.map((set) =>
    set.reduce((product, is, i) => product * (is ? (each[i] ?? 0) : 1 - (each[i] ?? 0)), 1),
  );
}

/** How many outcomes a test in words has. */
export const outcomesOf = ({ kind }: OutcomeTest): number =>
  kind === 'codes' ? CODE_SETS.length : OUTCOMES[kind].length;

/** Chance of each outcome of a test in words that is not of codes. */
export function outcomeChancesOf(
  { kind, at }: OutcomeTest,
  of: FaultClass,
  severity: number,
): readonly number[] {
  return kind === 'codes' ? [] : tables[kind](of, severity, at);
}

/** What codes go by, from what the tests of a car read on the solver's scale. */
export function signsFrom(numeric: (test: string) => number): CodeSigns {
  const stop = (range: string) =>
    Math.max(numeric(`stopTime.${range}.hot`), numeric(`stopTime.${range}.cold`));
  return {
    stop: { drive: stop('drive'), reverse: stop('reverse') },
    slip: { drive: numeric('takeoffSlip.drive.hot'), reverse: numeric('takeoffSlip.reverse.hot') },
    highTap: numeric('clutch.high.1500.hot'),
  };
}

/** The codes that a car stores, as likely as not or more, from what its tests read on the solver's scale. */
export function codesOf(
  classes: readonly (readonly [FaultClass, number])[],
  numeric: (test: string) => number,
): readonly string[] {
  const lies = classes.find(([{ name }]) => name === 'turbineSensor');
  const chances = codeChances(lies?.[0] ?? { name: 'healthy' }, signsFrom(numeric));
  return CODES.filter((_code, i) => (chances[i] ?? 0) >= 0.5);
}

/** Chances of two faults at once: the first says what it has to say, and where that is nothing, the second. */
export const bothChances = (
  first: readonly number[],
  second: readonly number[],
): readonly number[] => {
  const [quiet = 0] = first;
  return first.map((p, i) => (i === 0 ? 0 : p) + quiet * (second[i] ?? 0));
};
