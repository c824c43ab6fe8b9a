import { LIVE_CARS, SHUDDER } from '../../car/live-cars.ts';
import { seenAs } from '../../car/sampling.ts';
import { formatNumber, printer } from '../../quantity/print.ts';
import { rate } from '../../quantity/part-quantities.ts';
import { count, percent, seconds, speed } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { ITEMS, makeModel, START, type TrapGivens, type TrapModel } from './model.ts';
import { carName } from './print.ts';
import { words } from './words.en.ts';

const { controls, says } = words;
const start = { ...START, truth: false } as const;

export const printRate = (each: number): string => formatNumber(each, rate, 'si');

/** A log that swings slower than this draws no swing in the stretch that is shown [1/s]. */
const FLAT = 0.5;

/** The log of the prediction in numbers. */
const facts = (system: UnitSystem) => {
  const print = printer(system);
  const model = makeModel();
  model.apply(start);
  const { stop, fits, times } = model;
  if (stop.value?.kind !== 'stopped') throw new Error('The log of the prediction shows a stop.');
  const { after, at, selection } = stop.value;
  const first = at - (times.value[selection.first] ?? 0);
  const half = 1 / model.rate.value / 2;
  const took = fits.value.map(({ car }) => model.standsAfter(car) ?? 0);
  return {
    first: print(first, seconds),
    low: print(after.low, seconds),
    high: print(after.high, seconds),
    half: print(half, seconds),
    cars: print(fits.value.length, count),
    quick: print(Math.min(...took), seconds),
    slow: print(Math.max(...took), seconds),
  };
};
const { options, ...predict } = told(words.predict, facts);
const { outcome } = told({ outcome: words.outcome }, facts);

/** What the log reader makes of the rows. */
function reading({ stop, log, givens }: TrapModel, system: UnitSystem): string {
  const print = printer(system);
  if (log.value === null) return says.noTurbine;
  if (!givens.range.value) return says.noRange;
  const read = stop.value;
  if (read?.kind === 'stopped') {
    return says.stop({
      low: print(read.after.low, seconds),
      high: print(read.after.high, seconds),
    });
  }
  const watched = read && 'watched' in read ? read.watched : 0;
  const lowest = Math.min(...(read ? log.value.turbine.slice(read.selection.first) : [0]));
  return says.never({ watched: print(watched, seconds), lowest: print(lowest, speed) });
}

function swinging({ rate: each }: TrapModel): string {
  const seen = seenAs(SHUDDER.swings, each.value);
  const swings = printRate(SHUDDER.swings);
  return seen < FLAT ? says.flat({ swings }) : says.swings({ swings, seen: printRate(seen) });
}

export const sim: SimSpec<TrapGivens, TrapModel> = {
  id: 'sampling-trap',
  title: words.title,
  linkVersion: 1,
  controls: [
    numberControl('line', controls.line, count, { min: 10, max: 100, step: 10 }),
    {
      kind: 'choice',
      key: 'car',
      label: controls.car,
      as: 'select',
      options: LIVE_CARS.map((value) => ({ value, words: (s) => carName(value, s) })),
    },
    numberControl('late', controls.late, percent, { min: 0, max: 95, step: 5 }),
    { kind: 'flag', key: 'truth', label: controls.truth, on: controls.shown, off: controls.hidden },
    ...ITEMS.map((key) => ({
      kind: 'flag' as const,
      key,
      label: words.items[key],
      on: controls.on,
      off: controls.off,
    })),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end: { truth: true },
    runMs: 400,
    outcome: ({ stop, rate: each }) => {
      const read = stop.value;
      const wide = read?.kind === 'stopped' ? read.after.high - read.after.low : Infinity;
      // As wide as both ends together, one end, or neither.
      const ends = wide * each.value;
      return { option: ends > 1.5 ? 'both' : ends > 0.5 ? 'half' : 'exact', words: outcome };
    },
  },
  says: (model, system, inTask = false) => {
    const { givens, fits, log, dropouts } = model;
    if (log.value !== null && givens.car.value === 'shudder') {
      return inTask ? '' : swinging(model);
    }
    const told = reading(model, system);
    if (inTask || log.value === null) return told;
    if (dropouts.value.length > 0) return `${told} ${says.dropout}`;
    const print = printer(system);
    const all = print(LIVE_CARS.length, count);
    return `${told} ${says.fits({ fits: print(fits.value.length, count), all })}`;
  },
};
