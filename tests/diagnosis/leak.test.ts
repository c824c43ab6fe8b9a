import { describe, expect, test } from 'vitest';
import { applyFaults, training, type Plant } from '../../src/engine/index.ts';
import {
  crackLaws,
  estimateLeak,
  likeliest,
  WIDTHS_MM,
  type Subject,
  nominalWarmth,
  readSubject,
  testOf,
  type TakenReading,
} from '../../src/diagnosis/index.ts';
import { isNumeric } from '../../src/diagnosis/index.ts';
import { steady } from '../solve/steady.ts';
import { numeric } from './made.ts';

/** What the nominal car with a crack reads, which is the command line's own answer. */
function read(id: string, severity: number): TakenReading {
  const one = testOf(id);
  if (!isNumeric(one)) throw new Error(`${id} is no number`);
  const plant = applyFaults(training, { transferSeal: { severity } });
  const value = readSubject({ plant, fluid: plant.fluid, warmth: nominalWarmth }, one);
  return { test: one, value };
}
const FOUR = [
  'clutch.forward.700.hot',
  'clutch.reverse.700.hot',
  'clutch.forward.1500.cold',
  'clutch.forward.700.cold',
];

describe('a crack of 0.25 mm, 14 mm wide', () => {
  const { width } = training.leaks.forward.transferSeal;
  test('four pressures hold its height and its width', () => {
    const leak = estimateLeak(
      training,
      FOUR.map((id) => read(id, 0.625)),
    );
    expect(leak?.apart).toBe(true);
    expect(leak?.heightMm[0]).toBeLessThan(0.25);
    expect(leak?.heightMm[2]).toBeGreaterThan(0.25);
    // One cell of the grid is a hundredth of a millimetre.
    expect(Math.abs((leak?.heightMm[1] ?? NaN) - 0.25)).toBeLessThanOrEqual(0.0201);
    expect(leak?.widthMm[0]).toBeLessThan(width * 1e3);
    expect(leak?.widthMm[2]).toBeGreaterThan(width * 1e3);
  });
  test('two hot ones cannot tell height from width, and say which reading would', () => {
    const leak = estimateLeak(
      training,
      FOUR.slice(0, 2).map((id) => read(id, 0.625)),
    );
    expect(leak).toMatchObject({ apart: false, helps: 'forwardColdLoaded' });
    expect(leak?.correlation).toBeLessThan(-0.9);
    // What the product is known to, by the specification: a fifth.
    expect(
      Math.abs((leak?.widthHeightSquared ?? NaN) / (width * 1e3 * 0.25 ** 2) - 1),
    ).toBeLessThan(0.2);
  });
  test('what it loses is what the steady state of the command line loses', () => {
    const leak = estimateLeak(
      training,
      FOUR.map((id) => read(id, 0.625)),
    );
    const forward = (faults: object) => {
      const found = steady({ applied: ['forward'], faults }).circuits['forward'];
      if (found === undefined) throw new Error('No forward circuit.');
      return found;
    };
    const cracked = forward({ transferSeal: 0.625 });
    const sound = forward({});
    // The rings lose a little of it, in proportion to the pressure behind them at most.
    const rings = (sound.leak_Lmin * cracked.pressure_kPa) / sound.pressure_kPa;
    expect(leak?.leakLmin[0]).toBeLessThan(cracked.leak_Lmin);
    expect(leak?.leakLmin[2]).toBeGreaterThan(cracked.leak_Lmin - rings);
  });
});

