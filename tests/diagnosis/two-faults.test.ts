import { describe, expect, it, test } from 'vitest';
import { applyFaults, training, type FaultSet } from '../../src/engine/index.ts';
import {
  decodeTable,
  hypothesesOf,
  isNumeric,
  nominalWarmth,
  readSubject,
  testOf,
  twoFaults,
  weigh,
  type TakenReading,
} from '../../src/diagnosis/index.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';

const hypotheses = hypothesesOf(decodeTable(keptTable));
const ASKED = [
  'stopTime.drive.hot',
  'stopTime.reverse.hot',
  'clutch.forward.700.hot',
  'clutch.reverse.700.hot',
  'clutch.high.1500.hot',
  'clutch.forward.1500.cold',
  'line.drive.700.hot',
  'line.drive.1500.hot',
  'takeoffSlip.drive.hot',
  'airTest.forward',
];

/** What the engine solves with both in the car at once; the table that is weighed has one fault a row. */
function readingsOf(faults: FaultSet): readonly TakenReading[] {
  const plant = applyFaults(training, faults);
  return ASKED.map((id) => {
    const one = testOf(id);
    if (!isNumeric(one)) throw new Error(`${id} is no number.`);
    return {
      test: one,
      value: readSubject({ plant, fluid: plant.fluid, warmth: nominalWarmth }, one),
    };
  });
}
const weighed = (faults: FaultSet) => {
  const readings = readingsOf(faults);
  return twoFaults(hypotheses, weigh(hypotheses, readings), readings);
};
const forward = (severity: number) => ({ severity, circuit: 'forward' }) as const;

describe.each<[string, FaultSet, readonly string[]]>([
  [
    'thin plates over leaking rings',
    { frictionWear: { severity: 0.7 }, sealingRings: forward(0.5) },
    ['frictionWear', 'sealingRings'],
  ],
  [
    'a worn pump behind a plug that is left out',
    { pumpWear: { severity: 0.6 }, openPort: forward(0.7) },
    ['openPort', 'pumpWear'],
  ],
])('%s', (_name, faults, both) => {
  it('is likelier as two faults than as one', () => {
    expect(weighed(faults).odds).toBeGreaterThan(3);
  });
  it('has the two that are in it on top, and shares that sum to 1', () => {
    const { pairs } = weighed(faults);
    expect(pairs[0]?.of.map(({ name }) => name).toSorted()).toEqual(both);
    expect(pairs.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  });
});

test('before any reading every pair of names is believed alike, however many circuits they may be on', () => {
  const { pairs } = twoFaults(hypotheses, weigh(hypotheses, []), []);
  const byNames = new Map<string, number>();
  for (const { of, share } of pairs) {
    const key = of
      .map(({ name }) => name)
      .toSorted()
      .join();
    byNames.set(key, (byNames.get(key) ?? 0) + share);
  }
  // The specification lists fifteen faults: 105 pairs of names.
  expect(byNames.size).toBe(105);
  for (const [names, share] of byNames) expect(share, names).toBeCloseTo(1 / 105, 9);
});

test('a sound car is not called two faults', () => {
  expect(weighed({}).odds).toBeLessThan(0.1);
});

test('nothing can be put together without the sound car', () => {
  const without = hypotheses.filter(({ of }) => of.name !== 'healthy');
  expect(() => twoFaults(without, weigh(without, []), [])).toThrow(
    'There is no healthy car in the table.',
  );
});
