import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { multiple } from '../../quantity/part-quantities.ts';
import { formatNumber, printer } from '../../quantity/print.ts';
import {
  flow,
  length,
  percent,
  pressure,
  speed,
  temperature,
  temperatureRise,
} from '../../quantity/quantities.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec, Verdict } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import {
  carWith,
  COMMANDS,
  FAST_RPM,
  HEALTHY,
  healthyReadings,
  IDLE_RPM,
  makeModel,
  readingAt,
  SPEED,
  twoReadingsOf,
  type PumpGivens,
  type PumpModel,
} from './model.ts';
import { words } from './task-words.en.ts';

/** How far past the point where nothing is left [°C]. */
const NEAR_C = 3;
/** Car A: made with the filter so many times as hard to draw through; only its readings are told. */
const A_FILTER = 30;
const carA = twoReadingsOf(carWith({ ...HEALTHY, filter: A_FILTER }));
/** Car B, by how far its pump is worn [%]. */
const B_PUMP = 25;
const carB = twoReadingsOf(carWith({ ...HEALTHY, pump: B_PUMP }));
/** The wear of a regulator bore that reads as car B does [mm]. */
const LIKE_B_MM = 0.13;

const wornHot: PumpGivens = { ...HEALTHY, rpm: IDLE_RPM, temp: HOT_C, pump: 30 };
const healthyIdle: PumpGivens = { ...HEALTHY, rpm: IDLE_RPM, temp: 90 };

const at = (state: PumpGivens): PumpModel => {
  const model = makeModel();
  model.apply(state);
  return model;
};

const texts = told(words.tasks, (system) => {
  const print = printer(system);
  const idle = at(wornHot);
  const fast = at({ ...wornHot, rpm: FAST_RPM }).now.value;
  const fed = idle.fedFrom.value;
  const slow = idle.now.value;
  const dry = at(healthyIdle).dryFrom.value ?? Number.NaN;
  const justDry = readingAt(carWith(HEALTHY), Math.ceil(dry), IDLE_RPM);
  const bore = readingAt(carWith({ ...HEALTHY, bore: LIKE_B_MM }), HOT_C, IDLE_RPM);
  return {
    wornLine: print(slow.lineKpa, pressure),
    lineCommand: print(COMMANDS.line, pressure),
    step: print(SPEED.step, speed),
    fed: print(fed.kind === 'at' ? fed.rpm : Number.NaN, speed),
    slipIdle: print(slow.slipLmin, flow),
    slipFast: print(fast.slipLmin, flow),
    fast: print(FAST_RPM, speed),
    shareIdle: print((100 * slow.slipLmin) / slow.intakeLmin, percent),
    shareFast: print((100 * fast.slipLmin) / fast.intakeLmin, percent),
    near: print(NEAR_C, temperatureRise),
    dry: print(dry, temperature),
    clutchDry: print(justDry.clutches.forward.kPa, pressure),
    aLine: print(carA.hotIdle.lineKpa, pressure),
    aHotLeft: print(carA.hotIdle.leftOverLmin, flow),
    aColdLeft: print(carA.coldFast.leftOverLmin, flow),
    aColdLine: print(carA.coldFast.lineKpa, pressure),
    aFilter: formatNumber(A_FILTER, multiple, system),
    healthyColdLeft: print(healthyReadings.coldFast.leftOverLmin, flow),
    bLine: print(carB.hotIdle.lineKpa, pressure),
    bColdLeft: print(carB.coldFast.leftOverLmin, flow),
    bWear: print(B_PUMP, percent),
    bore: print(LIKE_B_MM, length),
    boreLine: print(bore.lineKpa, pressure),
  };
});
const { reached } = words;

/** Within a share of a reading; a little farther out is nearly. */
const within = (value: number, target: number, share: number): Verdict['is'] =>
  aim({
    value,
    least: (1 - share) * target,
    most: (1 + share) * target,
    near: 2 * share * target,
  });

interface Matched {
  readonly like: typeof carA;
  /** How near the line hot at idle, and what is left over there and cold and fast, have to come. */
  readonly line: number;
  readonly hotLeft?: number;
  readonly coldLeft: number;
}

/** Both readings of a car have to come out; the hot one is told first. */
const matching = ({ like, line, hotLeft, coldLeft }: Matched) =>
  judged(({ twoReadings }: PumpModel): Verdict => {
    const { hotIdle, coldFast } = twoReadings.value;
    const checks = [
      within(hotIdle.lineKpa, like.hotIdle.lineKpa, line),
      ...(hotLeft === undefined
        ? []
        : [within(hotIdle.leftOverLmin, like.hotIdle.leftOverLmin, hotLeft)]),
    ];
    const off = checks.find((is) => is !== 'done');
    if (off) {
      return {
        is: off,
        reached: (system) => {
          const print = printer(system);
          return reached.hot({
            line: print(hotIdle.lineKpa, pressure),
            left: print(hotIdle.leftOverLmin, flow),
          });
        },
      };
    }
    return {
      is: within(coldFast.leftOverLmin, like.coldFast.leftOverLmin, coldLeft),
      reached: (system) => reached.fast({ left: printer(system)(coldFast.leftOverLmin, flow) }),
    };
  });

export const tasks: readonly TaskSpec<PumpGivens, PumpModel>[] = [
  {
    id: 'speed',
    ...texts.speed,
    start: wornHot,
    controls: ['rpm'],
    ...judged(({ now, fedFrom, givens }) => {
      const from = fedFrom.value;
      if (from.kind !== 'at') return null;
      const value = givens.rpm.value;
      return {
        is: aim({ value, least: from.rpm, most: from.rpm + SPEED.step, near: 3 * SPEED.step }),
        reached: (system) => {
          const print = printer(system);
          return reached.line({
            speed: print(value, speed),
            line: print(now.value.lineKpa, pressure),
            command: print(COMMANDS.line, pressure),
          });
        },
      };
    }),
  },
  {
    id: 'run-dry',
    ...texts.runDry,
    start: healthyIdle,
    controls: ['temp'],
    ...judged(({ now, dryFrom, givens }) => {
      const dry = dryFrom.value;
      if (dry === null) return null;
      const value = givens.temp.value;
      return {
        is: aim({ value, least: dry, most: dry + NEAR_C, near: 10 }),
        reached: (system) => {
          const print = printer(system);
          return reached.left({
            temp: print(value, temperature),
            left: print(now.value.leftOverLmin, flow),
          });
        },
      };
    }),
  },
  {
    id: 'car-a',
    ...texts.carA,
    start: { ...HEALTHY, rpm: FAST_RPM, temp: COLD_C },
    controls: ['pump', 'filter'],
    ...matching({ like: carA, line: 0.01, hotLeft: 0.05, coldLeft: 0.1 }),
  },
  {
    id: 'car-b',
    ...texts.carB,
    start: { ...HEALTHY, rpm: IDLE_RPM, temp: HOT_C, filter: A_FILTER },
    controls: ['pump', 'filter'],
    ...matching({ like: carB, line: 0.05, coldLeft: 0.05 }),
  },
];
