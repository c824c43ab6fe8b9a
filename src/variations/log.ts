/** What rows of a log and two readings with their doubt leave open. */
import { illustrativeSettings as limits } from '../engine/index.ts';
import { count, entry, kPa, ratio, rpm, seconds } from '../numbers/entry.ts';
import { BOXES, ratioOf } from './boxes.ts';
import { by, family, steps } from './family.ts';

const rate = (value: number, what: string, wrong = {}) => entry('rate', value, what, wrong);

export const log = {
  'frame-slip': family(
    { box: BOXES, output: steps(30, 120, 5), slip: steps(250, 700, 10) },
    ({ box, output, slip }) => {
      const first = ratioOf(box, 'first');
      const turbine = Math.round(first * output + slip);
      return {
        numbers: {
          ratio: ratio(first, 'first gear'),
          turbine: rpm(turbine, 'turbine in the frame'),
          output: rpm(output, 'output in the frame'),
          slip: rpm(turbine - first * output, 'slip in the frame', {
            'no-ratio': by('take the output from the turbine without the ratio', turbine - output),
            divided: by(
              'divide the turbine by the ratio and take the output from that',
              turbine / first - output,
            ),
          }),
        },
      };
    },
  ),
  'items-on-a-line': family(
    { line: [12, 20, 24, 30, 40, 60], items: [2, 3, 4, 5, 6, 8, 10, 12] },
    ({ line, items }) =>
      line % items === 0
        ? {
            numbers: {
              line: count(line, 'values a second'),
              items: count(items, 'items on the list'),
              each: rate(line / items, 'readings of each a second', {
                unshared: by('give every item the whole line', line),
                multiplied: by('multiply values by items', line * items),
              }),
            },
          }
        : undefined,
  ),
  'longest-between-rows': family(
    { step: [0.2, 0.4, 0.5, 0.8], from: steps(4, 30, 1), rows: [2, 3, 4] },
    ({ step, from, rows }) => ({
      numbers: {
        step: seconds(step, 'between two rows'),
        park: seconds(from, 'last row in Park'),
        drive: seconds(from + step, 'first row in Drive'),
        turned: seconds(from + rows * step, 'last row that turned'),
        stood: seconds(from + (rows + 1) * step, 'first row that stood'),
        longest: seconds((rows + 1) * step, 'longest time that fits', {
          'first-row': by('count from the first row in Drive', rows * step),
          'turning-row': by(
            'count from the first row in Drive to the last that turned',
            (rows - 1) * step,
          ),
        }),
      },
    }),
  ),
  'stop-in-rows': family(
    {
      found: ['in-time', 'late', 'open'],
      step: [0.2, 0.3, 0.4, 0.5, 0.6],
      from: steps(5, 30, 1),
      rows: steps(2, 7, 1),
      limit: [0.8, 1, 1.2, 1.5],
    },
    ({ found, step, from, rows, limit }) => {
      const [least, most] = [(rows - 1) * step, (rows + 1) * step];
      const tenth = 0.1 * limit;
      if (Math.abs(least - limit) < tenth || Math.abs(most - limit) < tenth) return undefined;
      const is = most < limit ? 'in-time' : least > limit ? 'late' : 'open';
      if (is !== found) return undefined;
      return {
        numbers: {
          limit: seconds(limit, 'limit'),
          park: seconds(from, 'last row in Park'),
          drive: seconds(from + step, 'first row in Drive'),
          turned: seconds(from + rows * step, 'last row that turned'),
          stood: seconds(from + (rows + 1) * step, 'first row that stood'),
          least: seconds(least, 'shortest time that fits'),
          most: seconds(most, 'longest time that fits'),
        },
        truth: { 'in-time': is === 'in-time', late: is === 'late', open: is === 'open' },
      };
    },
  ),
  'doubt-of-two': family(
    { before: steps(10, 60, 5), after: steps(10, 80, 5) },
    ({ before, after }) =>
      before < after
        ? {
            numbers: {
              before: kPa(before, 'what the first may be off by'),
              after: kPa(after, 'what the second may be off by'),
              doubt: kPa(Math.hypot(before, after), 'doubt on their difference', {
                added: by('add the two', before + after),
                larger: by('take the larger alone', after),
                less: by('take one from the other', after - before),
              }),
            },
          }
        : undefined,
  ),
  'proved-or-not': family(
    {
      found: ['risen', 'same', 'fallen'],
      was: steps(150, 400, 10),
      change: steps(-120, 120, 10),
      before: [10, 15, 20, 30],
      after: [10, 15, 20, 30, 40],
    },
    ({ found, was, change, before, after }) => {
      const doubt = Math.hypot(before, after);
      if (Math.abs(Math.abs(change) - doubt) < 0.2 * doubt) return undefined;
      const is = change > doubt ? 'risen' : change < -doubt ? 'fallen' : 'same';
      if (is !== found || change === 0) return undefined;
      return {
        numbers: {
          was: kPa(was, 'first reading'),
          is: kPa(was + change, 'second reading'),
          before: kPa(before, 'what the first may be off by'),
          after: kPa(after, 'what the second may be off by'),
          change: kPa(Math.abs(change), 'difference'),
          doubt: kPa(doubt, 'doubt on the difference'),
        },
        truth: { risen: is === 'risen', same: is === 'same', fallen: is === 'fallen' },
      };
    },
  ),
  'slip-or-not': family(
    {
      found: ['sound', 'within', 'over'],
      box: ['second'],
      gear: ['first', 'third'],
      output: steps(300, 1400, 20),
      slip: [0, 0, ...steps(40, 260, 10)],
    },
    ({ found, box, gear, output, slip }) => {
      const here = ratioOf(box, gear);
      const turbine = Math.round(here * output) + slip;
      const real = turbine - here * output;
      const limit = Math.max(limits.ratioSlipRpm, limits.ratioSlipShare * turbine);
      if (Math.abs(real - limit) < 0.15 * limit || (real > 1 && real < 25)) return undefined;
      const is = real <= 1 ? 'sound' : real < limit ? 'within' : 'over';
      if (is !== found) return undefined;
      return {
        numbers: {
          ratio: ratio(here, 'ratio'),
          turbine: rpm(turbine, 'turbine'),
          output: rpm(output, 'output'),
          expected: rpm(here * output, 'ratio times output'),
          slip: rpm(real, 'slip'),
          limit: rpm(limit, 'limit'),
        },
        truth: { sound: is === 'sound', within: is === 'within', over: is === 'over' },
      };
    },
  ),
};
