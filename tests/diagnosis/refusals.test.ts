/** What a request for a diagnosis may not say. Ranges and bands are those of the planner's specification, written out again. */
import { expect, test } from 'vitest';
import { NAMES } from '../../src/diagnosis/index.ts';
import { answer } from '../../src/solve/answer.ts';

const hot = { temperature_C: 95 };
const CAN_BE: readonly (readonly [object, readonly unknown[], string])[] = [
  [{ test: 'linePressure', range: 'drive', engine_rpm: 700, ...hot }, [-1, 3001], '0 to 3000 kPa'],
  [
    { test: 'clutchPressure', circuit: 'forward', engine_rpm: 700, ...hot },
    [-0.1, 3000.1, '400', null],
    '0 to 3000 kPa',
  ],
  [
    { test: 'stopTime', range: 'drive', ...hot },
    [-1, 61],
    '0 to 60 s, or null where it did not stop',
  ],
  [{ test: 'takeoffSlip', range: 'drive', ...hot }, [-1, 10_001], '0 to 10000 rpm'],
  [{ test: 'coolerFlow', range: 'park', engine_rpm: 1500, ...hot }, [-1, 101], '0 to 100 L/min'],
  [{ test: 'airTest', circuit: 'forward' }, [-1, 101], '0 to 100 %'],
  [{ test: 'engineOffTurbine' }, [-1, 10_001], '0 to 10000 rpm'],
  [{ test: 'fluidCup' }, [0.9, 3001], '1 to 3000 cSt'],
];
const cases = CAN_BE.flatMap(([reading, values, allowed]) =>
  values.map((value) => ({ reading: { ...reading, value }, value, allowed })),
);
const ask = (request: object) => answer({ kind: 'diagnosis', readings: [], ...request });

test.each(cases)('$reading is refused with what it may be', ({ reading, value, allowed }) => {
  expect(ask({ readings: [reading] })).toMatchObject({
    error: `value is ${JSON.stringify(value)}; it must be ${allowed}.`,
    path: 'readings[0].value',
  });
});

test.each(['95', null, 60, 106, 84.9])('a reading at %j is in no band', (temperature_C) => {
  const reading = { test: 'stopTime', range: 'drive', temperature_C, value: 0.7 };
  expect(ask({ readings: [reading] })).toMatchObject({
    error: `temperature_C is ${JSON.stringify(temperature_C)}; it must be -5 to 5 (frost), 10 to 30 (cold), 85 to 105 (hot).`,
    path: 'readings[0].temperature_C',
  });
});

test('the one code of a list that does not count is pointed at', () => {
  const said = ask({ readings: [{ test: 'codes', value: ['P0731', 'P0420'] }] });
  expect(said).toMatchObject({
    path: 'readings[0].value[1]',
    error: expect.stringMatching(/^"P0420" is not among the codes that count: P07/) as string,
  });
});

test('somebody has to be believed to begin with', () => {
  expect(ask({ priors: { healthy: 1 } })).not.toHaveProperty('error');
  const priors = Object.fromEntries(NAMES.map((name) => [name, 0]));
  expect(ask({ priors })).toMatchObject({
    error: 'All weights are 0; at least one must be more.',
    path: 'priors',
  });
});
