/**
 * Cases without end: a car drawn by seed and difficulty on either training transmission, with what cars differ in, and what
 * its customer can have noticed. Nothing is invented beyond the draw: what the customer says follows from the same readings.
 */
import {
  applyFaults,
  FAULT_IDS,
  secondTraining,
  training,
  type FaultSet,
  type Plant,
} from '../engine/index.ts';
import {
  bothChances,
  chanceFrom,
  codesOf,
  drawClass,
  illnessOf,
  makeGenerated,
  nominalReader,
  signsNear,
  type Chance,
  type FaultClass,
  type Name,
  type Table,
  type TakenReading,
  type Test,
} from '../diagnosis/index.ts';
import type { Level, MadeKey, On } from './made-key.ts';
import { noticedOn, showsIn, type Noticed } from './noticed.ts';
import { seedOf } from './seed-of.ts';

/** The transmission of a key. */
export const PLANTS: Readonly<Record<On, Plant>> = { training, second: secondTraining };

export interface MadeCase {
  readonly key: MadeKey;
  /** None: a car with nothing wrong. */
  readonly classes: readonly (readonly [FaultClass, severity: number])[];
  readonly faults: FaultSet;
  readonly selection: 'electronic' | 'mechanical';
  readonly noticed: Noticed;
  readonly read: (test: Test) => TakenReading;
}

/** Share of cars with nothing wrong, and of cars with two faults, at each level. */
const SHARES: Readonly<Record<Level, { readonly healthy: number; readonly two: number }>> = {
  1: { healthy: 0, two: 0 },
  2: { healthy: 1 / 6, two: 0 },
  3: { healthy: 1 / 8, two: 1 / 3 },
};
/** A plain car has its fault in the upper half of what shows. */
const PLAIN_FROM = 0.6;

const setOf = (classes: MadeCase['classes']): FaultSet =>
  Object.fromEntries(
    classes.map(([{ name, circuit }, severity]) => [
      name,
      circuit === undefined ? { severity } : { severity, circuit },
    ]),
  );

function drawClasses(chance: Chance, level: Level): MadeCase['classes'] {
  const draw = chance();
  const { healthy, two } = SHARES[level];
  if (draw < healthy) return [];
  const one = (not?: Name): readonly [FaultClass, number] => {
    const { of, severity } = drawClass(
      chance,
      FAULT_IDS.filter((name) => name !== not),
    );
    if (level > 1) return [of, severity];
    return [of, PLAIN_FROM + (1 - PLAIN_FROM) * severity];
  };
  const first = one();
  return draw < healthy + two ? [first, one(first[0].name)] : [first];
}

/** How often a car is drawn again because its customer would not have come. */
const DRAWS = 40;

/**
 * The car of a key. The planner's table says by which signs its codes go.
 *
 * A fault that nobody would notice is drawn again, since such a car does not come in.
 */
export function makeCase(key: MadeKey, table: Table): MadeCase {
  const { seed, level, on } = key;
  const good = PLANTS[on];
  const was = nominalReader(good);
  const chance = chanceFrom(seed * 31 + level * 7 + (on === 'second' ? 3 : 0));
  for (let draw = 0; ; draw += 1) {
    const classes = drawClasses(chance, level);
    const faults = setOf(classes);
    // Of the turbine itself: a customer has no sensor, and codes go by whether one lies.
    const is = nominalReader({ ...applyFaults(good, faults), turbineSensorRestRpm: 0 });
    const codes = codesOf(classes, is);
    const noticed = noticedOn(was, is, codes);
    if (classes.length > 0 && !showsIn(noticed) && draw < DRAWS) continue;
    return {
      key,
      classes,
      faults,
      selection: chance() < 0.5 ? 'electronic' : 'mechanical',
      noticed,
      read: readerOf({ good, classes, codes, chance, table }),
    };
  }
}

interface Drawn {
  readonly good: Plant;
  readonly classes: MadeCase['classes'];
  readonly codes: readonly string[];
  readonly chance: Chance;
  readonly table: Table;
}

/** What every test reads on it, whatever was asked before: each test has a chance of its own. */
function readerOf({ good, classes, codes, chance, table }: Drawn): MadeCase['read'] {
  const seed = Math.floor(chance() * 2 ** 31);
  let source = chanceFrom(seed);
  const illnesses = (classes.length === 0 ? [[{ name: 'healthy' }, 1] as const] : classes).map(
    ([of, severity]) => illnessOf(of, severity, signsNear(table, of, severity)),
  );
  const car = makeGenerated(
    good,
    {
      spoil: (sound) => illnesses.reduce((plant, { spoil }) => spoil(plant), sound),
      chances: (test) => illnesses.map(({ chances }) => chances(test)).reduce(bothChances),
    },
    () => source(),
  );
  return (test) => {
    if (test.kind === 'codes') return { test, value: codes };
    source = chanceFrom(seed + seedOf(test.id));
    return car(test);
  };
}
