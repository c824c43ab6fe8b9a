/** Two readings on one car, two faults in one car, and the law of several pressures, on cells made by hand. */
import { describe, expect, test } from 'vitest';
import { hypothesesOf } from '../../src/diagnosis/cells.ts';
import { contradictionFinder, contradictions } from '../../src/diagnosis/contradictions.ts';
import { inOneGo } from '../../src/diagnosis/in-one-go.ts';
import { crackShares, likeliest, type CrackLaw } from '../../src/diagnosis/leak.ts';
import { weigh, type TakenReading } from '../../src/diagnosis/posterior.ts';
import { SHARED, type Cell, type Table } from '../../src/diagnosis/table.ts';
import { CLASSES, hasSeverity, NODES, type Name } from '../../src/diagnosis/hypotheses.ts';
import { NUMERIC, testOf } from '../../src/diagnosis/tests.ts';
import { bothMean, shrinks, twoFaults } from '../../src/diagnosis/two-faults.ts';
import { made, numeric } from './made.ts';

const LINE = 'line.park.700.hot';
const TAP = 'clutch.forward.700.hot';
const STOP = 'stopTime.drive.hot';
const read = (id: string, value: TakenReading['value']): TakenReading => ({
  test: testOf(id),
  value,
});
const density = (y: number, mean: number, variance: number): number =>
  Math.exp(-((y - mean) ** 2) / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);

describe('the joint law of several pressures', () => {
  const law = (means: readonly number[], covariance: readonly (readonly number[])[]): CrackLaw => ({
    ...{ heightMm: 0.1, widthMm: 10, means, covariance },
  });
  test('of two that go together, by the formula for two', () => {
    const S = [
      [400, 240],
      [240, 900],
    ];
    const read = [390, 610];
    const of = (a: number, b: number): number => {
      const [x, y] = [390 - a, 610 - b];
      const det = 400 * 900 - 240 ** 2;
      return (
        Math.exp(-0.5 * ((900 * x * x - 2 * 240 * x * y + 400 * y * y) / det)) / Math.sqrt(det)
      );
    };
    const shares = crackShares([law([400, 600], S), law([380, 640], S), law([420, 580], S)], read);
    const each = [of(400, 600), of(380, 640), of(420, 580)];
    const sum = each.reduce((total, one) => total + one, 0);
    shares.forEach((share, i) => expect(share).toBeCloseTo((each[i] ?? 0) / sum, 12));
    expect(shares.reduce((total, one) => total + one, 0)).toBeCloseTo(1, 12);
  });
  test('of three, by eliminating one after the other by hand', () => {
    // A = L L' with L = [[2], [1, 3], [4, -1, 5]]; L u = (2, 7, 11) gives u = (1, 2, 1.8), so the square is 1 + 4 + 3.24.
    const S = [
      [4, 2, 8],
      [2, 10, 1],
      [8, 1, 42],
    ];
    const wide = S.map((row) => row.map((one) => 4 * one));
    const shares = crackShares([law([0, 0, 0], S), law([0, 0, 0], wide)], [2, 7, 11]);
    // Twice as wide: a quarter of the square, and a volume eight times as large.
    const [narrow, broad] = [Math.exp(-0.5 * 8.24), Math.exp(-0.5 * (8.24 / 4)) / 8];
    expect(shares[0]).toBeCloseTo(narrow / (narrow + broad), 12);
  });
  test('a wider law pays for its width where both fit alike', () => {
    const one = (sd: number) => law([100], [[sd * sd]]);
    expect(crackShares([one(1), one(3)], [100])[0]).toBeCloseTo(0.75, 12);
  });
  test('the likeliest of all that hold everything are all', () => {
    expect(likeliest([0.25, 0.75], 1)).toEqual([1, 0]);
    expect(likeliest([], 0.9)).toEqual([]);
  });
});

