/**
 * What a test in numbers tells [bits]: by the cut that the specification makes part of the definition (section 6), written out
 * again for classes of one normal law each, and never more than the integral of the definition of mutual information.
 */
import { describe, expect, test } from 'vitest';
import {
  weigh,
  rankTests,
  testOf,
  isNumeric,
  TESTS,
  bestTest,
  type Hypothesis,
  type Posterior,
} from '../../src/diagnosis/index.ts';
import { ARRIVES } from '../../src/diagnosis/car-state.ts';
import { LEAST_BITS } from '../../src/diagnosis/next-test.ts';
import { made } from './made.ts';

const LINE = 'line.park.700.hot';
const STOP = 'stopTime.drive.hot';

/** Weights of the names so that hardly anything is left for a cause that is not listed. */
const posteriorOf = (
  hypotheses: readonly Hypothesis[],
  weights: Readonly<Record<string, number>>,
): Posterior => weigh(hypotheses, [], { ...weights, unlisted: 1e-9 });
const bits = (posterior: Posterior, id: string): number =>
  rankTests(posterior).find(({ test: { id: one } }) => one === id)?.bits ?? 0;

/** By Simpson's rule over a scale that holds all of it; each class one normal law. */
function integrated(
  laws: readonly (readonly [weight: number, mean: number, sd: number])[],
): number {
  const low = Math.min(...laws.map(([, mean, sd]) => mean - 8 * sd));
  const high = Math.max(...laws.map(([, mean, sd]) => mean + 8 * sd));
  const steps = 20_000;
  let sum = 0;
  for (let i = 0; i <= steps; i += 1) {
    const y = low + ((high - low) * i) / steps;
    const each = laws.map(([weight, mean, sd]) => {
      const z = (y - mean) / sd;
      return weight * Math.exp(-0.5 * z * z) * (1 / (sd * Math.sqrt(2 * Math.PI)));
    });
    const all = each.reduce((total, one) => total + one, 0);
    const inside = each.reduce(
      (total, one, k) => total + (one > 0 ? one * Math.log2(one / ((laws[k]?.[0] ?? 1) * all)) : 0),
      0,
    );
    sum += inside * (i === 0 || i === steps ? 1 : i % 2 === 0 ? 2 : 4);
  }
  return (sum * (high - low)) / steps / 3;
}

type Law = readonly [weight: number, mean: number, sd: number];
/** The normal law below x, by Simpson's rule: 1e-9 of it. */
function below(x: number): number {
  if (x < -9) return 0;
  const steps = 400;
  const h = (Math.min(x, 9) + 9) / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i += 1)
    sum += Math.exp(-0.5 * (-9 + i * h) ** 2) * (i === 0 || i === steps ? 1 : i % 2 === 0 ? 2 : 4);
  return (sum * h) / 3 / Math.sqrt(2 * Math.PI);
}
/** Mutual information from what each class gives to each bin. */
function bitsOfBins(weights: readonly number[], bins: readonly (readonly number[])[]): number {
  const all = weights.reduce((sum, one) => sum + one, 0);
  const each = bins.map((chances, k) => chances.map((p) => (p * (weights[k] ?? 0)) / all));
  return each.reduce(
    (sum, joints, k) =>
      joints.reduce((inner, joint, b) => {
        const bin = each.reduce((total, other) => total + (other[b] ?? 0), 0);
        const weight = (weights[k] ?? 0) / all;
        return joint > 0 ? inner + joint * Math.log2(joint / (weight * bin)) : inner;
      }, sum),
    0,
  );
}
function edgesOf(laws: readonly Law[]): readonly number[] {
  const total = laws.reduce((sum, [weight]) => sum + weight, 0);
  const points = laws
    .flatMap(([weight, mean, sd]) =>
      [-1.3, -0.4, 0.4, 1.3].map((a) => [mean + a * sd, weight / 4 / total] as const),
    )
    .sort(([a], [b]) => a - b);
  const edges = Array.from({ length: 20 }, (_, k) => {
    const wanted = 0.02 + (0.96 * k) / 19;
    let sum = 0;
    return points.find(([, share]) => (sum += share) >= wanted - 1e-12)?.[0] ?? Number.NaN;
  });
  return [...new Set(edges)];
}
const binsOf = (edges: readonly number[], [, mean, sd]: Law): readonly number[] =>
  [...edges, Infinity].map(
    (edge, b) =>
      below((edge - mean) / sd) - (b === 0 ? 0 : below(((edges[b - 1] ?? 0) - mean) / sd)),
  );
