/**
 * What a customer can truly say about each car of the list, worked out by the engine: which ranges, cold or hot, after how many
 * minutes of which day. Kept in kept-accounts.ts, since that takes a minute.
 */
import { training, type Plant } from '../engine/index.ts';
import {
  CLASSES,
  codesOf,
  hasSeverity,
  LONGEST_STOP,
  NODES,
  nominalReader,
  readSubject,
  nominalWarmth,
  severitiesOf,
  testOf,
  WARMTHS,
  withFault,
  type FaultClass,
  type NumericTest,
} from '../diagnosis/index.ts';
import { DAYS, placeOf, type Day } from './answers.ts';
import { clockSays, minutesUntil } from './days.ts';
import { HIGH_LOW, NOTICED_LATE, noticedOn, showsIn, type Noticed } from './noticed.ts';

/** Answers by question, each its place in ANSWERS; the clock has one for each day. */
export interface Truth {
  readonly ranges: number;
  readonly warm: number;
  readonly weather: number;
  readonly load: number;
  readonly lights: number;
  /** In the order of DAYS. */
  readonly minutes: readonly number[];
}
/** One car of a class. */
export interface Account {
  /** Place of its class in CLASSES. */
  readonly index: number;
  readonly severity: number;
  readonly truth: Truth;
  /** Fluid temperature from which it shows on warming up [°C]; null where it does not wait for heat. */
  readonly fromC: number | null;
}

/** A car of a class, and a good one, read at any temperature. */
function readersAt(good: Plant, bad: Plant) {
  const reader = (plant: Plant) => {
    const known = new Map<string, number>();
    return (id: string, tempC: number): number => {
      const key = `${id} ${tempC}`;
      const there = known.get(key);
      if (there !== undefined) return there;
      const warmth = { ...nominalWarmth, hot: tempC };
      const value = readSubject({ plant, fluid: plant.fluid, warmth }, testOf(id) as NumericTest);
      known.set(key, value);
      return value;
    };
  };
  return { was: reader(good), is: reader(bad) };
}

/** How close a temperature from which it shows is taken [°C]. */
const CLOSE_C = 2;
const HIGH = 'clutch.high.1500.hot';

/** Temperature from which something that shows hot and not cold shows [°C]. */
function showsFrom(bad: Plant, { drive, reverse, high }: Noticed): number {
  const { was, is } = readersAt(training, bad);
  const late = (id: string) => (tempC: number) => {
    const seconds = is(id, tempC);
    return seconds > LONGEST_STOP || seconds - was(id, tempC) > NOTICED_LATE;
  };
  const signs = [
    ...(drive.hot === 'good' ? [] : [late('stopTime.drive.hot')]),
    ...(reverse.hot === 'good' ? [] : [late('stopTime.reverse.hot')]),
    ...(high ? [(tempC: number) => is(HIGH, tempC) < HIGH_LOW * was(HIGH, tempC)] : []),
  ];
  let [holds, shows] = [WARMTHS.cold.at, WARMTHS.hot.at];
  while (shows - holds > CLOSE_C) {
    const middle = (holds + shows) / 2;
    if (signs.some((sign) => sign(middle))) shows = middle;
    else holds = middle;
  }
  return shows;
}

const worst = { good: 0, late: 1, never: 2 } as const;
const bad = ({ cold, hot }: Noticed['drive']): boolean => cold !== 'good' || hot !== 'good';

function rangesIn({ drive, reverse, flares, high, highCold }: Seen): string {
  const d = bad(drive) || flares.drive;
  const r = bad(reverse) || flares.reverse;
  const h = high || highCold;
  if (d && r) return h ? 'all' : 'both';
  if (d) return 'drive';
  if (r) return 'reverse';
  return h ? 'upper' : 'none';
}

/** With what the high clutch does cold, and how a frosty morning is. */
interface Seen extends Noticed {
  readonly highCold: boolean;
  readonly frost: boolean;
}

function warmIn({ drive, reverse, flares, high, highCold }: Seen): string {
  const cold = Math.max(worst[drive.cold], worst[reverse.cold], highCold ? 1 : 0);
  const flare = flares.drive || flares.reverse || high ? 1 : 0;
  const hot = Math.max(worst[drive.hot], worst[reverse.hot], flare);
  if (cold === hot) return cold === 0 ? 'neither' : 'same';
  return cold > hot ? 'cold' : 'hot';
}