describe('two readings on one car', () => {
  // Line and tap move together by what cars share: 20 and 30 for one sd of the pump.
  const car = (name: 'healthy' | 'pumpWear', line: number, tap: number) =>
    made(
      { name },
      {
        [LINE]: { mean: line, own: 100, moves: { 4: 20 } },
        [TAP]: { mean: tap, own: 225, moves: { 4: 30 } },
      },
    );
  const cars = [car('healthy', 600, 400), car('pumpWear', 300, 200)];
  const shareOf = (line: number, tap: number, bar = 2) =>
    contradictions(cars, [read(LINE, line), read(TAP, tap)], bar)[0]?.share;

  test('what the second is expected to read goes by the first, as one bivariate law', () => {
    // 500 and 1,125 for the variances, 600 for what they share.
    const both = (line: number, tap: number, [a, b]: readonly [number, number]): number => {
      const det = 500 * 1125 - 600 ** 2;
      const [x, y] = [line - a, tap - b];
      return (
        Math.exp(-0.5 * ((1125 * x * x - 2 * 600 * x * y + 500 * y * y) / det)) /
        (2 * Math.PI * Math.sqrt(det))
      );
    };
    const most = (y: number, variance: number, means: readonly number[]) =>
      Math.max(...means.map((mean) => density(y, mean, variance)));
    for (const [line, tap] of [
      [600, 400],
      [620, 430],
      [620, 380],
      [310, 210],
    ] as const) {
      const joint = Math.max(both(line, tap, [600, 400]), both(line, tap, [300, 200]));
      // With a healthy car and one fault, two faults are that fault and nothing.
      expect(shareOf(line, tap, 1e9), `${line} ${tap}`).toBeCloseTo(
        joint / (most(line, 500, [600, 300]) * most(tap, 1125, [400, 200])),
        6,
      );
    }
  });
  test('a healthy line and a worn tap contradict, each alone is nothing odd', () => {
    const found = contradictions(cars, [read(LINE, 600), read(TAP, 200)]);
    expect(found).toMatchObject([{ first: 0, second: 1 }]);
    expect(found[0]?.share).toBeLessThan(1e-3);
    expect(contradictions(cars, [read(LINE, 600)])).toEqual([]);
    expect(contradictions(cars, [read(LINE, 600), read(TAP, 400)])).toEqual([]);
  });
  test('all pairs of a sheet, and one that grows is tried where it grew', () => {
    const finder = contradictionFinder(cars);
    const sheet = [read(LINE, 600), read(TAP, 200), read('line.drive.700.hot', 700)];
    const first = inOneGo(finder(sheet.slice(0, 2)));
    expect(first.map(({ first: a, second: b }) => [a, b])).toEqual([[0, 1]]);
    expect(inOneGo(finder(sheet))).toEqual(first);
    expect(
      inOneGo(finder([read(TAP, 200), read(LINE, 600)])).map(({ first: a, second: b }) => [a, b]),
    ).toEqual([[0, 1]]);
  });
  test('a turbine that never stopped beside a number, whichever was taken first', () => {
    const slow = (name: 'healthy' | 'pumpWear', stop: number, line: number) =>
      made({ name }, { [STOP]: { mean: stop, own: 0.01 }, [LINE]: { mean: line, own: 100 } });
    const two = [slow('healthy', 0.8, 600), slow('pumpWear', 5, 300)];
    for (const pair of [
      [read(STOP, null), read(LINE, 600)],
      [read(LINE, 600), read(STOP, null)],
    ])
      expect(contradictions(two, pair)).toHaveLength(1);
    expect(contradictions(two, [read(STOP, null), read(LINE, 300)])).toEqual([]);
    expect(contradictions(two, [read(STOP, 0.8), read(LINE, 600)])).toEqual([]);
    // Half of a law that has its middle at 2.5 s lies above: never stopped is as likely as not.
    const half = [slow('healthy', 2.5, 600), slow('pumpWear', 0.5, 300)];
    expect(contradictions(half, [read(STOP, null), read(LINE, 600)], 0.9)).toEqual([]);
  });
  test('two faults at once explain what no single one does: pressures shrink by their shares, times add up', () => {
    const slow = (name: 'healthy' | 'pumpWear' | 'filter', line: number, stop: number) =>
      made({ name }, { [LINE]: { mean: line, own: 100 }, [STOP]: { mean: stop, own: 0.0025 } });
    const three = [slow('healthy', 600, 0.8), slow('pumpWear', 200, 0.8), slow('filter', 300, 1.4)];
    const named = (line: number, stop: number) =>
      contradictions(three, [read(LINE, line), read(STOP, stop)]).length;
    // 200 and 300 of 600 are 100 kPa, where each less by its own would be below nothing; 1.4 s where 0.8 is right are 1.4.
    expect(named(100, 1.4)).toBe(0);
    // The pump's line with the filter's time is neither of them, nor both.
    expect(named(200, 1.4)).toBe(1);
    expect(named(600, 1.4)).toBe(1);
    // One fault is enough for these.
    expect([named(200, 0.8), named(300, 1.4), named(600, 0.8)]).toEqual([0, 0, 0]);
  });
  test('where both are slow the times add up, and are not multiplied', () => {
    const slow = (name: Name, line: number, stop: number) =>
      made({ name }, { [LINE]: { mean: line, own: 100 }, [STOP]: { mean: stop, own: 0.0025 } });
    const cars = [
      ...[slow('healthy', 600, 0.8), slow('pumpWear', 200, 1.2), slow('filter', 300, 1.4)],
      // Each of the two readings is usual somewhere.
      ...[slow('lowFluid', 100, 5), slow('regulatorBore', 600, 2.1)],
    ];
    const named = (stop: number) =>
      contradictions(cars, [read(LINE, 100), read(STOP, stop)]).length;
    // 0.4 s and 0.6 s more than 0.8: 1.8. By their shares it would be 1.2 times 1.4 over 0.8, 2.1.
    expect([named(1.8), named(2.1)]).toEqual([0, 1]);
  });
  test('what cars share moves a pair as it moves each, less what moves a healthy one', () => {
    const moved = (name: Name, line: number, tap: number, move: number) =>
      made(
        { name },
        {
          [LINE]: { mean: line, own: 100, moves: { 4: move } },
          [TAP]: { mean: tap, own: 100, moves: { 4: 20 } },
        },
      );
    const three = [
      ...[moved('healthy', 600, 400, 10), moved('pumpWear', 300, 400, 40)],
      moved('filter', 600, 200, 25),
    ];
    // Both: 300 and 200 kPa; 40 and 25 less 10 are 55 in the line, 20 and 20 less 20 are 20 at the tap.
    const [line, tap, both] = [100 + 55 ** 2, 100 + 20 ** 2, 55 * 20];
    const [x, y] = [370 - 300, 210 - 200];
    const det = line * tap - both ** 2;
    const joint =
      Math.exp(-0.5 * ((tap * x * x - 2 * both * x * y + line * y * y) / det)) /
      (2 * Math.PI * Math.sqrt(det));
    // Alone a line of 370 is likeliest behind the pump, a tap of 210 behind the filter.
    const best = density(370, 300, 100 + 40 ** 2) * density(210, 200, 100 + 20 ** 2);
    expect(contradictions(three, [read(LINE, 370), read(TAP, 210)], 1e9)[0]?.share).toBeCloseTo(
      joint / best,
      6,
    );
  });
  test('a pair counts by the wider of its laws', () => {
    const with_ = (
      name: 'healthy' | 'pumpWear' | 'filter',
      line: number,
      own: number,
      tap: number,
    ) => made({ name }, { [LINE]: { mean: line, own }, [TAP]: { mean: tap, own: 100 } });
    const three = [
      with_('healthy', 600, 100, 400),
      with_('pumpWear', 300, 100, 400),
      with_('filter', 600, 1600, 200),
    ];
    // Both: 300 and 200 kPa, the line 40 kPa wide as behind the filter: 400 is two and a half of that above.
    const joint = density(400, 300, 1600) * density(200, 200, 100);
    // Each alone is likeliest behind the filter: 400 five of its spreads below 600, and 200 at its middle.
    const best = density(400, 600, 1600) * density(200, 200, 100);
    expect(contradictions(three, [read(LINE, 400), read(TAP, 200)], 1e9)[0]?.share).toBeCloseTo(
      joint / best,
      3,
    );
  });
  test('words count by their chance', () => {
    const two = [
      made({ name: 'healthy' }, { [LINE]: { mean: 600, own: 100 } }),
      made({ name: 'lowFluid' }, { [LINE]: { mean: 300, own: 100 } }),
    ];
    const [found] = contradictions(two, [read('fluidLevel', 'veryLow'), read(LINE, 600)], 0.5);
    // Very low in 0.02 of healthy cars and 0.9 of those with low fluid: on a healthy line 0.02 of 0.9.
    expect(found?.share).toBeCloseTo(0.02 / 0.9, 6);
  });
});

