import { expect, test } from 'vitest';
import { caseFile } from '../../src/cases/case-file.ts';
import { writtenCases } from '../../src/cases/written.ts';
import { isNumeric, TESTS } from '../../src/diagnosis/index.ts';
import gauge from '../truth/gauge.json' with { type: 'json' };

const files = writtenCases().map(caseFile);

test('a case file holds a reading for every test, and survives being sent', () => {
  for (const file of files) {
    expect(Object.keys(file.readings)).toEqual(TESTS.map(({ id }) => id));
    expect(JSON.parse(JSON.stringify(file))).toEqual(file);
  }
});

test('it is small enough for a phone: under 9 kB before it is packed', () => {
  for (const file of files) expect(JSON.stringify(file).length).toBeLessThan(9000);
});

test('every number comes with what a sound car reads, as an independent program has it', () => {
  const sound: Readonly<Record<string, number>> = files[0]?.sound ?? {};
  expect(Object.keys(sound)).toEqual(TESTS.filter(isNumeric).map(({ id }) => id));
  // The fourth car of the gauge bench is sound: taps of the three clutches, cold, at 700 and at 1500 rpm [kPa], of which four figures are kept.
  const taps = gauge[3] ?? [];
  const cold = (circuit: string) =>
    [700, 1500].map((rpm) => sound[`clutch.${circuit}.${rpm}.cold`]);
  for (const [circuit, at] of [
    ['forward', 16],
    ['reverse', 20],
    ['high', 24],
  ] as const)
    expect(cold(circuit)).toEqual(taps.slice(at, at + 2).map((kPa) => Number(kPa.toPrecision(4))));
});