// Section 7: S = J J' + diag(r2), every difference written out again, with the half-widths that the specification gives.
test('the law of the pressures of one size: how they move together, and how far each is off by itself', () => {
  const [heightMm, widthMm] = [0.25, WIDTHS_MM[12] ?? NaN];
  const split = (plant: Plant): Plant['leaks'] => ({
    ...plant.leaks,
    forward: {
      ...plant.leaks.forward,
      transferSeal: {
        ...plant.leaks.forward.transferSeal,
        ...{ height: heightMm / 1e3, width: widthMm / 1e3 },
      },
    },
    reverse: {
      ...plant.leaks.reverse,
      transferSeal: {
        ...plant.leaks.reverse.transferSeal,
        ...{ height: heightMm / 1e3, width: widthMm / 1e3 },
      },
    },
  });
  const plant: Plant = { ...training, leaks: split(training) };
  const start: Subject = { plant, fluid: plant.fluid, warmth: nominalWarmth };
  const put = (change: Partial<Plant>): Subject => ({ ...start, plant: { ...plant, ...change } });
  const { leaks, feed, pump, lineClearances, fluid, testPoints } = plant;
  const rings = (circuit: 'forward' | 'reverse', by: number): Subject => {
    const { [circuit]: of } = leaks;
    const height = of.rings.height * by;
    return put({ leaks: { ...leaks, [circuit]: { ...of, rings: { ...of.rings, height } } } });
  };
  const seal = (circuit: 'forward' | 'reverse', by: number) => {
    const { transferSeal } = leaks[circuit];
    return {
      ...leaks[circuit],
      transferSeal: { ...transferSeal, length: transferSeal.length * by },
    };
  };
  const point = (of: Plant['testPoints']['idle'], by: number) => ({
    ...{ ...of, line: of.line * by, clutch: of.clutch * by },
  });
  const warmer = (warmth: 'hot' | 'cold', degrees: number): Subject => ({
    ...start,
    warmth: { ...nominalWarmth, [warmth]: nominalWarmth[warmth] + degrees },
  });
  const differences: readonly (readonly [half: number, at: (by: number) => Subject])[] = [
    [
      0.1,
      (by) =>
        put({ lineClearances: { ...lineClearances, height: lineClearances.height * (1 + by) } }),
    ],
    [0.1, (by) => rings('forward', 1 + by)],
    [0.1, (by) => rings('reverse', 1 + by)],
    [0.2, (by) => put({ pump: { ...pump, slip: pump.slip * (1 + by) } })],
    [0.1, (by) => put({ feed: { ...feed, area: feed.area * (1 + by) } })],
    [0.1, (by) => ({ ...start, fluid: { ...fluid, kv40CSt: fluid.kv40CSt * (1 + by) } })],
    [0.1, (by) => ({ ...start, fluid: { ...fluid, kv100CSt: fluid.kv100CSt * (1 + by) } })],
    [3, (by) => warmer('hot', by)],
    [3, (by) => warmer('cold', by)],
    [
      0.2,
      (by) =>
        put({
          leaks: { ...leaks, forward: seal('forward', 1 + by), reverse: seal('reverse', 1 + by) },
        }),
    ],
    [
      0.02,
      (by) =>
        put({
          testPoints: {
            idle: point(testPoints.idle, 1 + by),
            load: point(testPoints.load, 1 + by),
          },
        }),
    ],
  ];
  const taps = [
    ['clutch.forward.700.hot', undefined],
    ['clutch.reverse.1500.cold', undefined],
    ['clutch.forward.1500.hot', 88],
  ] as const;
  const readOn = (subject: Subject): readonly number[] =>
    taps.map(([id, temperatureC]) => {
      const off = temperatureC === undefined ? 0 : temperatureC - nominalWarmth.hot;
      const warmth = { ...subject.warmth, hot: subject.warmth.hot + off };
      return readSubject({ ...subject, warmth }, numeric(id));
    });
  const means = readOn(start);
  const columns = differences.map(([half, at]) => {
    const sd = half / Math.sqrt(3);
    const [up, down] = [readOn(at(sd)), readOn(at(-sd))];
    return up.map((one, i) => (one - (down[i] ?? NaN)) / 2);
  });
  const wanted = means.map((mean, i) =>
    means.map((other, j) => {
      const moves = columns.reduce((sum, of) => sum + (of[i] ?? NaN) * (of[j] ?? NaN), 0);
      const gauge = 0.015 * mean * 0.015 * other + 4 * 4;
      const own = i === j ? Math.max(0.02 * mean, 10) ** 2 + (0.02 * mean) ** 2 : 0;
      return moves + gauge + own;
    }),
  );
  const law = crackLaws(
    training,
    taps.map(([id, temperatureC]) => ({ test: numeric(id), temperatureC })),
  ).find((one) => Math.abs(one.heightMm - heightMm) < 1e-9 && one.widthMm === widthMm);
  means.forEach((mean, i) => {
    expect(law?.means[i]).toBeCloseTo(mean, 9);
    // The same sums in another order: to a part in a hundred million.
    means.forEach((_other, j) => {
      const both = wanted[i]?.[j] ?? NaN;
      expect(Math.abs((law?.covariance[i]?.[j] ?? NaN) / both - 1)).toBeLessThan(1e-8);
    });
  });
});

// Section 7: from 740 kPa cold at 1,500 rpm on the crack is too thin for any shop reading to tell height from width.
describe('where height and width are not told apart', () => {
  const at = (value: number) =>
    estimateLeak(training, [
      read('clutch.forward.700.hot', 0.3),
      { test: testOf('clutch.forward.1500.cold'), value },
    ]);
  const helpOf = (value: number) => [at(value)?.apart, at(value)?.helps];
  test('a tap that is hardly low says that no reading will', () => {
    expect(helpOf(760)).toEqual([false, 'tooThin']);
    expect(helpOf(740)).toEqual([false, 'tooThin']);
  });
  test('the reading that helps has been taken, so it is not asked for again', () => {
    expect(helpOf(739)).toEqual([false, null]);
  });
  test('a box without a seal has no crack, and one whose forward feed passes none is not asked for it', () => {
    const bare = (all: readonly string[]): typeof training => ({
      ...training,
      leaks: Object.fromEntries(
        Object.entries(training.leaks).map(([circuit, of]) => [
          circuit,
          all.includes(circuit) ? { ...of, transferSeal: { ...of.transferSeal, width: 0 } } : of,
        ]),
      ) as unknown as (typeof training)['leaks'],
    });
    const two = FOUR.slice(0, 2).map((id) => read(id, 0.625));
    expect(estimateLeak(bare(['forward', 'reverse']), two)).toBeNull();
    expect(estimateLeak(bare(['forward']), two)).toBeNull();
    const reverse = ['clutch.reverse.700.hot', 'clutch.reverse.1500.hot'].map((id) =>
      read(id, 0.625),
    );
    expect(estimateLeak(bare(['forward']), reverse)).toMatchObject({ apart: false, helps: null });
  });
});

test('one pressure is not enough, and a high one does not count', () => {
  expect(estimateLeak(training, [read('clutch.forward.700.hot', 0.5)])).toBeNull();
  expect(
    estimateLeak(training, [read('clutch.forward.700.hot', 0.5), read('clutch.high.700.hot', 0.5)]),
  ).toBeNull();
});

// By hand: 0.4 and 0.3 hold 0.7, and 0.2 more hold 0.9. From memory, the definition of a region of highest density (G. E. P. Box and
// G. C. Tiao, Bayesian Inference in Statistical Analysis, 1973): nothing outside is likelier than anything inside.
test.each([
  [0.4, [1]],
  [0.65, [1, 3]],
  [0.85, [1, 3, 0]],
  [2, [1, 3, 0, 2]],
])('the likeliest that hold %f together', (wanted, places) => {
  expect(likeliest([0.2, 0.4, 0.1, 0.3], wanted)).toEqual(places);
});