const cut = (laws: readonly Law[]): number =>
  bitsOfBins(
    laws.map(([weight]) => weight),
    laws.map((law) => binsOf(edgesOf(laws), law)),
  );

describe('of a pressure', () => {
  const healthy = made({ name: 'healthy' }, { [LINE]: { mean: 600, own: 100 } });
  // The fit of the normal law is good to 1.2e-7, and a bin or two of it to 1e-5 of a bit.
  test.each([
    [600, 10, 1, 1],
    [610, 10, 1, 1],
    [620, 10, 1, 1],
    [650, 10, 1, 1],
    [900, 10, 1, 1],
    [620, 30, 1, 1],
    [600, 40, 1, 1],
    [630, 15, 1, 3],
    [630, 15, 5, 1],
  ])('600 and 10 against %d and %d, believed %d to %d', (mean, sd, one, other) => {
    const worn = made({ name: 'pumpWear' }, { [LINE]: { mean, own: sd * sd } });
    const found = bits(posteriorOf([healthy, worn], { healthy: one, pumpWear: other }), LINE);
    const laws: readonly Law[] = [
      [one / (one + other), 600, 10],
      [other / (one + other), mean, sd],
    ];
    const told = cut(laws);
    expect(found).toBeCloseTo(told < LEAST_BITS ? 0 : told, 5);
    expect(found).toBeLessThan(integrated(laws) + 1e-6);
  });

  test('of three classes that lie far apart it is what the cut leaves of one and a half', () => {
    const three = [
      healthy,
      made({ name: 'pumpWear' }, { [LINE]: { mean: 300, own: 100 } }),
      made({ name: 'filter' }, { [LINE]: { mean: 450, own: 100 } }),
    ];
    const found = bits(posteriorOf(three, { healthy: 2, pumpWear: 1, filter: 1 }), LINE);
    expect(found).toBeCloseTo(
      cut([
        [0.5, 600, 10],
        [0.25, 300, 10],
        [0.25, 450, 10],
      ]),
      5,
    );
    expect(found).toBeGreaterThan(1.3);
  });

  test('classes that lie close together beside one far off are cut in their order', () => {
    const close = [
      made({ name: 'healthy' }, { [LINE]: { mean: 600.1, own: 0.0004 } }),
      made({ name: 'pumpWear' }, { [LINE]: { mean: 600, own: 0.0004 } }),
      made({ name: 'filter' }, { [LINE]: { mean: 300, own: 0.0004 } }),
    ];
    const weights = { healthy: 2, pumpWear: 1, filter: 1 };
    expect(bits(posteriorOf(close, weights), LINE)).toBeCloseTo(
      cut([
        [0.5, 600.1, 0.02],
        [0.25, 600, 0.02],
        [0.25, 300, 0.02],
      ]),
      5,
    );
  });

  test('two severities of one class are one class', () => {
    const worn = (severity: number, mean: number) =>
      made({ name: 'pumpWear' }, { [LINE]: { mean, own: 100 } }, severity);
    const both = posteriorOf([healthy, worn(0.5, 300), worn(1, 900)], { healthy: 1, pumpWear: 1 });
    const laws: readonly Law[] = [
      [0.5, 600, 10],
      [0.25, 300, 10],
      [0.25, 900, 10],
    ];
    const edges = edgesOf(laws);
    const [sound, ...each] = laws.map((law) => binsOf(edges, law));
    const worst = (each[0] ?? []).map((p, b) => (p + (each[1]?.[b] ?? 0)) / 2);
    expect(bits(both, LINE)).toBeCloseTo(bitsOfBins([1, 1], [sound ?? [], worst]), 5);
    // And no more than nothing where both severities are of the only class.
    const alone = posteriorOf(
      [made({ name: 'healthy' }, { [LINE]: { mean: 600, own: 100 } }), worn(1, 900)],
      { healthy: 1, pumpWear: 1e-7 },
    );
    expect(bits(alone, LINE)).toBe(0);
  });

  test('what cars share widens a reading: by its move times what is not known of it', () => {
    // sd 10 of its own and a move of 30: the root of 1,000.
    const wide = (name: 'healthy' | 'pumpWear', mean: number) =>
      made({ name }, { [LINE]: { mean, own: 100, moves: { 4: 30 } } });
    const found = bits(
      posteriorOf([wide('healthy', 600), wide('pumpWear', 660)], { healthy: 1, pumpWear: 1 }),
      LINE,
    );
    const sd = Math.sqrt(1000);
    expect(found).toBeCloseTo(
      cut([
        [0.5, 600, sd],
        [0.5, 660, sd],
      ]),
      5,
    );
  });
});

