import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ARRIVES,
  bestTest,
  CLASSES,
  decodeTable,
  hypothesesOf,
  isNumeric,
  minutesFor,
  nominalWarmth,
  offScale,
  OUTCOMES,
  plannerOf,
  rankTests,
  readQuestion,
  readSubject,
  stateAfter,
  testOf,
  TESTS,
  weigh,
  CODES,
  type OutcomeTest,
  type Posterior,
  type TakenReading,
} from '../../src/diagnosis/index.ts';
import { applyFaults, training } from '../../src/engine/index.ts';
import { CODE_SETS } from '../../src/diagnosis/outcome-tables.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';

const table = decodeTable(keptTable);
const hypotheses = hypothesesOf(table);
const ask = plannerOf(table);
const question = (given: object) => {
  const read = readQuestion(given);
  if ('error' in read) throw new Error(read.error);
  return read;
};

test('weighs 638 hypotheses of 27 classes, and 49 readings, as the specification counts them', () => {
  expect(hypotheses.length + 2).toBe(638);
  expect(CLASSES).toHaveLength(27);
  expect(TESTS).toHaveLength(49);
});

// Section 8: whether one fault fits is told from four readings on, and of twenty and more by the pairs as well.
test('with twenty numbers the pairs are weighed too, and it is told whether one fault fits', () => {
  const numbers = TESTS.filter(isNumeric).filter(({ at }) => at.warmth !== 'frost');
  const plant = applyFaults(training, { pumpWear: { severity: 0.6 } });
  const fitOf = (count: number) =>
    ask({
      ...question({ readings: [] }),
      readings: numbers.slice(0, count).map((one) => ({
        test: one,
        value: offScale(
          one,
          readSubject({ plant, fluid: plant.fluid, warmth: nominalWarmth }, one),
        ),
      })),
    }).fit;
  expect(fitOf(3)).not.toHaveProperty('singleFaultFits');
  for (const count of [4, 19, 20, 30])
    expect(fitOf(count), String(count)).toMatchObject({ readings: count, singleFaultFits: true });
});

/** Uncertainty about the class [bits]. */
function entropy({ cells, shares }: Posterior): number {
  const of = CLASSES.map(() => 0);
  cells.forEach((cell, n) => {
    const { index } = cell.hypothesis;
    of[index] = (of[index] ?? 0) + (shares[n] ?? 0);
  });
  return of.reduce((sum, p) => sum - (p > 0 ? p * Math.log2(p) : 0), 0);
}

/** Every outcome of a test in words, as a reading. */
const allOutcomes = (one: OutcomeTest): readonly TakenReading[] =>
  one.kind === 'codes'
    ? CODE_SETS.map((set) => ({ test: one, value: CODES.filter((_code, i) => set[i]) }))
    : OUTCOMES[one.kind].map((value) => ({ test: one, value }));

