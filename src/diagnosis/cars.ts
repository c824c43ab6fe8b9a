/**
 * Cars that differ from the model, for measuring how good the planner is: it knows some of what differs and not the rest
 * (specification of the planner, section 3). Chance is handed in.
 */
import { CIRCUITS, type Plant } from '../engine/index.ts';
import { CLASSES, severitiesOf, type FaultClass, type Name } from './hypotheses.ts';
import { GAUGE_GAIN, NUISANCES, type Subject } from './nuisances.ts';
import { outcomeChances, signsFrom, CODE_SETS, type CodeSigns } from './outcome-tables.ts';
import type { TakenReading } from './posterior.ts';
import { readSubject } from './read-subject.ts';
import { nominalWarmth, withFault, type Table } from './table.ts';
import {
  CODES,
  columnOf,
  errorOf,
  isNumeric,
  isPressure,
  offScale,
  OUTCOMES,
  testOf,
  written,
  type NumericTest,
  type OutcomeTest,
  type Test,
} from './tests.ts';

/** A number from 0 to 1, a new one at each call. */
export type Chance = () => number;

/** A seeded chance: "mulberry32", public domain, by T. Ettinger. */
export function chanceFrom(seed: number): Chance {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** A normal number by Box and Muller. */
const normal = (chance: Chance): number =>
  Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
const within = (chance: Chance, half: number): number => half * (2 * chance() - 1);

/** What a test in numbers reads on a car with nothing to differ in, on the solver's scale; each is worked out once. */
export function nominalReader(plant: Plant): (id: string) => number {
  const subject: Subject = { plant, fluid: plant.fluid, warmth: nominalWarmth };
  const known = new Map<string, number>();
  return (id) => {
    const there = known.get(id);
    if (there !== undefined) return there;
    const test = testOf(id);
    if (!isNumeric(test)) throw new Error(`${id} reads no number.`);
    const value = readSubject(subject, test);
    known.set(id, value);
    return value;
  };
}

/** What is wrong with a car, as far as its readings go. */
export interface Illness {
  /** What is done to the sound car. */
  readonly spoil: (sound: Plant) => Plant;
  /** Chance of each outcome of a test in words. */
  readonly chances: (test: OutcomeTest) => readonly number[];
}

/** A car with something wrong, whose readings can be taken in any order. */
export type GeneratedCar = (test: Test) => TakenReading;

/** What the planner does not know of, as half the width of a uniform law (specification of the planner, section 3). */
export const UNKNOWN = {
  friction: 0.08,
  stroke: 0.08,
  spring: 0.08,
  crackLength: 0.2,
  pistonGap: 0.2,
  give: 0.2,
  inletLimit: 0.15,
  commands: 0.02,
  engineSpeed: 0.03,
  passage: 0.1,
  bleed: 0.1,
  cooler: 0.1,
} as const;

function unknownTo(plant: Plant, chance: Chance): Plant {
  const by = (half: number) => 1 + within(chance, half);
  const length = by(UNKNOWN.crackLength);
  const piston = by(UNKNOWN.pistonGap);
  const passage = by(UNKNOWN.passage);
  const bleed = by(UNKNOWN.bleed);
  const cooler = by(UNKNOWN.cooler);
  const friction = by(UNKNOWN.friction);
  const stroke = by(UNKNOWN.stroke);
  const spring = by(UNKNOWN.spring);
  const elastic = by(UNKNOWN.give);
  const limit = by(UNKNOWN.inletLimit);
  const each = <Value>(of: (circuit: (typeof CIRCUITS)[number]) => Value) =>
    Object.fromEntries(CIRCUITS.map((circuit) => [circuit, of(circuit)])) as Record<
      (typeof CIRCUITS)[number],
      Value
    >;
  const [line, clutchCommand] = [by(UNKNOWN.commands), by(UNKNOWN.commands)];
  const commanded = (point: Plant['testPoints']['idle']) => ({
    ...point,
    line: point.line * line,
    clutch: point.clutch * clutchCommand,
  });
  return {
    ...plant,
    testPoints: {
      idle: commanded(plant.testPoints.idle),
      load: commanded(plant.testPoints.load),
    },
    feed: { ...plant.feed, passage: plant.feed.passage * passage },
    bleedArea: plant.bleedArea * bleed,
    cooler: { ...plant.cooler, resistance: plant.cooler.resistance * cooler },
    pump: { ...plant.pump, suctionLimit: plant.pump.suctionLimit * limit },
    clutches: each((circuit) => {
      const clutch = plant.clutches[circuit];
      return {
        ...clutch,
        friction: clutch.friction * friction,
        strokeVolume: clutch.strokeVolume * stroke,
        springForce: clutch.springForce * spring,
        compliance: clutch.compliance * elastic,
      };
    }),
    leaks: each((circuit) => {
      const leaks = plant.leaks[circuit];
      return {
        ...leaks,
        transferSeal: { ...leaks.transferSeal, length: leaks.transferSeal.length * length },
        pistonSeal: { ...leaks.pistonSeal, width: leaks.pistonSeal.width * piston },
      };
    }),
  };
}

/** A class of fault at a severity. */
export const illnessOf = (of: FaultClass, severity: number, signs: CodeSigns): Illness => ({
  spoil: (sound) => withFault(sound, of, severity),
  chances: (test) => outcomeChances(test, of, severity, signs),
});

/** A car with an illness, with all that cars differ in, and what a shop reads on it. */
export function makeGenerated(
  plant: Plant,
  { spoil, chances }: Illness,
  chance: Chance,
): GeneratedCar {
  const sound = NUISANCES.reduce<Subject>(
    (subject, nuisance) => nuisance.move(subject, within(chance, nuisance.half)),
    {
      plant: unknownTo(plant, chance),
      fluid: plant.fluid,
      warmth: nominalWarmth,
      engineFactor: 1 + within(chance, UNKNOWN.engineSpeed),
    },
  );
  // What cars differ in they had when they were sound.
  const known: Subject = { ...sound, plant: spoil(sound.plant) };
  const gain = 1 + GAUGE_GAIN * normal(chance);
  const taken = new Map<string, TakenReading>();
  const number = (test: NumericTest): TakenReading['value'] => {
    const exact = readSubject(known, test) * (isPressure(test) ? gain : 1);
    const read = offScale(test, exact + errorOf(test, exact) * normal(chance));
    return written(test, read);
  };
  return (test) => {
    const before = taken.get(test.id);
    if (before) return before;
    const value = isNumeric(test) ? number(test) : drawn(test, chances(test), chance);
    const reading: TakenReading = { test, value };
    taken.set(test.id, reading);
    return reading;
  };
}

/** One outcome, by chance. */
export function drawn(
  test: OutcomeTest,
  chances: readonly number[],
  chance: Chance,
): TakenReading['value'] {
  let left = chance();
  const place = Math.max(
    0,
    chances.findIndex((p) => (left -= p) <= 0),
  );
  if (test.kind !== 'codes') return OUTCOMES[test.kind][place] ?? OUTCOMES[test.kind][0];
  return CODES.filter((_code, i) => CODE_SETS[place]?.[i]);
}

/** A fault at a severity, drawn as the planner's prior has it: each name alike, each circuit alike, severity evenly. */
export function drawClass(chance: Chance, names: readonly Name[]) {
  const name = names[Math.floor(chance() * names.length)] ?? 'healthy';
  const classes = CLASSES.filter((of) => of.name === name);
  const of = classes[Math.floor(chance() * classes.length)] ?? { name };
  const severities = severitiesOf(name);
  const [from = 1, to = 1] = [severities[0], severities.at(-1)];
  return { of, severity: from + chance() * (to - from) };
}

/** What codes go by, of the nominal car of a class at the node of severity next to a severity. */
export function signsNear(table: Table, of: FaultClass, severity: number): CodeSigns {
  const rows =
    table[CLASSES.findIndex((one) => one.name === of.name && one.circuit === of.circuit)];
  const row = rows?.[rows.length === 1 ? 0 : Math.round(severity * rows.length) - 1];
  return signsFrom((id) => row?.[columnOf(id)]?.nominal ?? 0);
}
