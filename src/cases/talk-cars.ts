/** The cars that a talk is about: those kept, each on each day, and one whose cause is not in the list. */
import { CLASSES, NAMES, usualWeight, type Name } from '../diagnosis/hypotheses.ts';
import type { Circuit } from '../engine/index.ts';
import { ANSWERS, DAYS, placeOf, type Asked, type Day } from './answers.ts';
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
function weightOf({ name, circuit }: Kept): number {
  const circuits = new Set(
    kept()
      .filter((one) => one.name === name)
      .map((one) => one.circuit),
  ).size;
  const alike = kept().filter((one) => one.name === name && one.circuit === circuit).length;
  return (usualWeight(name) / weightOfAll() / circuits / alike) * DAY_SHARE;
}

const anything = Object.fromEntries(
  Object.keys(ANSWERS).map((question) => [question, null]),
) as Car['truth'];

const weighAll = (): readonly Suspect[] => [
  ...kept().flatMap((one) =>
    DAYS.map((day) =>
      suspectOf({
        name: NAMES.indexOf(one.name),
        weight: weightOf(one),
        truth: one.truthOn(day),
        restartHelps: one.name === 'clutchControl',
      }),
    ),
  ),
  suspectOf({
    name: NAMES.indexOf('unlisted'),
    weight: usualWeight('unlisted') / weightOfAll(),
    truth: { ...anything, stood: null },
    restartHelps: true,
  }),
];

let known: readonly Suspect[] | undefined;
/** All of them with their weights; worked out when they are first asked for. */
export const suspects = (): readonly Suspect[] => (known ??= weighAll());

/** The mildest car of a fault that its customer notices: so far gone is it when it comes in. */
export function carOf(name: Name, circuit: Circuit): Kept {
  const car = kept().find(
    (one) => one.name === name && (one.circuit === undefined || one.circuit === circuit),
  );
  if (car === undefined) throw new Error(`There is no car with ${name}.`);
  return car;
}
