import { describe, expect, test } from 'vitest';
import { decodeTable, groundsOf, hypothesesOf, testOf } from '../../../src/diagnosis/index.ts';
import { keptTable } from '../../../src/diagnosis/kept-table.ts';
import {
  healthyOf,
  offAfter,
  pairsOf,
  proofOf,
  standingOf,
} from '../../../src/measure/jobs/pairs.ts';

const { sound } = groundsOf(hypothesesOf(decodeTable(keptTable)));
let n = 0;
const read = (id: string, value: number | null | string, temperatureC?: number) => ({
  id: String((n += 1)),
  taken: { test: testOf(id), value, ...(temperatureC !== undefined && { temperatureC }) },
});
/** The healthy training car reads 391 kPa at its taps hot at idle, stops in 0.61 s, and a split seal leaves 167 kPa and 1.11 s:
 *  the table of practice cases in the site's own brief, worked out by its model. */
const HEALTHY_TAP = 391;
const TAP = 'clutch.forward.700.hot';

describe('what a healthy car shows', () => {
  test.each([
    [TAP, HEALTHY_TAP, 'right'],
    [TAP, 167, 'off'],
    ['stopTime.drive.hot', 0.61, 'right'],
    ['stopTime.drive.hot', 1.11, 'off'],
    ['stopTime.drive.hot', null, 'off'],
    ['fluidLevel', 'full', 'right'],
    ['fluidLevel', 'low', 'off'],
  ] as const)('%s at %s is %s', (id, value, standing) => {
    expect(standingOf(read(id, value).taken, sound)).toBe(standing);
  });
});

describe('pairs', () => {
  test('the last reading of a test before beside every one after, and only where there are both', () => {
    const before = [read(TAP, 160, 95), read(TAP, 167, 94), read('fluidLevel', 'full')];
    const after = [read(TAP, 170, 95), read('stopTime.drive.hot', 0.6, 95), read(TAP, 388, 95)];
    const pairs = pairsOf(before, after, sound);
    expect(pairs.map((pair) => [pair.before.taken.value, pair.after.taken.value, pair.is])).toEqual(
      [
        [167, 170, 'off'],
        [167, 388, 'right'],
      ],
    );
  });

  // The trade asks for the same temperature within 3 °C: common practice, no source. The planner's hot band is 85 to 105 °C.
  test.each([
    [95, 98, 'same'],
    [95, 98.1, 'apart'],
    [86, 104, 'apart'],
    [95, undefined, 'unwritten'],
    [undefined, undefined, 'unwritten'],
  ] as const)('at %s and %s °C they are %s', (a, b, same) => {
    const [pair] = pairsOf([read(TAP, 167, a)], [read(TAP, 391, b)], sound);
    expect(pair?.same).toBe(same);
  });

  test('a test without a temperature needs none', () => {
    const [pair] = pairsOf([read('fluidLevel', 'low')], [read('fluidLevel', 'full')], sound);
    expect(pair?.same).toBe('needless');
  });
});

describe('a reading that is off', () => {
  test('has what a healthy car reads there beside it', () => {
    const healthy = (id: string) => healthyOf(read(id, 1).taken, sound) as number;
    expect(healthy(TAP) / HEALTHY_TAP).toBeCloseTo(1, 1);
    for (const id of [TAP, 'stopTime.drive.hot', 'takeoffSlip.drive.hot']) {
      expect(standingOf(read(id, healthy(id)).taken, sound)).toBe('right');
    }
  });

  test('also what is seen, and codes', () => {
    expect(healthyOf(read('fluidLevel', 'low').taken, sound)).toBe('full');
    expect(healthyOf({ test: testOf('codes'), value: ['P0741'] }, sound)).toEqual([]);
  });

  test('after the repair it is found even where the same test read right later', () => {
    const found = offAfter([read(TAP, 391), read(TAP, 200), read(TAP, 391)], sound);
    expect(found.map(({ taken, later }) => [taken.value, later])).toEqual([[200, true]]);
    const last = offAfter([read('fluidLevel', 'full'), read(TAP, 200)], sound);
    expect(last.map(({ taken, later }) => [taken.value, later])).toEqual([[200, false]]);
  });
});

describe('proof', () => {
  test('without a healthy car to judge by there is none, and no claim of right or off', () => {
    const [before, after] = [[read('stopTime.drive.hot', 1.6)], [read('stopTime.drive.hot', 0.72)]];
    const pairs = pairsOf(before, after, null);
    expect(pairs.map(({ was, is }) => [was, is])).toEqual([['unknown', 'unknown']]);
    expect(proofOf(pairs, before, after, null)).toBe('unjudged');
    expect(proofOf([], before, [], null)).toBe('none');
  });

  const proof = (
    before: readonly ReturnType<typeof read>[],
    after: readonly ReturnType<typeof read>[],
  ) => proofOf(pairsOf(before, after, sound), before, after, sound);
  test.each([
    ['nothing measured after', [read(TAP, 167, 95)], [], 'none'],
    ['off before and right after', [read(TAP, 167, 95)], [read(TAP, 391, 96)], 'proved'],
    ['right after, ten degrees cooler', [read(TAP, 167, 98)], [read(TAP, 391, 88)], 'notSame'],
    ['still off', [read(TAP, 167, 95)], [read(TAP, 200, 95)], 'stillOff'],
    [
      'one of two still off',
      [read(TAP, 167, 95)],
      [read(TAP, 391, 95), read('clutch.high.700.hot', 200, 95)],
      'stillOff',
    ],
    [
      'off hot in two tests, one of them taken again',
      [read('stopTime.drive.hot', null, 96), read('stopTime.reverse.hot', null, 96)],
      [read('stopTime.drive.hot', 0.61, 96)],
      'partly',
    ],
    [
      'off hot at first, right when it was taken once more before the repair',
      [
        read('stopTime.reverse.hot', null, 96),
        read('stopTime.reverse.hot', 0.6, 96),
        read(TAP, 167, 95),
      ],
      [read(TAP, 391, 95)],
      'proved',
    ],
    ['right on both sides', [read(TAP, 391, 95)], [read(TAP, 391, 95)], 'nothingWasOff'],
    [
      'only cold',
      [read('clutch.forward.700.cold', 200, 20)],
      [read('clutch.forward.700.cold', 391, 20)],
      'notHot',
    ],
  ] as const)('%s: %s', (_what, before, after, expected) => {
    expect(proof([...before], [...after])).toBe(expected);
  });
});
