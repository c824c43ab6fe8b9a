/** One reading after another on cells made by hand: Bayes' rule and the Kalman filter of section 5, worked out apart. */
import { describe, expect, test } from 'vitest';
import {
  chancesFor,
  expectedAt,
  forecast,
  likelihoodOn,
  neverStopped,
  outcomeIndex,
  prior,
  take,
  weigh,
  type TakenReading,
} from '../../src/diagnosis/posterior.ts';
import { groundsOf } from '../../src/diagnosis/grounds.ts';
import { ratherInOther, shownAlike } from '../../src/diagnosis/plausible.ts';
import { narrowed, walkOf, wayOf } from '../../src/diagnosis/way.ts';
import { expectedOf, outcomesFor } from '../../src/diagnosis/steps.ts';
import { isNumeric, testOf, type OutcomeTest } from '../../src/diagnosis/tests.ts';
import { NUISANCES } from '../../src/diagnosis/nuisances.ts';
import { made, numeric } from './made.ts';

const LINE = 'line.park.700.hot';
const TAP = 'clutch.forward.700.hot';
const STOP = 'stopTime.drive.hot';
const read = (id: string, value: TakenReading['value'], temperatureC?: number): TakenReading => ({
  test: testOf(id),
  value,
  ...(temperatureC !== undefined && { temperatureC }),
});
const density = (y: number, mean: number, variance: number): number =>
  Math.exp(-((y - mean) ** 2) / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);

describe('before any reading', () => {
  const cells = prior([
    made({ name: 'healthy' }),
    made({ name: 'pumpWear' }, {}, 0.5),
    made({ name: 'pumpWear' }, {}, 1),
    made({ name: 'sealingRings', circuit: 'forward' }),
  ]);
  test('a name has its share, spread over its classes and over its severities', () => {
    // Of 18: one each, rings over three circuits, what is not listed two in two cells.
    expect(cells.map(({ log }) => 18 * Math.exp(log))).toEqual(
      [1, 0.5, 0.5, 1 / 3, 1, 1].map((one) => expect.closeTo(one, 9) as number),
    );
    expect(cells.map(({ broken }) => broken?.from)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      0.15,
      0.35,
    ]);
    expect(cells[4]?.hypothesis.of.name).toBe('unlisted');
    for (const { z, P, off } of cells) {
      expect([...z].every((one) => one === 0) && off === 0).toBe(true);
      expect([P[0], P[1], P[13], P[14], P[168]]).toEqual([1, 0, 0, 1, 1]);
    }
  });
  test('weights that are given count, the others stay', () => {
    const given = prior([made({ name: 'healthy' })], { healthy: 3, unlisted: 0 });
    // 3 of 18: one name has two more, and another two less.
    expect(Math.exp(given[0]?.log ?? 0)).toBeCloseTo(3 / 18, 12);
    expect(given[1]?.log).toBe(-Infinity);
  });
  test('without a healthy car there is nothing to hold an unlisted cause against', () => {
    expect(() => prior([made({ name: 'filter' })])).toThrow(
      'There is no healthy car in the table.',
    );
  });
});

