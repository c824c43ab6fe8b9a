import { TENTH } from '../../car/shop-tests.ts';
import { printer } from '../../quantity/print.ts';
import { pressure } from '../../quantity/quantities.ts';
import { judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { CARS, commands } from './cars.ts';
import { bit, EMPTY, makeModel, type GaugeGivens, type GaugeModel } from './model.ts';
import { placeAt, readingAt } from './places.ts';
import { printCount, printShare, whenOf } from './print.ts';
import { words } from './task-words.en.ts';
import { words as bench } from './words.en.ts';

const [COLD_IDLE, COLD_FAST, HOT_IDLE, HOT_FAST] = [0, 1, 2, 3];
const { reached } = words;
const clean = { ...EMPTY, named: 'none' } as const;

/** Hot at idle is on the sheet from the start. */
const gap = { ...clean, car: '6', forward: bit(HOT_IDLE) } as const;
const line = { ...clean, car: '2' } as const;
const none = { ...clean, car: '9' } as const;

const SIX = (['forward', 'reverse', 'high'] as const).flatMap((tap) =>
  [COLD_FAST, HOT_FAST].map((column) => readingAt(tap, column)),
);
const lineHot = readingAt('lineDrive', HOT_FAST);
const tapHot = readingAt('forward', HOT_FAST);
const isRight = ({ shareOf }: GaugeModel, reading: number): boolean => shareOf(reading) >= TENTH;
const behindTheLine = (model: GaugeModel): boolean =>
  isRight(model, lineHot) && !isRight(model, tapHot);
const nothingShows = (model: GaugeModel): boolean => SIX.every((one) => isRight(model, one));

const carsThat = (are: (model: GaugeModel) => boolean): string =>
  printCount(
    CARS.filter((_car, i) => {
      const model = makeModel();
      model.apply({ car: String(i + 1) });
      return are(model);
    }).length,
  );

const texts = told(words.tasks, (system) => {
  const print = printer(system);
  const model = makeModel();
  model.apply(gap);
  const at = (column: number) => readingAt('forward', column);
  const kPa = (column: number) => print(model.read.value[at(column)] ?? 0, pressure);
  return {
    car: gap.car,
    read: kPa(HOT_IDLE),
    cold: kPa(COLD_IDLE),
    command: print(commands()[at(HOT_IDLE)] ?? 0, pressure),
    left: printCount(model.fitting([at(COLD_IDLE), at(HOT_IDLE)]).length),
    speed: printCount(model.fitting([at(HOT_IDLE), at(HOT_FAST)]).length),
    behind: carsThat(behindTheLine),
    clear: carsThat(nothingShows),
  };
});

export const tasks: readonly TaskSpec<GaugeGivens, GaugeModel>[] = [
  {
    id: 'gap-from-hole',
    ...texts.gap,
    start: gap,
    controls: ['forward', 'lineDrive', 'reverse'],
    ...judged(({ taken, fits }) => {
      const { length } = taken.value;
      if (length > 2) return { is: 'too-high', reached: reached.tooMany };
      if (length < 2) return null;
      return { is: fits.value.includes('openPort') ? 'not-that' : 'done', reached: reached.still };
    }),
  },
  {
    id: 'line-right-tap-not',
    ...texts.line,
    start: line,
    controls: ['car', 'lineDrive', 'forward'],
    ...judged((model) => {
      const taken = model.taken.value;
      if (taken.includes(lineHot) && !isRight(model, lineHot))
        return { is: 'not-that', reached: reached.lineShort };
      if (!taken.includes(lineHot) || !taken.includes(tapHot)) return null;
      return { is: behindTheLine(model) ? 'done' : 'not-that', reached: reached.tapRight };
    }),
  },
  {
    id: 'no-pressure-shows',
    ...texts.none,
    start: none,
    controls: ['car', 'forward', 'reverse', 'high'],
    ...judged((model) => {
      const taken = SIX.filter((one) => model.taken.value.includes(one));
      if (taken.length === 0) return null;
      const wrong = taken.find((one) => !isRight(model, one));
      if (wrong !== undefined) {
        return {
          is: 'not-that',
          reached: (s) =>
            reached.lowAt({
              place: bench.places[placeAt(wrong)],
              when: whenOf(wrong),
              share: printShare(model.shareOf(wrong), s),
            }),
        };
      }
      return { is: taken.length === SIX.length ? 'done' : 'nearly', reached: reached.more };
    }),
  },
];