describe('two faults in one car', () => {
  const sound = made(
    { name: 'healthy' },
    { [LINE]: { mean: 600, own: 100 }, [STOP]: { mean: 0.8, own: 0.0001 } },
  );
  const worn = made(
    { name: 'pumpWear' },
    { [LINE]: { mean: 300, own: 100 }, [STOP]: { mean: 1.2, own: 0.0001 } },
  );
  const clogged = made(
    { name: 'filter' },
    { [LINE]: { mean: 400, own: 100 }, [STOP]: { mean: 1.3, own: 0.0001 } },
  );
  const weighed = (...readings: readonly TakenReading[]) => {
    const all = [sound, worn, clogged];
    return twoFaults(all, weigh(all, readings), readings);
  };
  test('pressures shrink by their shares, times add up, and what is not known of it widens the law', () => {
    // 300 and 400 of 600: 200 kPa. The lesser does 200 alone, 0.4 of which is 80.
    const gross = 0.003;
    const likely = (y: number, mean: number, variance: number, any: number) =>
      (1 - gross) * density(y, mean, variance) + gross * any;
    const single = (y: number, means: readonly number[], variance: number, any: number) =>
      means.reduce((sum, mean) => sum + likely(y, mean, variance, any) / 18, 0);
    expect(weighed(read(LINE, 210)).odds).toBeCloseTo(
      likely(210, 200, 100 + 80 ** 2, 1 / 1400) / single(210, [600, 300, 400], 100, 1 / 1400),
      6,
    );
    // 0.4 and 0.5 s more than 0.8: 1.7. The lesser does 0.4 s, 0.4 of which is 0.16.
    expect(weighed(read(STOP, 1.7)).odds).toBeCloseTo(
      likely(1.7, 1.7, 0.0001 + 0.16 ** 2, 0.7 / 2.5) /
        single(1.7, [0.8, 1.2, 1.3], 0.0001, 0.7 / 2.5),
      6,
    );
  });
  test('what cars share moves both: by what moves each, less what moves a healthy one', () => {
    const moved = (
      one: typeof sound,
      name: 'healthy' | 'pumpWear' | 'filter',
      mean: number,
      move: number,
    ) => ({
      ...one,
      ...made({ name }, { [LINE]: { mean, own: 100, moves: { 4: move } } }),
    });
    const all = [
      moved(sound, 'healthy', 600, 10),
      moved(worn, 'pumpWear', 300, 40),
      moved(clogged, 'filter', 400, 25),
    ];
    const readings = [read(LINE, 210)];
    // 40 and 25 less 10 are 55, besides the 10 kPa of its own and the 80 of what is not known.
    const S = 100 + 80 ** 2 + 55 ** 2;
    const gross = 0.003;
    const likely = (mean: number, variance: number) =>
      (1 - gross) * density(210, mean, variance) + gross / 1400;
    const single = (likely(600, 200) + likely(300, 1700) + likely(400, 725)) / 18;
    expect(twoFaults(all, weigh(all, readings), readings).odds).toBeCloseTo(
      likely(200, S) / single,
      6,
    );
  });
  test('there is one pair of two, with all of the share', () => {
    expect(weighed(read(LINE, 210)).pairs).toMatchObject([
      { of: [{ name: 'pumpWear' }, { name: 'filter' }], share: 1 },
    ]);
  });
  test('what shrinks and what grows', () => {
    expect(
      [LINE, TAP, 'coolerFlow.park.700.hot', 'airTest.forward'].map((id) => shrinks(numeric(id))),
    ).toEqual([true, true, true, true]);
    expect(
      [STOP, 'takeoffSlip.drive.hot', 'fluidCup', 'engineOffTurbine'].map((id) =>
        shrinks(numeric(id)),
      ),
    ).toEqual([false, false, false, false]);
  });
  // Values of the normal law from Python's statistics.NormalDist.
  test('of codes the larger slip and the lower tap count, to the chance', () => {
    const slips = { ...worn, signs: { ...worn.signs, slip: { drive: 5.8, reverse: 3.4 } } };
    const low = { ...clogged, signs: { ...clogged.signs, highTap: 100 } };
    const all = [sound, slips, low];
    const odds = (value: readonly string[]) => {
      const readings = [read('codes', value)];
      return twoFaults(all, weigh(all, readings), readings).odds;
    };
    // Stored: 0.04 and 0.86 of the law. Stop 0.8 s: 2.8 widths short. Slip ln 5.8: 1.5176 over. Tap 100 kPa: 3.333 over.
    const quiet = 0.04 + 0.86 * 0.0025551303;
    const slipped = 0.04 + 0.86 * 0.9354434;
    const starved = 0.04 + 0.86 * 0.9995709;
    const of = (first: number, third: number, both: boolean) =>
      both ? first * (1 - quiet) * third : (1 - first) * (1 - quiet) * (1 - third);
    for (const both of [true, false]) {
      const singles = of(quiet, 0.04, both) + of(slipped, 0.04, both) + of(quiet, starved, both);
      expect(odds(both ? ['P0731', 'P0733'] : [])).toBeCloseTo(
        of(slipped, starved, both) / (singles / 18),
        4,
      );
    }
  });
  test('of a sensor that lies the codes are its own, whatever the other fault is', () => {
    const lies = made({ name: 'turbineSensor' });
    const all = [sound, clogged, lies];
    const readings = [read('codes', ['P0731', 'P0736'])];
    // "Never stops" in both ranges: 0.9 each; the third is not stored in 0.96.
    const lying = 0.9 * 0.9 * 0.96;
    const quiet = 0.04 + 0.86 * 0.0025551303;
    expect(twoFaults(all, weigh(all, readings), readings).odds).toBeCloseTo(
      lying / ((lying + 2 * quiet * quiet * 0.96) / 18),
      4,
    );
  });
  test('two means: shares of the sound one, and sums where nothing is left of it', () => {
    expect(bothMean(true, 300, 400, 600)).toBe(200);
    // Nothing reads below nothing.
    expect(bothMean(true, -5, 400, 600)).toBe(0);
    expect(bothMean(true, 400, -5, 600)).toBe(0);
    expect(bothMean(true, 3, 4, 0)).toBe(7);
    expect(bothMean(false, 1.2, 1.4, 0.8)).toBeCloseTo(1.8, 12);
  });
  test('of codes the later stop and the larger slip count, and the lower tap', () => {
    const late = { ...worn, signs: { ...worn.signs, stop: { drive: 2, reverse: 0.8 } } };
    const low = { ...clogged, signs: { ...clogged.signs, highTap: 100 } };
    const all = [sound, late, low];
    const codes = (value: readonly string[]) => {
      const readings = [read('codes', value)];
      return twoFaults(all, weigh(all, readings), readings).odds;
    };
    // First and third each stored with about 0.9 in a car with both; alone each has one of them.
    expect(codes(['P0731', 'P0733'])).toBeGreaterThan(5);
    // None stored: 0.12 of 0.96 of 0.1 with both, against the healthy car's 0.88 of a share of one in eighteen.
    expect(codes([])).toBeLessThan(0.25);
  });
});