describe('of a stop time', () => {
  test('over 2.5 s is one outcome: two classes that both never stop are not told apart', () => {
    const never = (name: 'healthy' | 'pumpWear', mean: number) =>
      made({ name }, { [STOP]: { mean, own: 0.01 } });
    const both = posteriorOf([never('healthy', 4), never('pumpWear', 5)], {
      healthy: 1,
      pumpWear: 1,
    });
    expect(bits(both, STOP)).toBe(0);
    const one = posteriorOf([never('healthy', 0.8), never('pumpWear', 5)], {
      healthy: 1,
      pumpWear: 1,
    });
    expect(bits(one, STOP)).toBeGreaterThan(0.85);
  });
});

describe('a cause that is not listed', () => {
  test('a group that has been read oddly is likelier broken, and its next reading tells more', () => {
    const healthy = made(
      { name: 'healthy' },
      { [LINE]: { mean: 600, own: 100 }, 'line.drive.700.hot': { mean: 600, own: 100 } },
    );
    const odd = weigh([healthy], [{ test: testOf('line.drive.700.hot'), value: 560 }], {
      healthy: 1,
      unlisted: 1,
    });
    // By section 1.2: N at four sd, U one in 1,400, for each of the two cells.
    const N = Math.exp(-8) / (10 * Math.sqrt(2 * Math.PI));
    const U = 1 / 1400;
    const weights = [
      (1 - 0.003) * N + 0.003 * U,
      ...[0.15, 0.35].map((b) => 0.5 * ((1 - 0.7 * b) * N + 0.7 * b * U)),
    ];
    const now = [0.15, 0.35].map((b) => {
      const any = b * (0.3 * N + 0.7 * U);
      return any / (any + (1 - b) * N);
    });
    const total = weights.reduce((sum, one) => sum + one, 0);
    odd.shares.forEach((share, n) => expect(share).toBeCloseTo((weights[n] ?? 0) / total, 9));
    expect(odd.cells.slice(1).map(({ broken }) => broken?.groups.get('line'))).toEqual(
      now.map((one) => expect.closeTo(one, 9) as number),
    );
    expect(odd.cells[0]?.broken).toBeUndefined();
    // Section 6: (1 - e) of the healthy law and e of any value, e being 0.7 of the chance that its group is broken.
    const edges = edgesOf([[1, 600, 10]]);
    const sound = binsOf(edges, [1, 600, 10]);
    const wide = [...edges, 1400].map((edge, b) => (edge - (edges[b - 1] ?? 0)) / 1400);
    const [listed = 0, ...both] = weights;
    const [e = 0] = [both.reduce((sum, one, k) => sum + one * 0.7 * (now[k] ?? 0), 0)].map(
      (sum) => sum / (total - listed),
    );
    const other = sound.map((p, b) => p + e * ((wide[b] ?? 0) - p));
    const told = bitsOfBins([listed, total - listed], [sound, other]);
    expect(told).toBeGreaterThan(LEAST_BITS);
    expect(bits(odd, LINE)).toBeCloseTo(told, 5);
  });
});

