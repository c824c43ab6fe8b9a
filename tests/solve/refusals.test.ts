import { describe, expect, it } from 'vitest';
import { CIRCUITS, FAULT_IDS } from '../../src/engine/index.ts';
import { answer, answerAll } from '../../src/solve/answer.ts';
import { parseRequests } from '../../src/solve/read-requests.ts';

const fluid = { kind: 'fluid', fluid: 'standard', temperature_C: 40 };
const gap = {
  kind: 'gap',
  fluid: 'standard',
  temperature_C: 40,
  pressure_kPa: 400,
  width_mm: 14,
  height_mm: 0.1,
  length_mm: 3,
};
const steady = {
  kind: 'steady',
  temperature_C: 90,
  engine_rpm: 700,
  line_kPa: 600,
  clutch_kPa: 400,
  applied: ['forward'],
};
const air = { kind: 'airTest', circuit: 'forward' };
const engagement = {
  kind: 'engagement',
  temperature_C: 20,
  rangeSelection: 'mechanical',
  range: 'reverse',
};
const own = { kv40_cSt: 34.5, kv100_cSt: 7.4, density15_kgm3: 850 };
const without = (request: object, key: string): object =>
  Object.fromEntries(Object.entries(request).filter(([name]) => name !== key));

/** What is asked, the path the refusal must give, and what its sentence must hold: the value and what is allowed. */
const REFUSALS: readonly (readonly [string, unknown, string, readonly string[]])[] = [
  ['nothing', null, '', ['null', 'object']],
  ['a bare number', 12, '', ['12', 'object']],
  ['text', 'steady', '', ['steady', 'object']],
  ['a list in the list', [steady], '', ['a list', 'object']],
  [
    'brackets in the list',
    JSON.parse('['.repeat(4500) + ']'.repeat(4500)),
    '',
    ['a list', 'object'],
  ],
  ['no kind', {}, 'kind', ['missing', 'fluid, gap, steady', 'airTest']],
  ['a kind that is not there', { kind: 'stall' }, 'kind', ['stall', 'steady']],
  ['a kind that is no text', { kind: 3 }, 'kind', ['3', 'steady']],
  ['a kind out of JavaScript', { kind: 'constructor' }, 'kind', ['constructor']],
  [
    'an unknown key',
    { ...steady, rpm: 700 },
    'rpm',
    [
      'rpm',
      'kind, fluid, temperature_C, engine_rpm, line_kPa, clutch_kPa, applied, faults, transmission',
    ],
  ],
  [
    'a key out of JavaScript',
    JSON.parse('{"kind": "airTest", "circuit": "high", "__proto__": 1}'),
    '__proto__',
    ['kind, circuit'],
  ],
  ['several unknown keys', { ...steady, rpm: 700, psi: 80, oil: 1 }, 'rpm', ['rpm and 2 more']],
  [
    'an unknown key that goes on and on',
    { ...air, ['k'.repeat(5000)]: 1 },
    `${'k'.repeat(37)}...`,
    ['kkk...'],
  ],
  [
    'a transmission for a fluid',
    { ...fluid, transmission: {} },
    'transmission',
    ['kind, fluid, temperature_C'],
  ],
  ['a transmission for a gap', { ...gap, transmission: {} }, 'transmission', ['height_mm']],
  [
    'an unknown key of a fluid',
    { ...fluid, fluid: { ...own, vi: 190 } },
    'fluid.vi',
    ['vi', 'kv40_cSt, kv100_cSt, density15_kgm3'],
  ],
  [
    'an unknown fault',
    { ...steady, faults: { tornSeal: 1 } },
    'faults.tornSeal',
    ['tornSeal', ...FAULT_IDS],
  ],
  [
    'an unknown key of a fault',
    { ...steady, faults: { openPort: { severity: 1, where: 'high' } } },
    'faults.openPort.where',
    ['where', 'severity, circuit'],
  ],
  ['too hot', { ...steady, temperature_C: 141 }, 'temperature_C', ['141', '-30 to 140 C']],
  ['too cold', { ...gap, temperature_C: -31 }, 'temperature_C', ['-31', '-30 to 140 C']],
  [
    'one temperature of several too hot',
    { ...fluid, temperature_C: [20, 200] },
    'temperature_C.1',
    ['200', '-30 to 140 C'],
  ],
  [
    'a temperature in words',
    { ...fluid, temperature_C: '40' },
    'temperature_C',
    ['"40"', 'number'],
  ],
  ['no temperature', without(fluid, 'temperature_C'), 'temperature_C', ['missing', 'number']],
  ['NaN, which JSON cannot write', { ...steady, engine_rpm: NaN }, 'engine_rpm', ['0 to 8000 rpm']],
  ['null for a number', { ...steady, engine_rpm: null }, 'engine_rpm', ['null', '0 to 8000 rpm']],
  ['Infinity', { ...steady, line_kPa: Infinity }, 'line_kPa', ['0 to 3000 kPa']],
  ['too fast', { ...steady, engine_rpm: 8001 }, 'engine_rpm', ['8001', '0 to 8000 rpm']],
  ['line too high', { ...steady, line_kPa: 3001 }, 'line_kPa', ['3001', '0 to 3000 kPa']],
  ['clutch below nothing', { ...steady, clutch_kPa: -1 }, 'clutch_kPa', ['-1', '0 to 3000 kPa']],
  ['text for a number', { ...steady, line_kPa: '600 kPa' }, 'line_kPa', ['600 kPa', 'number']],
  ['a gap too high', { ...gap, height_mm: 11 }, 'height_mm', ['11', '0 to 10 mm']],
  ['a gap without length', { ...gap, length_mm: 0 }, 'length_mm', ['0', '0.01 to 10000 mm']],
  ['a gap below nothing', { ...gap, width_mm: -1 }, 'width_mm', ['-1', '0 to 10000 mm']],
  [
    'a circuit that is not there',
    { ...steady, applied: ['second'] },
    'applied.0',
    ['second', 'high'],
  ],
  ['a circuit twice', { ...steady, applied: ['high', 'high'] }, 'applied', ['twice']],
  ['applied that is no list', { ...steady, applied: 'forward' }, 'applied', ['"forward"', 'array']],
  ['no applied', without(steady, 'applied'), 'applied', ['missing', 'array']],
  [
    'a severity too high',
    { ...steady, faults: { filter: 1.5 } },
    'faults.filter',
    ['1.5', '0 to 1'],
  ],
  [
    'a severity too high, with its circuit',
    { ...steady, faults: { openPort: { severity: 2, circuit: 'high' } } },
    'faults.openPort.severity',
    ['2', '0 to 1'],
  ],
  [
    'a fault in a circuit that is not there',
    { ...steady, faults: { openPort: { severity: 1, circuit: 'second' } } },
    'faults.openPort.circuit',
    ['second', 'forward'],
  ],
  [
    'a circuit for a fault that sits in none',
    { ...steady, faults: { filter: { severity: 1, circuit: 'high' } } },
    'faults.filter',
    ['filter', 'leave the circuit out'],
  ],
  [
    'half a false sensor',
    { ...steady, faults: { turbineSensor: 0.5 } },
    'faults.turbineSensor',
    ['0.5', '0 or 1'],
  ],
  ['a fluid that is not there', { ...fluid, fluid: 'thick' }, 'fluid', ['thick', 'low-viscosity']],
  ['no fluid', without(fluid, 'fluid'), 'fluid', ['missing']],
  [
    'a fluid thicker hot than cold',
    { ...fluid, fluid: { ...own, kv100_cSt: 40 } },
    'fluid.kv100_cSt',
    ['40', '34.5', 'smaller'],
  ],
  [
    'a fluid too thin',
    { ...fluid, fluid: { ...own, kv40_cSt: 1 } },
    'fluid.kv40_cSt',
    ['1', '2 to 2000 cSt'],
  ],
  [
    'a fluid as light as petrol',
    { ...fluid, fluid: { ...own, density15_kgm3: 740 } },
    'fluid.density15_kgm3',
    ['740', '800.9 to 1163.5 kg/m3'],
  ],
  [
    'a fluid without density',
    { ...fluid, fluid: without(own, 'density15_kgm3') },
    'fluid.density15_kgm3',
    ['missing', '800.9 to 1163.5 kg/m3'],
  ],
  [
    'a range that is not there',
    { ...engagement, range: 'low' },
    'range',
    ['low', 'drive, reverse'],
  ],
  [
    'a lever of another sort',
    { ...engagement, rangeSelection: 'wire' },
    'rangeSelection',
    ['wire', 'electronic, mechanical'],
  ],
  ['an engagement with a speed', { ...engagement, engine_rpm: 700 }, 'engine_rpm', ['engine_rpm']],
  [
    'text that goes on and on',
    { ...air, circuit: 'x'.repeat(5000) },
    'circuit',
    ['xxx..."', ...CIRCUITS],
  ],
  [
    'brackets for a fluid',
    { ...fluid, fluid: JSON.parse('['.repeat(4500) + ']'.repeat(4500)) as unknown },
    'fluid',
    ['more than 8 deep'],
  ],
  [
    'a million temperatures',
    { ...fluid, temperature_C: new Array<number>(1e6).fill(20) },
    'temperature_C',
    ['more than 20000 values'],
  ],
  [
    'a fluid that would set like pitch, in the cold',
    { ...steady, temperature_C: -30, fluid: { kv40_cSt: 2000, kv100_cSt: 1, density15_kgm3: 850 } },
    'temperature_C',
    ['-30', '20000000 cSt'],
  ],
  [
    'the same at one temperature of two',
    {
      ...fluid,
      temperature_C: [100, -30],
      fluid: { kv40_cSt: 2000, kv100_cSt: 1, density15_kgm3: 850 },
    },
    'temperature_C.1',
    ['-30', '20000000 cSt'],
  ],
  [
    'no transmission',
    { ...air, transmission: null },
    'transmission',
    ['object', 'pump', 'applyChart'],
  ],
  [
    'an unknown part',
    { ...air, transmission: { gears: 6 } },
    'transmission.gears',
    ['gears', 'ratios'],
  ],
  [
    'an unknown key of a part',
    { ...air, transmission: { pump: { size: 6 } } },
    'transmission.pump.size',
    ['size', 'displacement_cm3, slip'],
  ],
  [
    'a part out of range',
    { ...steady, transmission: { pump: { slip: 2 } } },
    'transmission.pump.slip',
    ['Pump slip coefficient is 2', '0 to 0.0000015'],
  ],
  [
    'a part in words',
    { ...steady, transmission: { feed: { hole_mm: '1,9 mm' } } },
    'transmission.feed.hole_mm',
    ['"1,9 mm"', 'a number from 0.3 to 10 mm'],
  ],
  [
    'several parts at once, each named',
    { ...steady, transmission: { pump: { slip: 2 }, feed: { hole_mm: 'wide' }, gears: 6 } },
    'transmission.gears',
    ['Pump slip coefficient is 2', '"wide"', 'no key gears'],
  ],
  [
    'a clutch that never applies',
    { ...engagement, transmission: { clutches: { high: { spring_N: 9000 } } } },
    'transmission.clutches.high',
    ['9000 N', 'high', '250 kPa'],
  ],
  [
    'a fluid of its own thicker hot than cold, on the sheet',
    { ...air, transmission: { fluid: { ...own, kv100_cSt: 40 } } },
    'transmission.fluid.kv100_cSt',
    ['40', '34.5', 'smaller'],
  ],
  ['air on something else', { ...air, circuit: 'pump' }, 'circuit', ['pump', 'transferSeal']],
  ['air without a place', without(air, 'circuit'), 'circuit', ['missing', 'transferSeal']],
];

