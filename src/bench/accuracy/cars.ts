/** The cars that the planner is tried on: one fault, two, none, or something that is not in its list. */
import {
  bothChances,
  BROKEN,
  ANY_VALUE,
  CODE_SETS,
  drawClass,
  drawn,
  illnessOf,
  isFault,
  isNumeric,
  LONGEST_STOP,
  makeGenerated,
  NAMES,
  nominalReader,
  NUMERIC,
  offScale,
  outcomeChances,
  OUTCOMES,
  signsFrom,
  signsNear,
  withFault,
  type Chance,
  type FaultClass,
  type GeneratedCar,
  type Illness,
  type Name,
  type NumericTest,
  type Table,
  type TakenReading,
} from '../../diagnosis/index.ts';
import { training } from '../../engine/index.ts';

export const FAULTS: readonly Name[] = NAMES.filter(isFault);

export interface Car {
  readonly names: readonly Name[];
  readonly read: GeneratedCar;
}

export function oneFault(table: Table, chance: Chance): Car {
  const { of, severity } = drawClass(chance, FAULTS);
  const illness = illnessOf(of, severity, signsNear(table, of, severity));
  return { names: [of.name], read: makeGenerated(training, illness, chance) };
}

export function healthy(table: Table, chance: Chance): Car {
  const of: FaultClass = { name: 'healthy' };
  const illness = illnessOf(of, 1, signsNear(table, of, 1));
  return { names: ['healthy'], read: makeGenerated(training, illness, chance) };
}

/** Two faults of different names. In words, the first says what it has to say, and where that is nothing, the second. */
export function twoFaults(chance: Chance): Car {
  const first = drawClass(chance, FAULTS);
  const second = drawClass(
    chance,
    FAULTS.filter((name) => name !== first.of.name),
  );
  const both = [first, second];
  const spoil: Illness['spoil'] = (sound) =>
    both.reduce((plant, { of, severity }) => withFault(plant, of, severity), sound);
  const signs = signsFrom(nominalReader(spoil(training)));
  const liar = both.find(({ of }) => of.name === 'turbineSensor');
  const chances: Illness['chances'] = (test) => {
    if (test.kind === 'codes') {
      return outcomeChances(test, liar?.of ?? { name: 'healthy' }, 1, signs);
    }
    const [a = [], b = []] = both.map(({ of, severity }) =>
      outcomeChances(test, of, severity, signs),
    );
    return bothChances(a, b);
  };
  return {
    names: both.map(({ of }) => of.name),
    read: makeGenerated(training, { spoil, chances }, chance),
  };
}

const groups: readonly string[] = [...new Set(NUMERIC.map(({ group }) => group))];

/** Any value that a test can show at all. */
function anyValue(test: NumericTest, chance: Chance): TakenReading['value'] {
  if (test.kind === 'stopTime') return chance() < 0.5 ? null : LONGEST_STOP * chance();
  const [from, to] = test.span;
  return offScale(test, from + (to - from) * chance());
}

/** A sound car of which some groups of readings take any value: something is wrong that is not in the list. */
export function outsideTheList(table: Table, chance: Chance): Car {
  const { read } = healthy(table, chance);
  const from = BROKEN[chance() < 0.5 ? 0 : 1];
  let broken = new Set<string>();
  // With no group broken nothing is wrong with it.
  while (broken.size === 0) broken = new Set(groups.filter(() => chance() < from));
  const taken = new Map<string, TakenReading>();
  return {
    names: ['unlisted'],
    read: (test) => {
      const before = taken.get(test.id);
      if (before) return before;
      let reading = read(test);
      if (isNumeric(test)) {
        if (broken.has(test.group) && chance() < ANY_VALUE) {
          reading = { test, value: anyValue(test, chance) };
        }
      } else if (chance() < (test.kind === 'codes' ? from : from / 3)) {
        const n = test.kind === 'codes' ? CODE_SETS.length : OUTCOMES[test.kind].length;
        reading = { test, value: drawn(test, new Array<number>(n).fill(1 / n), chance) };
      }
      taken.set(test.id, reading);
      return reading;
    },
  };
}