describe('in which order', () => {
  const cheap = { [LINE]: { mean: 600, own: 100 }, 'airTest.high': { mean: 90, own: 16 } };
  const dear = { [LINE]: { mean: 640, own: 100 }, 'airTest.high': { mean: 20, own: 16 } };
  const posterior = posteriorOf(
    [made({ name: 'healthy' }, cheap), made({ name: 'pumpWear' }, dear)],
    { healthy: 1, pumpWear: 1 },
  );
  test('best bits a minute first, and the best alone is the first of them', () => {
    const ranked = rankTests(posterior);
    const rates = ranked.map(({ bits: all, minutes }) => all / minutes);
    expect(rates).toEqual([...rates].sort((a, b) => b - a));
    expect(ranked.length).toBeGreaterThan(1);
    for (const { bits: all } of ranked) expect(all).toBeGreaterThanOrEqual(LEAST_BITS);
    expect(bestTest(posterior)).toEqual(ranked[0]);
    // 34 minutes of the line gauge hot: 2, 12 for the gauge, 20 to warm it. 79 on the bench: 4, 30, 45.
    const minutesOf = (id: string) => ranked.find(({ test: one }) => one.id === id)?.minutes;
    expect([minutesOf(LINE), minutesOf('airTest.high')]).toEqual([34, 79]);
  });
  test('what was taken is not asked again, and frost only where there is some', () => {
    const again = { ...posterior, taken: [LINE] };
    expect(rankTests(again).some(({ test: { id } }) => id === LINE)).toBe(false);
    const frosty = made({ name: 'pumpWear' }, { 'stopTime.drive.frost': { mean: 2, own: 0.01 } });
    const cold = posteriorOf(
      [made({ name: 'healthy' }, { 'stopTime.drive.frost': { mean: 0.8, own: 0.01 } }), frosty],
      { healthy: 1, pumpWear: 1 },
    );
    const first = (state: typeof ARRIVES) =>
      rankTests(cold, state).some(({ test: { id } }) => id === 'stopTime.drive.frost');
    expect(first(ARRIVES)).toBe(false);
    expect(first({ ...ARRIVES, coldMorning: true })).toBe(true);
    expect(first({ ...ARRIVES, temperature: 'frost' })).toBe(true);
  });
  test('what tells less than the least is not worth the walk, and not the best either', () => {
    // A third of a spread apart: some 0.02 bits.
    const near = posteriorOf(
      [
        made({ name: 'healthy' }, { [LINE]: { mean: 600, own: 100 } }),
        made({ name: 'regulatorBore' }, { [LINE]: { mean: 603, own: 100 } }),
      ],
      { healthy: 1, regulatorBore: 1 },
    );
    const withoutWords = {
      ...near,
      taken: TESTS.filter((one) => !isNumeric(one)).map(({ id }) => id),
    };
    expect(
      cut([
        [0.5, 600, 10],
        [0.5, 603, 10],
      ]),
    ).toBeGreaterThan(0);
    expect(rankTests(withoutWords)).toEqual([]);
    expect(bestTest(withoutWords)).toBeUndefined();
  });
  test('with one class left nothing is worth its minutes', () => {
    const sure = posteriorOf([made({ name: 'healthy' })], { healthy: 1 });
    expect(rankTests(sure)).toEqual([]);
    expect(bestTest(sure)).toBeUndefined();
  });
});
