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

const ends = CAN_BE.flatMap(([reading, , allowed]) =>
  (/^([\d.]+) to ([\d.]+)/.exec(allowed) ?? [])
    .slice(1)
    .map((end) => ({ ...reading, value: Number(end) })),
);
test.each(ends)('$test: $value is still allowed', (reading) => {
  expect(ask({ readings: [reading] })).not.toHaveProperty('error');
});

test.each(['95', null, 60, 106, 84.9])('a reading at %j is in no band', (temperature_C) => {
  const reading = { test: 'stopTime', range: 'drive', temperature_C, value: 0.7 };
  expect(ask({ readings: [reading] })).toMatchObject({
    error: `temperature_C is ${JSON.stringify(temperature_C)}; it must be -5 to 5 (frost), 10 to 30 (cold), 85 to 105 (hot).`,
    path: 'readings[0].temperature_C',
  });
});

test.each([-5, 5, 10, 30, 85, 105])('a reading at %d is in its band', (temperature_C) => {
  const reading = { test: 'stopTime', range: 'drive', temperature_C, value: 0.7 };
  expect(ask({ readings: [reading] })).not.toHaveProperty('error');
});

test('the one code of a list that does not count is pointed at', () => {
  const said = ask({ readings: [{ test: 'codes', value: ['P0731', 'P0420'] }] });
  expect(said).toMatchObject({
    path: 'readings[0].value[1]',
    error: '"P0420" is not among the codes that count: P0731, P0736, P0733.',
  });
});

const SET_UPS =
  'hot, cold, frost, scan, lift, gaugeLine, gaugeForward, gaugeReverse, gaugeHigh, coolerHose, panOff, valveBodyOff, sealFixture';
const KINDS =
  'codes, engineOffTurbine, fluidLevel, fluidLook, cable, solenoidCurrent, fluidCup, stopTime, takeoffSlip, linePressure, gaugeFlutter, clutchPressure, coolerFlow, panFilter, airTest, airWhere, boreVacuum';

test.each([
  [{ readings: 5 }, 'readings', 'readings is 5; it must be a list, [] for none.'],
  [{ readings: undefined }, 'readings', 'readings is nothing; it must be a list, [] for none.'],
  [
    { reading: [] },
    'reading',
    '"reading" is not known here; allowed: kind, readings, priors, state, transmission.',
  ],
  [{ readings: ['line'] }, 'readings[0]', 'A reading is "line"; it must be an object with a test.'],
  [{ readings: [[]] }, 'readings[0]', 'A reading is []; it must be an object with a test.'],
  [{ readings: [null] }, 'readings[0]', 'A reading is null; it must be an object with a test.'],
  [{ readings: [{}] }, 'readings[0].test', `test is nothing; it must be one of ${KINDS}.`],
  [
    { readings: [{ test: 'x'.repeat(80) }] },
    'readings[0].test',
    `test is "${'x'.repeat(59)}…; it must be one of ${KINDS}.`,
  ],
  [
    { readings: [{ test: 'fluidCup', value: 20, rpm: 700 }] },
    'readings[0].rpm',
    '"rpm" is not known here; allowed: test, value.',
  ],
  [
    { readings: [{ test: 'stopTime', range: 'drive', value: 1 }] },
    'readings[0].temperature_C',
    'temperature_C is missing; stopTime needs range, temperature_C, value.',
  ],
  [
    { readings: [{ test: 'airTest', circuit: 'forward' }] },
    'readings[0].value',
    'value is missing; airTest needs circuit, value.',
  ],
  [
    { readings: [{ test: 'airTest', circuit: 'line', value: 90 }] },
    'readings[0]',
    'There is no airTest under these conditions; there are airTest.forward, airTest.reverse, airTest.high, airTest.transferSeal.',
  ],
  [
    {
      readings: [
        { test: 'coolerFlow', range: 'park', engine_rpm: 700, temperature_C: 20, value: 5 },
      ],
    },
    'readings[0]',
    'There is no coolerFlow under these conditions; there are coolerFlow.park.700.hot, coolerFlow.park.1500.hot.',
  ],
  [
    { readings: [{ test: 'cable', value: 'loose' }] },
    'readings[0].value',
    'value is "loose"; it must be one of inAdjustment, out.',
  ],
  [
    { readings: [{ test: 'cable', value: ['out'] }] },
    'readings[0].value',
    'value is ["out"]; it must be one of inAdjustment, out.',
  ],
  [
    { readings: [{ test: 'codes', value: 'P0731' }] },
    'readings[0].value',
    'value is "P0731"; it must be a list of codes, [] for none.',
  ],
  [{ priors: [] }, 'priors', 'priors must be an object of names and weights.'],
  [{ priors: { seal: 1 } }, 'priors.seal', `"seal" is no fault; there are ${NAMES.join(', ')}.`],
  [
    { priors: { filter: -1 } },
    'priors.filter',
    'The weight of filter is -1; it must be a number of 0 or more.',
  ],
  [
    { priors: { filter: '1' } },
    'priors.filter',
    'The weight of filter is "1"; it must be a number of 0 or more.',
  ],
  [{ state: [] }, 'state', 'state must be an object.'],
  [{ state: 'hot' }, 'state', 'state must be an object.'],
  [
    { state: { warm: true } },
    'state.warm',
    '"warm" is not known here; allowed: temperature, fitted, coldMorning.',
  ],
  [
    { state: { temperature: 'warm' } },
    'state.temperature',
    'temperature is "warm"; it must be one of frost, cold, hot.',
  ],
  [
    { state: { fitted: 'scan' } },
    'state.fitted',
    'fitted is "scan"; it must be a list of set-ups.',
  ],
  [
    { state: { fitted: ['scan', 'hoist'] } },
    'state.fitted[1]',
    `"hoist" is no set-up; there are ${SET_UPS}.`,
  ],
  [
    { state: { coldMorning: 1 } },
    'state.coldMorning',
    'coldMorning is 1; it must be true or false.',
  ],
])('%j is refused at %s', (request, path, error) => {
  expect(ask(request)).toEqual({ error, path });
});

test('what a reading needs, in any order, and a state by parts', () => {
  expect(ask({ state: {} })).not.toHaveProperty('error');
  expect(
    ask({
      readings: [
        { value: 600, temperature_C: 95, engine_rpm: 700, range: 'park', test: 'linePressure' },
      ],
      state: { temperature: 'hot', fitted: ['gaugeLine'], coldMorning: true },
    }),
  ).not.toHaveProperty('error');
});

test('somebody has to be believed to begin with', () => {
  expect(ask({ priors: { healthy: 1 } })).not.toHaveProperty('error');
  const priors = Object.fromEntries(NAMES.map((name) => [name, 0]));
  expect(ask({ priors })).toMatchObject({
    error: 'All weights are 0; at least one must be more.',
    path: 'priors',
  });
});
