import { describe, expect, it } from 'vitest';
import {
  CIRCUITS,
  FAULT_IDS,
  airTest,
  applyFaults,
  clutchPressureFor,
  faultAmount,
  faultSeverity,
  fluidAt,
  fluidClasses,
  gapFlow,
  training,
  kinematicCSt,
  makeFluid,
  solveSteady,
  viscosityIndex,
  viscosityLine,
} from '../../src/engine/index.ts';
import type { Circuit, FaultSet, SteadyRequest } from '../../src/engine/index.ts';
import { refused } from './refused.ts';

const fluid = makeFluid(fluidClasses.standard);
const spec = { kv40CSt: 30, kv100CSt: 6, density15: 850 };
const gap = { width: 0.01, height: 1e-4, length: 1e-3 };
const state = { density: 850, dynamic: 0.01 };
const request: SteadyRequest = {
  plant: training,
  fluid,
  tempC: 80,
  engineSpeed: 12,
  lineCommand: 6e5,
  clutchCommand: 4e5,
  applied: ['forward'],
};
const at1 = { tempC: 40, kinematicCSt: 30 };

/** Each: what is asked with a value, one value too low, one too high, and both ends as the sentence must name them. */
const RANGES: readonly (readonly [string, (value: number) => unknown, number, number, string])[] = [
  ['temperature of a fluid', (v) => fluidAt(fluid, v), -30.1, 140.1, '-30 to 140 C'],
  ['temperature, kinematic', (v) => kinematicCSt(fluid, v), -31, 141, '-30 to 140 C'],
  ['temperature, steady', (v) => solveSteady({ ...request, tempC: v }), -40, 150, '-30 to 140 C'],
  ['kv40', (v) => makeFluid({ ...spec, kv40CSt: v }), 1.9, 2001, '2 to 2000 cSt'],
  ['kv100', (v) => makeFluid({ ...spec, kv100CSt: v }), 0.9, 201, '1 to 200 cSt'],
  ['density', (v) => makeFluid({ ...spec, density15: v }), 800, 1164, '800.9 to 1163.5 kg/m3'],
  ['viscosity index, kv40', (v) => viscosityIndex(v, 6), 1, 2001, '2 to 2000 cSt'],
  ['viscosity index, kv100', (v) => viscosityIndex(30, v), 0.5, 201, '1 to 200 cSt'],
  [
    'viscosity of a line',
    (v) => viscosityLine({ tempC: 20, kinematicCSt: v }, at1),
    0.2,
    2.1e7,
    '0.21 to 20000000 cSt',
  ],
  [
    'warmer point of a line',
    (v) => viscosityLine(at1, { tempC: at1.tempC + v, kinematicCSt: 6 }),
    0.5,
    400.5,
    '1 to 400 C',
  ],
  ['gap width', (v) => gapFlow({ ...gap, width: v }, 1e5, state), -1e-9, 10.1, '0 to 10 m'],
  ['gap height', (v) => gapFlow({ ...gap, height: v }, 1e5, state), -1e-9, 0.011, '0 to 0.01 m'],
  ['gap length', (v) => gapFlow({ ...gap, length: v }, 1e5, state), 0, 11, '0.00001 to 10 m'],
  ['engine speed', (v) => solveSteady({ ...request, engineSpeed: v }), -1, 134, 'rev/s'],
  [
    'line command',
    (v) => solveSteady({ ...request, lineCommand: v }),
    -1,
    3.1e6,
    '0 to 3000000 Pa',
  ],
  [
    'clutch command',
    (v) => solveSteady({ ...request, clutchCommand: v }),
    -1,
    3.1e6,
    '0 to 3000000 Pa',
  ],
  ['torque', (v) => clutchPressureFor(training.clutches.forward, v), -1, 1.1e5, '0 to 100000 N m'],
  ['severity', (v) => faultAmount('transferSeal', v), -0.01, 1.01, '0 to 1'],
  [
    'severity of faults',
    (v) => applyFaults(training, { filter: { severity: v } }),
    -0.1,
    2,
    '0 to 1',
  ],
  ['amount', (v) => faultSeverity('sealingRings', v), 24, 121, '25 to 120 um'],
];

describe.each(RANGES)('%s', (_name, ask, low, high, words) => {
  it.each([low, high])('%d is refused with the value and both ends in words', (value) => {
    const sentence = refusal(() => ask(value));
    expect(sentence).toContain(String(value));
    expect(sentence.replace('1e-5', '0.00001')).toContain(words);
    expect(sentence).toMatch(/\.$/);
  });
  it.each([Number.NaN, Infinity, -Infinity])('%d never gets in', (value) => {
    expect(refusal(() => ask(value))).toContain('not a number');
  });
});

const refusal = (ask: () => unknown): string => refused(ask).message;

describe('what no range can say', () => {
  it('a fluid thicker hot than cold, with both values', () => {
    expect(refusal(() => makeFluid({ ...spec, kv100CSt: 30 }))).toMatch(/30 cSt.*smaller/);
    expect(refusal(() => makeFluid({ ...spec, kv40CSt: 5 }))).toMatch(/6 cSt.*5 cSt.*smaller/);
    expect(refusal(() => viscosityIndex(5, 6))).toMatch(/6 cSt.*5 cSt.*smaller/);
  });
  it('a circuit that is not there, or named twice', () => {
    const ask = (applied: unknown) => () =>
      solveSteady({ ...request, applied: applied as Circuit[] });
    for (const name of CIRCUITS) expect(refusal(ask(['second']))).toContain(name);
    expect(refusal(ask(['forward', 'forward']))).toContain('twice');
  });
  it('a fault that is not there, with the list of those that are', () => {
    const faults = { tornSeal: { severity: 1 } } as unknown as FaultSet;
    const sentence = refusal(() => applyFaults(training, faults));
    for (const id of FAULT_IDS) expect(sentence).toContain(id);
  });
  it('a circuit for a fault that sits in none, and a wrong one for a fault that does', () => {
    expect(
      refusal(() => applyFaults(training, { filter: { severity: 1, circuit: 'high' } })),
    ).toContain('leave the circuit out');
    const wrong = { openPort: { severity: 1, circuit: 'second' } } as unknown as FaultSet;
    expect(refusal(() => applyFaults(training, wrong))).toContain('forward, reverse, high');
  });
  it('half a false sensor', () => {
    expect(refusal(() => faultAmount('turbineSensor', 0.5))).toMatch(/0\.5.*0 or 1/);
  });
  it('an air test of something else', () => {
    expect(refusal(() => airTest(training, 'pump' as Circuit))).toContain('transferSeal');
  });
});