describe('a number', () => {
  // Moves by 20 and -10 of two things that cars share, sd 10 of its own.
  const healthy = made(
    { name: 'healthy' },
    {
      [LINE]: { mean: 600, own: 100, moves: { 0: 20, 4: -10 } },
      [TAP]: { mean: 390, own: 64, moves: { 4: -30 } },
    },
  );
  const gross = 0.003;

  test('tells of what cars share, as a Kalman filter in matrices does', () => {
    const posterior = weigh([healthy], [read(LINE, 570)]);
    const [cell] = posterior.cells;
    const S = 100 + 20 ** 2 + 10 ** 2;
    const N = density(570, 600, S);
    const likely = (1 - gross) * N + gross / 1400;
    const a = ((1 - gross) * N) / likely;
    expect(cell?.log).toBeCloseTo(Math.log(1 / 18) + Math.log(likely), 9);
    expect(cell?.z[0]).toBeCloseTo(a * (20 / S) * -30, 9);
    expect(cell?.z[4]).toBeCloseTo(a * (-10 / S) * -30, 9);
    expect(cell?.z[1]).toBe(0);
    expect(cell?.P[0]).toBeCloseTo(1 - (a * 400) / S, 9);
    expect(cell?.P[4]).toBeCloseTo((a * 200) / S, 9);
    expect(cell?.P[4 * 13]).toBeCloseTo((a * 200) / S, 9);
    expect(cell?.P[4 * 13 + 4]).toBeCloseTo(1 - (a * 100) / S, 9);
    expect(cell?.off).toBeCloseTo(30 ** 2 / S, 9);
    expect([posterior.numbers, posterior.taken]).toEqual([1, [LINE]]);
    // What the next one is expected to read, from what the first has told.
    const expected = healthy.expected[healthy.expected.findIndex(({ mean }) => mean === 390)];
    if (!cell || !expected) throw new Error('No cell.');
    const next = forecast(cell, expected);
    expect(next.mu).toBeCloseTo(390 - 30 * (a * (-10 / S) * -30), 9);
    expect(next.S).toBeCloseTo(64 + 900 * (1 - (a * 100) / S), 9);
    expect(likelihoodOn(cell, read(TAP, 380))).toBeCloseTo(
      (1 - gross) * density(380, next.mu, next.S) + gross / 1200,
      12,
    );
  });

  test('one that is far off hardly tells of what cars share, and its distance is capped', () => {
    const [cell] = weigh([healthy], [read(LINE, 1200)]).cells;
    expect(Math.abs(cell?.z[0] ?? NaN)).toBeLessThan(1e-6);
    expect(cell?.off).toBe(25);
  });

  test('is held against what is expected at its own temperature', () => {
    const hot = NUISANCES.findIndex(({ id }) => id === 'temperature.hot');
    const warm = made(
      { name: 'healthy' },
      { [LINE]: { mean: 600, own: 100, moves: { [hot]: -5 } } },
    );
    const one = warm.expected[warm.expected.findIndex(({ mean }) => mean === 600)];
    if (!one) throw new Error('No column.');
    // 3 °C either way are a uniform law, so 1.7320508 °C are one sd, and 5 kPa less.
    expect(expectedAt(one, read(LINE, 0, 95 + 1.7320508)).mean).toBeCloseTo(595, 6);
    expect(expectedAt(one, read(LINE, 0, 85)).mean).toBeCloseTo(600 + (5 * 10) / 1.7320508, 5);
    expect(expectedAt(one, read(LINE, 0)).mean).toBe(600);
    expect(expectedAt(one, read('fluidCup', 20, 40)).mean).toBe(600);
  });

  test('however unlikely all of them are, the shares sum to 1', () => {
    // Each of ninety is a gross error on any car: weights of e to the -1,100, which no number holds.
    const odd = Array.from({ length: 90 }, () => read(LINE, 1390));
    const { shares } = weigh(
      [healthy, made({ name: 'filter' }, { [LINE]: { mean: 500, own: 100 } })],
      odd,
    );
    expect(shares.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
  });

  test('needs its column', () => {
    const cut = { ...healthy, expected: [] };
    expect(() => weigh([cut], [read(LINE, 600)])).toThrow(
      'A car of the table reads nothing in column 11.',
    );
  });
});

describe('a turbine that does not stop', () => {
  const slow = made({ name: 'healthy' }, { [STOP]: { mean: 2.5, own: 0.25, moves: { 4: 0.5 } } });
  test('is no number: half of the law lies over 2.5 s, and nothing is learnt of what cars share', () => {
    for (const value of [null, 2.6, 60]) {
      const { cells, numbers } = weigh([slow], [read(STOP, value)]);
      expect(18 * Math.exp(cells[0]?.log ?? 0)).toBeCloseTo(0.997 * 0.5 + 0.003 * 0.3, 6);
      expect([cells[0]?.z[4], cells[0]?.off, numbers]).toEqual([0, 0, 0]);
      // For what is not listed: a half of any value, at 0.7 of 0.15.
      expect(18 * Math.exp(cells[1]?.log ?? 0)).toBeCloseTo((1 - 0.105) * 0.5 + 0.105 * 0.5, 6);
    }
  });
  test('2.5 s and any other test are numbers', () => {
    expect([2.5, 0].map((value) => neverStopped(read(STOP, value)))).toEqual([false, false]);
    expect(neverStopped(read(LINE, 600))).toBe(false);
    expect(weigh([slow], [read(STOP, 2.5)]).numbers).toBe(1);
  });
});

describe('words', () => {
  const level = testOf('fluidLevel') as OutcomeTest;
  const codes = testOf('codes') as OutcomeTest;
  test('places of outcomes, and of sets of codes', () => {
    expect(['full', 'low', 'veryLow'].map((value) => outcomeIndex({ test: level, value }))).toEqual(
      [0, 1, 2],
    );
    expect(
      [[], ['P0731'], ['P0736'], ['P0733', 'P0731'], ['P0731', 'P0736', 'P0733']].map((value) =>
        outcomeIndex({ test: codes, value }),
      ),
    ).toEqual([0, 1, 2, 5, 7]);
  });
  test('what is not listed sees as a healthy car, or anything: a third of its chance, of codes all of it', () => {
    const cells = prior([made({ name: 'healthy' })]);
    const [healthy, first] = cells;
    if (!healthy || !first) throw new Error('No cells.');
    expect(chancesFor(first, level)).toEqual(
      [0.88, 0.1, 0.02].map((p) => expect.closeTo(0.95 * p + 0.05 / 3, 12) as number),
    );
    expect(chancesFor(first, codes)).toEqual(
      chancesFor(healthy, codes).map((p) => expect.closeTo(0.85 * p + 0.15 / 8, 12) as number),
    );
  });
  test('weigh by their chance', () => {
    const { cells, numbers } = weigh(
      [made({ name: 'healthy' }), made({ name: 'lowFluid' })],
      [read('fluidLevel', 'low')],
    );
    expect([18 * Math.exp(cells[0]?.log ?? 0), 18 * Math.exp(cells[1]?.log ?? 0)]).toEqual([
      expect.closeTo(0.1, 9),
      expect.closeTo(0.05, 9),
    ]);
    expect(numbers).toBe(0);
  });
  test('a name that nobody believes stays out', () => {
    const cells = prior([made({ name: 'healthy' }), made({ name: 'filter' })], { filter: 0 });
    take(cells, read(LINE, 900));
    expect(cells[1]?.log).toBe(-Infinity);
    expect(cells[1]?.off).toBe(0);
  });
});

describe('whether a number can be shown at all', () => {
  const cars = [
    made(
      { name: 'healthy' },
      { [LINE]: { mean: 600, own: 64, moves: { 2: 6 } }, [STOP]: { mean: 2.4, own: 0.01 } },
    ),
    made({ name: 'pumpWear' }, { [LINE]: { mean: 500, own: 100 }, [STOP]: { mean: 5, own: 0.01 } }),
  ];
  const grounds = groundsOf(cars);
  test('over all cars alike', () => {
    const both = (y: number) => (density(y, 600, 100) + density(y, 500, 100)) / 2;
    for (const y of [480, 550, 590])
      expect(shownAlike(grounds, numeric(LINE), y)).toBeCloseTo(both(y), 12);
    expect(grounds.count).toBe(2);
    expect(grounds.sound).toBe(cars[0]);
    expect(() => groundsOf(cars.slice(1))).toThrow('There is no healthy car in the table.');
  });
  test('a time over 2.5 s is taken for 2.5', () => {
    expect(shownAlike(grounds, numeric(STOP), 40)).toBe(shownAlike(grounds, numeric(STOP), 2.5));
  });
  test('87 where kPa are asked is asked about, since 87 psi is 600 kPa; 600 is not, and 9,000 in neither', () => {
    const psi = (value: number) => value * 6.894757;
    expect(ratherInOther(grounds, numeric(LINE), 87, psi(87))).toBe(true);
    expect(ratherInOther(grounds, numeric(LINE), undefined, psi(87))).toBe(true);
    expect(ratherInOther(grounds, numeric(LINE), 600, psi(600))).toBe(false);
    expect(ratherInOther(grounds, numeric(LINE), 9000, psi(9000))).toBe(false);
    expect(ratherInOther(grounds, numeric(LINE), undefined, psi(9000))).toBe(false);
  });
});

describe('the way', () => {
  const cheap = { [LINE]: { mean: 600, own: 100 } };
  const cars = [
    made({ name: 'healthy' }, cheap),
    made({ name: 'pumpWear' }, { [LINE]: { mean: 300, own: 100 } }),
  ];
  test('what is sixty behind the likeliest does not come back', () => {
    const cells = prior(cars);
    const left = narrowed(cells, read(LINE, 600));
    // The other is 450 behind but for a gross error, so it stays; with nothing believed of it, it goes.
    expect(left).toHaveLength(4);
    expect(
      narrowed(prior(cars, { pumpWear: 1e-30 }), read(LINE, 600)).map(
        ({ hypothesis: { of } }) => of.name,
      ),
    ).not.toContain('pumpWear');
    expect(
      narrowed(prior(cars, { pumpWear: 1e-20 }), read(LINE, 600)).map(
        ({ hypothesis: { of } }) => of.name,
      ),
    ).toContain('pumpWear');
  });
  test('tells what each test took, and ends by itself', () => {
    const asked: string[] = [];
    const all = [
      ...wayOf(cars, (test) => {
        asked.push(test.id);
        return {
          test,
          value: isNumeric(test)
            ? test.id === LINE
              ? 300
              : (test.span[0] + test.span[1]) / 2
            : test.kind === 'codes'
              ? []
              : 'full',
        };
      }),
    ];
    expect(all[0]?.last).toBeUndefined();
    expect(all).toHaveLength(asked.length + 1);
    expect(all.slice(1).map(({ last }) => last?.reading.test.id)).toEqual(asked);
    expect(all.at(-1)?.posterior.taken).toEqual(asked);
    for (const { last } of all.slice(1)) expect(last?.minutes).toBeGreaterThan(0);
  });
  test('who is sure at once asks nothing', () => {
    const walk = walkOf([made({ name: 'healthy' })], { first: testOf(LINE) });
    const begins = walk.next();
    expect(begins.done).toBe(false);
    // A healthy car alone and what is not listed: 1 of 3, so it asks; and the first is the one that is known.
    expect(begins.done === true ? '' : begins.value.wants?.id).toBe(LINE);
  });
});

describe('what a next test may show', () => {
  const posterior = weigh(
    [
      made(
        { name: 'healthy' },
        {
          [LINE]: { mean: 600, own: 100 },
          'takeoffSlip.drive.hot': { mean: Math.log(100), own: 0.01 },
        },
      ),
      made({ name: 'pumpWear' }, { [LINE]: { mean: 300, own: 1000 } }, 0.5),
      made({ name: 'pumpWear' }, { [LINE]: { mean: 200, own: 1000 } }, 1),
      made({ name: 'lowFluid' }, { [LINE]: { mean: 450, own: 100 } }),
    ],
    [],
    { unlisted: 0.02, healthy: 1, pumpWear: 1, lowFluid: 1 },
  );
  test('what a name expects is the mean over its severities, as a shop reads it', () => {
    expect(expectedOf(posterior, numeric(LINE), 'pumpWear')).toBeCloseTo(250, 9);
    expect(expectedOf(posterior, numeric('takeoffSlip.drive.hot'), 'healthy')).toBeCloseTo(70, 9);
    expect(expectedOf(posterior, numeric(LINE), 'filter')).toBe(0);
  });
  test('the lowest and the highest of what the names expect, with whom each rules out', () => {
    const outcomes = outcomesFor(posterior, testOf(LINE));
    expect(outcomes.map(({ reading: { value } }) => value)).toEqual([
      expect.closeTo(250, 9),
      expect.closeTo(600, 9),
    ]);
    expect(outcomes[1]?.out.toSorted()).toEqual(['lowFluid', 'pumpWear']);
    expect(outcomes[0]?.out.toSorted()).toEqual(['healthy', 'lowFluid']);
  });
  test('nothing, where no listed name may be', () => {
    const other = weigh([made({ name: 'healthy' }, { [LINE]: { mean: 600, own: 100 } })], [], {
      unlisted: 1000,
    });
    expect(outcomesFor(other, testOf(LINE))).toEqual([]);
  });
  test('a stop that would take longer than anybody waits is one that did not stop', () => {
    const late = weigh(
      [
        made({ name: 'healthy' }, { [STOP]: { mean: 0.8, own: 0.01 } }),
        made({ name: 'pumpWear' }, { [STOP]: { mean: 5, own: 0.01 } }),
      ],
      [],
      { unlisted: 1e-9 },
    );
    const outcomes = outcomesFor(late, testOf(STOP));
    expect(outcomes.map(({ reading: { value } }) => value)).toEqual([expect.closeTo(0.8, 9), null]);
    expect(outcomes[1]?.out).toContain('healthy');
  });
  test('of words each that rules somebody out; of codes none', () => {
    const level = outcomesFor(posterior, testOf('fluidLevel'));
    // Very low in 2 of 100 sound cars and 90 of 100 low ones: 0.02 / (0.02 + 0.02 + 0.9) is over a hundredth, so nobody is out.
    expect(level).toEqual([]);
    const much = weigh([made({ name: 'healthy' }), made({ name: 'filter' })], [], {
      healthy: 1,
      filter: 0.06,
      unlisted: 1e-9,
    });
    // Clean in 0.04 of clogged filters and 0.84 of others: 0.06 times 0.04 over 0.84 is 0.003. The rest is over a hundredth.
    expect(outcomesFor(much, testOf('panFilter'))).toEqual([
      { reading: { test: testOf('panFilter'), value: 'clean' }, out: ['filter'] },
    ]);
    expect(outcomesFor(posterior, testOf('codes'))).toEqual([]);
  });
});