describe('a bad request', () => {
  it.each(REFUSALS)('%s', (_name, request, path, words) => {
    const got = answer(request);
    expect(Object.keys(got)).toEqual(['error', 'path']);
    const { error, path: where } = got as { error: string; path: string };
    expect(where).toBe(path);
    for (const word of words) expect(error).toContain(word);
    // A sentence: starts like one, ends like one, and no program's stammer in it.
    expect(error).toMatch(/^\S.*\.$/);
    expect(error).not.toMatch(/undefined|\[object|Invalid input|ZodError|NaN/);
  });
});

describe('a number that no computer holds', () => {
  const refusal = (text: string) => {
    const given = parseRequests('here', text);
    if ('error' in given) throw new Error(given.error);
    return answerAll(given.requests).answers[0];
  };
  it('is refused as it was written', () => {
    const text = JSON.stringify(steady);
    expect(refusal(text.replace('"engine_rpm":700', '"engine_rpm":1e999'))).toEqual({
      error: 'engine_rpm is 1e999; it must be a number from 0 to 8000 rpm.',
      path: 'engine_rpm',
    });
    expect(refusal(text.replace('"line_kPa":600', '"line_kPa":-17E+9999'))).toMatchObject({
      error: expect.stringContaining('line_kPa is -17E+9999; it must') as unknown,
    });
    const sheet = JSON.stringify({ ...air, transmission: { pump: { slip: 7 } } });
    expect(refusal(sheet.replace(':7', ':1e400'))).toEqual({
      error: 'transmission.pump.slip is 1e400; it must be a number from 0 to 0.0000015.',
      path: 'transmission.pump.slip',
    });
    const named = JSON.stringify({ ...air, transmission: { name: 7 } });
    expect(refusal(named.replace(':7', ':1e400'))).toMatchObject({ path: 'transmission.name' });
  });
  it('is left alone where it is only text', () => {
    expect(refusal(JSON.stringify({ ...air, circuit: 'say "1e999"' }))).toMatchObject({
      error: expect.stringContaining('circuit is "say \\"1e999\\""; it must') as unknown,
    });
  });
});
