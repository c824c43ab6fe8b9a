/** What is counted over many cars. */
import { areTwo, isSure, type Name } from '../../diagnosis/index.ts';
import type { Way } from './follow.ts';
import type { Other, Seen, Single } from './seen.ts';

const BINS = 10;
const digits = (value: number, places = 4): number => Number(value.toFixed(places));
const mean = <Item>(items: readonly Item[], of: (item: Item) => number): number =>
  digits(items.reduce((sum, item) => sum + of(item), 0) / items.length);
const share = <Item>(items: readonly Item[], is: (item: Item) => boolean): number =>
  mean(items, (item) => (is(item) ? 1 : 0));
const top = ({ faults: [first] }: Way): Name | undefined => first?.fault;
const firstTwo = ({ faults }: Way): readonly Name[] => faults.slice(0, 2).map(({ fault }) => fault);

const pairOn = ({ two }: Way): readonly Name[] => two?.pairs[0]?.of.map(({ name }) => name) ?? [];

const right = ({ name, planner }: Single): boolean => top(planner) === name;

/** How often the top name is right, by what the planner said of it: for the reliability diagram. */
function reliability(seen: readonly Single[]) {
  return Array.from({ length: BINS }, (_, i) => {
    const inBin = seen.filter(({ planner: { faults } }) => {
      const said = faults[0]?.probability ?? 0;
      return Math.min(BINS - 1, Math.floor(BINS * said)) === i;
    });
    return {
      from: i / BINS,
      to: (i + 1) / BINS,
      cars: inBin.length,
      ...(inBin.length > 0 && {
        said: mean(inBin, ({ planner: { faults } }) => faults[0]?.probability ?? 0),
        right: share(inBin, right),
      }),
    };
  }).filter((bin) => bin.cars > 0);
}

function overSingles(seen: readonly Single[]) {
  const bins = reliability(seen);
  const minutes = (of: (one: Single) => Way): number => mean(seen, (one) => of(one).minutes);
  const spent = minutes(({ planner }) => planner);
  const [fixed, random] = [minutes((one) => one.fixed), minutes((one) => one.random)];
  return {
    cars: seen.length,
    rightFirst: share(seen, right),
    rightWithinTwo: share(seen, ({ name, planner }) => firstTwo(planner).includes(name)),
    calibrationError: digits(
      bins.reduce(
        (sum, bin) => sum + (bin.cars / seen.length) * Math.abs((bin.said ?? 0) - (bin.right ?? 0)),
        0,
      ),
    ),
    reached90: share(seen, ({ planner }) => isSure(planner.faults)),
    unlistedAccused: share(
      seen,
      ({ planner }) => isSure(planner.faults) && top(planner) === 'unlisted',
    ),
    rightFirstAllReadings: share(seen, ({ name, all }) => top(all) === name),
    falseAlarmNoSingleFault: share(seen, ({ all }) => all.fit.singleFaultFits === false),
    falsePair: share(seen, ({ all }) => all.two !== undefined && areTwo(all.two)),
    readings: mean(seen, ({ planner }) => planner.readings),
    minutes: spent,
    minutesFixedOrder: fixed,
    minutesRandomOrder: random,
    minutesRatio: digits(spent / fixed),
    minutesRatioRandom: digits(spent / random),
    rightFirstFixedOrder: share(seen, ({ name, fixed: way }) => top(way) === name),
    rightFirstRandomOrder: share(seen, ({ name, random: way }) => top(way) === name),
  };
}

/** Cars with one fault each, all of them and seed by seed. */
export function singles(bySeed: readonly Seen[]) {
  const all = bySeed.flatMap((seen) => seen.singles);
  return {
    ...overSingles(all),
    reliability: reliability(all),
    bySeed: bySeed.map((seen) => {
      const { rightFirst, rightWithinTwo, calibrationError, minutesRatio } = overSingles(
        seen.singles,
      );
      return { seed: seen.seed, rightFirst, rightWithinTwo, calibrationError, minutesRatio };
    }),
  };
}

const listedAccused = ({ stopped }: Other): boolean =>
  isSure(stopped.faults) && top(stopped) !== 'unlisted' && top(stopped) !== 'healthy';

export function pairs(seen: readonly Other[]) {
  const one = (way: Way, names: readonly Name[]): boolean => names.includes(top(way) ?? 'healthy');
  return {
    cars: seen.length,
    oneOnTop: share(seen, ({ names, stopped }) => one(stopped, names)),
    oneOnTopAllReadings: share(seen, ({ names, all }) => one(all, names)),
    /** The likeliest pair is the two that the car has. */
    bothNamedAllReadings: share(seen, ({ names, all }) =>
      names.every((name) => pairOn(all).includes(name)),
    ),
    pairNamedAllReadings: share(seen, ({ all }) => all.two !== undefined && areTwo(all.two)),
    noSingleFaultFits: share(seen, ({ all }) => all.fit.singleFaultFits === false),
  };
}

export function outside(seen: readonly Other[]) {
  return {
    cars: seen.length,
    onTopAllReadings: share(seen, ({ all }) => top(all) === 'unlisted'),
    onTop: share(seen, ({ stopped }) => top(stopped) === 'unlisted'),
    listedAccused: share(seen, listedAccused),
  };
}

export function sound(seen: readonly Other[]) {
  return {
    cars: seen.length,
    listedAccused: share(seen, listedAccused),
    healthyOnTop: share(seen, ({ stopped }) => top(stopped) === 'healthy'),
  };
}