describe('bits of a test in words, by trying every outcome', () => {
  const taken: readonly TakenReading[] = [
    { test: testOf('stopTime.drive.hot'), value: null },
    { test: testOf('stopTime.drive.cold'), value: 0.9 },
  ];
  const before = weigh(hypotheses, taken);
  const ranked = rankTests(before);
  test.each(
    ranked.flatMap(({ test: one, bits }) => (isNumeric(one) ? [] : [[one.id, one, bits] as const])),
  )('%s', (_id, one, bits) => {
    // What is learnt is what is uncertain before, less what is on the average after.
    const after = allOutcomes(one).map((reading) => {
      const posterior = weigh(hypotheses, [...taken, reading]);
      const chance = posterior.cells.reduce(
        (sum, cell, n) =>
          sum + (before.shares[n] ?? 0) * Math.exp(cell.log - (before.cells[n]?.log ?? 0)),
        0,
      );
      return { chance, left: entropy(posterior) };
    });
    expect(after.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
    const learnt =
      entropy(before) - after.reduce((sum, { chance, left }) => sum + chance * left, 0);
    // Hypotheses under a ten-thousandth of the heaviest are left out.
    expect(Math.abs(bits - learnt)).toBeLessThan(0.005);
  });
});

test.each([
  ['nothing taken', []],
  ['a car that is late hot', [{ test: testOf('stopTime.drive.hot'), value: 1.6 }]],
  [
    'a car on the lift',
    [
      { test: testOf('codes'), value: ['P0731'] },
      { test: testOf('line.park.700.hot'), value: 590 },
    ],
  ],
] as readonly [string, readonly TakenReading[]][])(
  'the best test is the first of all of them: %s',
  (_name, taken) => {
    const posterior = weigh(hypotheses, taken);
    const hot = { ...ARRIVES, temperature: 'hot', fitted: ['scan', 'gaugeLine'] } as const;
    for (const state of [ARRIVES, hot]) {
      expect(bestTest(posterior, state)).toEqual(rankTests(posterior, state)[0]);
    }
  },
);

describe('minutes, by hand from the specification', () => {
  test.each([
    ['codes on a car that has just come in: 2 and the reader', 'codes', ARRIVES, 2 + 3],
    ['a stop time cold: the car came cold', 'stopTime.drive.cold', ARRIVES, 2 + 3],
    ['the same hot: 20 to warm it', 'stopTime.drive.hot', ARRIVES, 2 + 3 + 20],
    [
      'a hot tap with the gauge on',
      'clutch.forward.700.hot',
      { ...ARRIVES, temperature: 'hot', fitted: ['gaugeForward'] },
      2,
    ],
    ['air on a circuit: pan and body off', 'airTest.forward', ARRIVES, 4 + 30 + 45],
    [
      'the seal on the bench',
      'airTest.transferSeal',
      { ...ARRIVES, fitted: ['panOff', 'valveBodyOff'] },
      4 + 15,
    ],
    [
      'the engine again after the pan: 20 to refit',
      'line.park.700.cold',
      { ...ARRIVES, fitted: ['panOff', 'gaugeLine'] },
      2 + 20,
    ],
    [
      'and after the body: 60',
      'line.park.700.cold',
      { ...ARRIVES, fitted: ['panOff', 'valveBodyOff', 'gaugeLine'] },
      2 + 60,
    ],
  ] as const)('%s', (_what, id, state, minutes) => {
    expect(minutesFor(testOf(id), state)).toBe(minutes);
  });

  test('running the engine undoes what was open', () => {
    const open = stateAfter(testOf('airTest.forward'), ARRIVES);
    expect(open.fitted).toEqual(['panOff', 'valveBodyOff']);
    expect(stateAfter(testOf('line.park.700.cold'), open).fitted).toEqual(['gaugeLine']);
  });
});

describe('meaning', () => {
  const seal = {
    readings: [
      {
        test: 'clutchPressure',
        circuit: 'forward',
        engine_rpm: 700,
        temperature_C: 95,
        value: 170,
      },
      {
        test: 'clutchPressure',
        circuit: 'reverse',
        engine_rpm: 700,
        temperature_C: 95,
        value: 200,
      },
      { test: 'clutchPressure', circuit: 'high', engine_rpm: 700, temperature_C: 95, value: 392 },
      { test: 'linePressure', range: 'drive', engine_rpm: 700, temperature_C: 95, value: 600 },
    ],
  };
  test('two clutches that share a seal, both low hot, accuse the seal', () => {
    const { faults } = ask(question(seal));
    expect(faults[0]?.fault).toBe('transferSeal');
    expect(faults[0]?.probability).toBeGreaterThan(0.9);
  });
  test('the order of readings hardly matters', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(seal.readings, { minLength: 4 }), (readings) => {
        const first = ask(question(seal)).faults;
        for (const { fault, probability } of ask(question({ readings })).faults) {
          const there = first.find((one) => one.fault === fault)?.probability ?? NaN;
          // The specification allows a hundredth.
          expect(Math.abs(probability - there)).toBeLessThan(0.01);
        }
      }),
      { numRuns: 20, seed: 7 },
    );
  });
  test('a reading that no listed car gives is laid on something outside the list', () => {
    const readings = [
      { test: 'coolerFlow', range: 'park', engine_rpm: 700, temperature_C: 95, value: 0.6 },
      { test: 'linePressure', range: 'park', engine_rpm: 700, temperature_C: 95, value: 600 },
      { test: 'fluidLevel', value: 'full' },
      { test: 'gaugeFlutter', range: 'park', engine_rpm: 3000, temperature_C: 20, value: 'steady' },
      {
        test: 'clutchPressure',
        circuit: 'forward',
        engine_rpm: 700,
        temperature_C: 95,
        value: 391,
      },
    ];
    expect(ask(question({ readings })).faults[0]?.fault).toBe('unlisted');
  });
  test('no reading leaves the prior, and nothing is proposed that needs frost unless there is some', () => {
    const { faults, next } = ask(question({ readings: [] }));
    expect(faults[0]).toMatchObject({ fault: 'unlisted' });
    expect(faults[0]?.probability).toBeCloseTo(2 / 18, 9);
    expect(next.some(({ test: { id } }) => id.includes('frost'))).toBe(false);
    const frosty = ask(question({ readings: [], state: { coldMorning: true } }));
    expect(frosty.next.some(({ test: { id } }) => id.includes('frost'))).toBe(true);
  });
});

test('no request makes it throw, and a refusal names a place and says what is allowed', () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 4 }), fc.jsonValue({ maxDepth: 3 }), (readings, state) => {
      for (const given of [
        readings,
        { readings },
        { readings: [readings] },
        { readings: [], state },
      ]) {
        const read = readQuestion(given);
        if ('error' in read) expect(read.error).toMatch(/\.$/u);
      }
    }),
    { numRuns: 300, seed: 11 },
  );
});
