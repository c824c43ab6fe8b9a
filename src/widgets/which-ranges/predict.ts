import { COLD_TESTS, HOT_TESTS, reads } from '../../car/shop-tests.ts';
import { printer } from '../../quantity/print.ts';
import { length, pressure } from '../../quantity/quantities.ts';
import { hairs } from '../../quantity/hairs.ts';
import type { PredictSpec } from '../../simulation/sim-spec.ts';
import { makeWhichRanges, type RangesGivens, type RangesModel } from './model.ts';

const start: RangesGivens = {
  fault: 'transferSeal',
  severity: 0,
  circuit: 'forward',
  engaged: 'forward',
  test: 'hot-load',
};
/** 0.16 mm, two hairs: the crack of lesson 3, where cold still reads right and hot does not. */
const end = { severity: 40 };
const CRACK_MM = 0.16;
const at = (state: Partial<RangesGivens>) => {
  const model = makeWhichRanges();
  model.apply({ ...start, ...state });
  return model.readings.value;
};
const sound = at({});
const split = at(end);
const hot = split['hot-load'].taps;

export const predict: PredictSpec<RangesGivens, RangesModel> = {
  question: (system) =>
    `The table shows a healthy transmission. Now the transfer seal splits, ${printer(system)(CRACK_MM, length)}, ${hairs(CRACK_MM)} wide. Which gauges fall?`,
  options: [
    {
      id: 'all-three',
      words: 'All three clutches. They live on the same line.',
      why: (system) => {
        const print = printer(system);
        return `They share the line, but the line did not fall: ${print(hot.line, pressure)} hot under load, as before. What the split takes has to come through one clutch’s own feed hole. High does not pass through the seal and still has ${print(hot.high, pressure)}.`;
      },
    },
    {
      id: 'both-always',
      words: 'Forward and reverse, cold and hot alike.',
      why: (system) => {
        const print = printer(system);
        return `The right two, but not cold. Stiff fluid hardly gets through a split two hairs wide: ${print(split['cold-load'].taps.forward, pressure)} cold under load, where a sound one has ${print(sound['cold-load'].taps.forward, pressure)}. A hole would show cold as well.`;
      },
    },
    {
      id: 'both-hot',
      words: 'Forward and reverse, hot only. High stays.',
      why: (system) => {
        const print = printer(system);
        return `Both pass through that seal, so both lose: ${print(hot.forward, pressure)} hot under load where a sound one has ${print(sound['hot-load'].taps.forward, pressure)}. High goes another way and keeps ${print(hot.high, pressure)}. And a thin split leaks hot, hardly cold. Two ranges that suffer together point at what they share.`;
      },
    },
    {
      id: 'forward',
      words: 'Forward only. It carries the most.',
      why: (system) => {
        const print = printer(system);
        return `A leak does not ask how much a clutch carries. It takes from every passage that runs through the seal. Reverse runs through it too and loses as well: ${print(hot.reverse, pressure)}, where a good one, boosted, has ${print(sound['hot-load'].taps.reverse, pressure)}.`;
      },
    },
  ],
  start,
  end,
  runLabel: 'Split the seal',
  outcome: ({ pattern, readings }) => {
    const now = pattern.value;
    const down = (tap: 'forward' | 'reverse' | 'high', tests: typeof HOT_TESTS): boolean =>
      !reads(now, tap, 'ok', tests);
    const both = down('forward', HOT_TESTS) && down('reverse', HOT_TESTS);
    const option = down('high', HOT_TESTS)
      ? 'all-three'
      : !both
        ? 'forward'
        : down('forward', COLD_TESTS)
          ? 'both-always'
          : 'both-hot';
    const { taps } = readings.value['hot-load'];
    return {
      option,
      words: (system) => {
        const print = printer(system);
        return `Cold every gauge reads right. Hot under load: forward ${print(taps.forward, pressure)}, reverse ${print(taps.reverse, pressure)}, high ${print(taps.high, pressure)}, line ${print(taps.line, pressure)}.`;
      },
    };
  },
};
