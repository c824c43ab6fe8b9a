/** The cars that a talk is about: those kept, each on each day, and one whose cause is not in the list. */
import { CLASSES, NAMES, usualWeight, type Name } from '../diagnosis/hypotheses.ts';
import type { Circuit } from '../engine/index.ts';
import { ASKED, DAYS, placeOf, type Asked, type Day } from './answers.ts';
import { keptAccounts } from './kept-accounts.ts';
import { DAY_SHARE, suspectOf, type Car, type Suspect } from './talk-list.ts';

type Truth = Readonly<Record<Asked, number>>;
interface Kept {
  readonly name: Name;
  readonly circuit: Circuit | undefined;
  readonly severity: number;
  /** From which it shows [°C]; null where it does not wait for heat. */
  readonly fromC: number | null;
  readonly truthOn: (day: Day) => Truth;
}

function unpacked(row: readonly number[]): Kept {
  const [
    index = 0,
    severity = 0,
    fromC = -1,
    ranges = 0,
    warm = 0,
    weather = 0,
    load = 0,
    lights = 0,
  ] = row;
  const { name, circuit } = CLASSES[index] ?? { name: 'healthy', circuit: undefined };
  return {
    name,
    circuit,
    severity: severity / 100,
    fromC: fromC < 0 ? null : fromC,
    truthOn: (day) => ({
      ranges,
      warm,
      minutes: row[8 + DAYS.indexOf(day)] ?? 0,
      road: placeOf('road', day),
      weather,
      load,
      lights,
      // A model of fluid and clutches: heat counts, hours do not, and a key that is turned off and on cools nothing.
      stood: placeOf('stood', 'no'),
      restart: placeOf('restart', 'no'),
    }),
  };
}

let unpackedAll: readonly Kept[] | undefined;
const kept = (): readonly Kept[] => (unpackedAll ??= keptAccounts.map(unpacked));

const weightOfAll = (): number => NAMES.reduce((sum, name) => sum + usualWeight(name), 0);
/** Names alike, a name's circuits alike, cars and days of a class alike. */
function weightsOf(cars: readonly Kept[]): readonly number[] {
  const classOf = ({ name, circuit }: Kept): string => `${name} ${circuit ?? ''}`;
  const inClass = new Map<string, number>();
  for (const car of cars) inClass.set(classOf(car), (inClass.get(classOf(car)) ?? 0) + 1);
  const all = weightOfAll();
  return cars.map((car) => {
    const circuits = CLASSES.filter(({ name }) => name === car.name).length;
    const alike = inClass.get(classOf(car)) ?? 1;
    return (usualWeight(car.name) / all / circuits / alike) * DAY_SHARE;
  });
}

/** Those in the list: cars that say the same of themselves are one. */
function listed(): readonly Car[] {
  const alike = new Map<string, Car>();
  const weights = weightsOf(kept());
  for (const [place, one] of kept().entries()) {
    const weight = weights[place] ?? 0;
    for (const day of DAYS) {
      const truth = one.truthOn(day);
      const key = `${one.name} ${Object.values(truth).join(' ')}`;
      alike.set(key, {
        name: NAMES.indexOf(one.name),
        weight: weight + (alike.get(key)?.weight ?? 0),
        truth,
        restartHelps: one.name === 'clutchControl',
      });
    }
  }
  return [...alike.values()];
}

const unlisted = (): Car => ({
  name: NAMES.indexOf('unlisted'),
  weight: usualWeight('unlisted') / weightOfAll(),
  truth: Object.fromEntries(ASKED.map((question) => [question, null])) as Car['truth'],
  restartHelps: true,
});

let known: readonly Suspect[] | undefined;
/** All of them with their weights; worked out when they are first asked for. */
export const suspects = (): readonly Suspect[] =>
  (known ??= [...listed(), unlisted()].map(suspectOf));

/** The mildest car of a fault that its customer notices: so far gone is it when it comes in. */
export function carOf(name: Name, circuit: Circuit): Kept {
  const car = kept().find(
    (one) => one.name === name && (one.circuit === undefined || one.circuit === circuit),
  );
  if (car === undefined) throw new Error(`There is no car with ${name}.`);
  return car;
}