describe('cells between the nodes of the table', () => {
  const cell = (value: number): Cell => ({
    nominal: value,
    mean: value,
    moves: new Float64Array(SHARED).fill(value / 100),
    curvature: value / 50,
  });
  /** A table in which every reading is a hundred times its severity. */
  const table: Table = CLASSES.map(({ name }) =>
    name === 'unlisted'
      ? []
      : (hasSeverity(name) ? NODES : [1]).map((severity) =>
          NUMERIC.map(() => cell(100 * severity)),
        ),
  );
  const all = hypothesesOf(table);
  test('are the mean of both, as far as they lie along', () => {
    for (const { of, severity, expected } of all) {
      const wanted = hasSeverity(of.name) ? 100 * severity : 100;
      for (const one of expected) {
        expect(one.mean).toBeCloseTo(wanted, 9);
        expect(one.moves[3]).toBeCloseTo(wanted / 100, 9);
      }
    }
  });
  test('are as wide as their error, how cars differ, their bend and a twelfth of the step to the next, squared', () => {
    const place = NUMERIC.findIndex(({ id }) => id === LINE);
    const filter = all.filter(({ of }) => of.name === 'filter');
    const own = (i: number) => filter[i]?.expected[place]?.own ?? NaN;
    // 55 kPa: 10 for the gauge, 1.5 % from car to car, 1.1 of bend, and 2.5 kPa to the next.
    expect(own(0)).toBeCloseTo(100 + 0.825 ** 2 + 1.1 ** 2 + 2.5 ** 2 / 12, 9);
    // The last one has no next.
    expect(own(filter.length - 1)).toBeCloseTo(100 + 1.5 ** 2 + 2 ** 2, 9);
  });
  test('a table without its rows is refused', () => {
    const without = table.map((rows, i) => (CLASSES[i]?.name === 'filter' ? [] : rows));
    expect(() => hypothesesOf(without)).toThrow('A class has no row in the table.');
    // Every row, or every other one, so that between two nodes the one or the other ends early.
    for (const cut of [() => true, (n: number) => n % 2 === 0, (n: number) => n % 2 === 1]) {
      const short = table.map((rows) => rows.map((row, n) => (cut(n) ? row.slice(0, -1) : row)));
      expect(() => hypothesesOf(short)).toThrow('A row is cut short.');
    }
  });
});