/** All that can be noticed of a car, with the car. */
interface SeenCar extends Seen {
  readonly severity: number;
  readonly plant: Plant;
  readonly shows: boolean;
}

function seenOn(of: FaultClass, severity: number): SeenCar {
  // Of the turbine itself: a customer has no sensor.
  const plant = { ...withFault(training, of, severity), turbineSensorRestRpm: 0 };
  const [was, is] = [nominalReader(training), nominalReader(plant)];
  const noticed = noticedOn(was, is, codesOf([[of, severity]], is));
  const late = (range: string, warmth: string): number => {
    const id = `stopTime.${range}.${warmth}`;
    return is(id) - was(id);
  };
  const high = 'clutch.high.1500.cold';
  const highCold = is(high) < HIGH_LOW * was(high);
  // Worse than on a mild morning by as much again as one notices at all.
  const frost = ['drive', 'reverse'].some(
    (range) => late(range, 'frost') - late(range, 'cold') > NOTICED_LATE,
  );
  const shows = showsIn(noticed) || highCold || frost;
  return { ...noticed, severity, plant, highCold, frost, shows };
}

/** What the clock says on a day. */
function minutesOn(day: Day, warm: string, fromC: number | null): string {
  if (fromC !== null) return clockSays(minutesUntil(fromC, day));
  if (warm === 'neither') return 'not';
  // After a stop on the road the fluid is warm, and what goes by cold has gone.
  return warm === 'cold' && day.startsWith('stop') ? 'not' : 'first';
}

function accountOf(index: number, seen: SeenCar): Account {
  const { severity, plant, flares, light, frost } = seen;
  const warm = warmIn(seen);
  const fromC = warm === 'hot' && !coldToo(seen) ? showsFrom(plant, seen) : null;
  return {
    index,
    severity,
    fromC,
    truth: {
      ranges: placeOf('ranges', rangesIn(seen)),
      warm: placeOf('warm', warm),
      weather: placeOf('weather', frost ? 'worse' : 'no'),
      load: placeOf('load', flares.drive || flares.reverse ? 'revs' : 'no'),
      lights: placeOf('lights', light ? 'yes' : 'no'),
      minutes: DAYS.map((day) => placeOf('minutes', minutesOn(day, warm, fromC))),
    },
  };
}

const coldToo = ({ drive, reverse, highCold }: Seen): boolean =>
  drive.cold !== 'good' || reverse.cold !== 'good' || highCold;

/** How many cars of a class are kept. */
const EACH = 4;

/** Cars of a class from the mildest whose customer notices something to the worst; the worst alone where none does. */
export function accountsOf(index: number, of: FaultClass): readonly Account[] {
  const least = severitiesOf(of.name)[0] ?? 0;
  const severities = hasSeverity(of.name) ? NODES.filter((node) => node >= least - 1e-9) : [1];
  const seen = severities.map((severity) => seenOn(of, severity));
  const noticed = seen.filter(({ shows }) => shows);
  const from = noticed.length > 0 ? noticed : seen.slice(-1);
  const count = Math.min(EACH, from.length);
  const spread = Array.from({ length: count }, (_, i) =>
    count === 1 ? 0 : Math.round((i * (from.length - 1)) / (count - 1)),
  );
  return spread.flatMap((place) => from[place] ?? []).map((one) => accountOf(index, one));
}

/** All of them, class by class; none for a cause that is not in the list. */
export const workOut = (): readonly Account[] =>
  CLASSES.flatMap((of, index) => (of.name === 'unlisted' ? [] : accountsOf(index, of)));

/** An account as a row of whole numbers to keep: class, severity [%], temperature [°C] or -1, then the answers. */
export const packed = ({ index, severity, fromC, truth }: Account): readonly number[] => [
  index,
  Math.round(100 * severity),
  fromC === null ? -1 : Math.round(fromC),
  truth.ranges,
  truth.warm,
  truth.weather,
  truth.load,
  truth.lights,
  ...truth.minutes,
];
