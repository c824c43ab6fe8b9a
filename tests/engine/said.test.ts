/** Each sentence of the engine whole, and the argument that it is about: a field on a page shows it where that was given. */
import { describe, expect, it } from 'vitest';
import {
  airTest,
  applyFaults,
  clutchPressureFor,
  CIRCUITS,
  coolant,
  FAULT_IDS,
  faultAmount,
  fluidAt,
  gapFlow,
  joinMasses,
  kinematicCSt,
  makeFluid,
  requireInRange,
  solveEngagement,
  solveSteady,
  stallSpeed,
  training,
  trainingLump,
  viscosityIndex,
  viscosityLine,
  warmedTo,
  type Circuit,
} from '../../src/engine/index.ts';
import { refused } from './refused.ts';

const spec = { kv40CSt: 30, kv100CSt: 6, density15: 850 };
const fluid = makeFluid(spec);
const gap = { width: 0.01, height: 1e-4, length: 1e-3 };
const state = { density: 850, dynamic: 0.01 };
const steady = {
  plant: training,
  fluid,
  tempC: 80,
  engineSpeed: 12,
  lineCommand: 6e5,
  clutchCommand: 4e5,
  applied: ['forward' as Circuit],
};
const masses = { first: 0.1, second: 0.5, slip: 200, torque: 50 };
const converter = { capacity: 170, stallTorqueRatio: 2 };

const said = (ask: () => unknown): readonly [argument: string, message: string] => {
  const { argument, message } = refused(ask);
  return [argument, message];
};

describe('out of range', () => {
  it.each<[string, () => unknown, string, string]>([
    [
      'a width',
      () => gapFlow({ ...gap, width: -1 }, 1e5, state),
      'Gap width',
      'Gap width is -1 m; it must be from 0 to 10 m.',
    ],
    [
      'a height',
      () => gapFlow({ ...gap, height: 1 }, 1e5, state),
      'Gap height',
      'Gap height is 1 m; it must be from 0 to 0.01 m.',
    ],
    [
      'a length',
      () => gapFlow({ ...gap, length: 0 }, 1e5, state),
      'Gap length',
      'Gap length is 0 m; it must be from 0.00001 to 10 m.',
    ],
    [
      'a difference',
      () => gapFlow(gap, 2e9, state),
      'Pressure difference',
      'Pressure difference is 2000000000 Pa; it must be from -1000000000 to 1000000000 Pa.',
    ],
    [
      'a density',
      () => gapFlow(gap, 1e5, { ...state, density: -1 }),
      'Density',
      'Density is -1 kg/m3; it must be from 0 to 20000 kg/m3.',
    ],
    [
      'a viscosity',
      () => gapFlow(gap, 1e5, { ...state, dynamic: 0 }),
      'Dynamic viscosity',
      'Dynamic viscosity is 0 Pa s; it must be from 1e-30 to 1000000 Pa s.',
    ],
    [
      'a throttle',
      () => stallSpeed(converter, 1.1, 700),
      'Throttle',
      'Throttle is 1.1; it must be from 0 to 1.',
    ],
    [
      'an idle',
      () => stallSpeed(converter, 0.5, 200),
      'Idle speed',
      'Idle speed is 200 rpm; it must be from 300 to 2000 rpm.',
    ],
    [
      'a torque',
      () => clutchPressureFor(training.clutches.forward, -1),
      'Torque',
      'Torque is -1 N m; it must be from 0 to 100000 N m.',
    ],
    [
      'an engine',
      () => solveSteady({ ...steady, engineSpeed: -1 }),
      'Engine speed',
      'Engine speed is -1 rev/s; it must be from 0 to 133.33333333333334 rev/s.',
    ],
    [
      'a line',
      () => solveSteady({ ...steady, lineCommand: 4e6 }),
      'Line pressure command',
      'Line pressure command is 4000000 Pa; it must be from 0 to 3000000 Pa.',
    ],
    [
      'a clutch',
      () => solveSteady({ ...steady, clutchCommand: -5 }),
      'Clutch pressure command',
      'Clutch pressure command is -5 Pa; it must be from 0 to 3000000 Pa.',
    ],
    [
      'a temperature',
      () => fluidAt(fluid, 150),
      'Temperature',
      'Temperature is 150 C; it must be from -30 to 140 C.',
    ],
    [
      'a thick fluid',
      () => makeFluid({ ...spec, kv40CSt: 3000 }),
      'Kinematic viscosity at 40 C',
      'Kinematic viscosity at 40 C is 3000 cSt; it must be from 2 to 2000 cSt.',
    ],
    [
      'a hot one',
      () => makeFluid({ ...spec, kv100CSt: 0 }),
      'Kinematic viscosity at 100 C',
      'Kinematic viscosity at 100 C is 0 cSt; it must be from 1 to 200 cSt.',
    ],
    [
      'a light one',
      () => makeFluid({ ...spec, density15: 700 }),
      'Density at 15 C',
      'Density at 15 C is 700 kg/m3; it must be from 800.9 to 1163.5 kg/m3.',
    ],
    [
      'two points too near',
      () => viscosityLine({ tempC: 40, kinematicCSt: 30 }, { tempC: 40.5, kinematicCSt: 29 }),
      'Distance between the two temperatures',
      'Distance between the two temperatures is 0.5 C; it must be from 1 to 400 C.',
    ],
    [
      'a severity',
      () => faultAmount('filter', 2),
      'Severity of filter',
      'Severity of filter is 2; it must be from 0 to 1.',
    ],
    [
      'no number',
      () => faultAmount('filter', Number.NaN),
      'Severity of filter',
      'Severity of filter is not a number; it must be from 0 to 1.',
    ],
    [
      'no number with a unit',
      () => fluidAt(fluid, Infinity),
      'Temperature',
      'Temperature is not a number; it must be from -30 to 140 C.',
    ],
    [
      'a step of output',
      () =>
        solveEngagement({
          plant: training,
          fluid,
          tempC: 80,
          range: 'drive',
          rangeSelection: 'electronic',
          outputStep: 2,
        }),
      'Output step',
      'Output step is 2 s; it must be from 0.0001 to 1 s.',
    ],
    [
      'a first mass',
      () => joinMasses({ ...masses, first: 0 }),
      'First inertia',
      `First inertia is 0 kg m2; it must be from ${Number.MIN_VALUE} to ${Number.MAX_VALUE} kg m2.`,
    ],
    [
      'a second mass',
      () => joinMasses({ ...masses, second: -1 }),
      'Second inertia',
      `Second inertia is -1 kg m2; it must be from ${Number.MIN_VALUE} to ${Number.MAX_VALUE} kg m2.`,
    ],
    [
      'no torque',
      () => joinMasses({ ...masses, torque: 0 }),
      'Clutch torque',
      `Clutch torque is 0 N m; it must be from ${Number.MIN_VALUE} to ${Number.MAX_VALUE} N m.`,
    ],
  ])('%s', (_what, ask, argument, message) => {
    expect(said(ask)).toEqual([argument, message]);
  });
  it('both ends are allowed', () => {
    const allowed = { name: 'Width', unit: 'mm', min: 2, max: 3 };
    expect([2, 2.5, 3].map((value) => requireInRange(value, allowed))).toEqual([2, 2.5, 3]);
    expect(said(() => requireInRange(1.999, allowed))[1]).toBe(
      'Width is 1.999 mm; it must be from 2 to 3 mm.',
    );
  });
});

describe('what cannot be', () => {
  it.each<[string, () => unknown, string, string]>([
    [
      'a converter too tight',
      () => stallSpeed({ capacity: 0, stallTorqueRatio: 2 }, 1, 700),
      'capacity',
      'With a converter capacity of 0 rpm/sqrt(N m) there is no stall speed from 0 to 6500 rpm.',
    ],
    [
      'a fluid that thickens',
      () => makeFluid({ ...spec, kv100CSt: 30 }),
      'kv100CSt',
      'Kinematic viscosity at 100 C is 30 cSt and at 40 C 30 cSt; the value at 100 C must be the smaller, since every such fluid thins as it warms.',
    ],
    [
      'an index of one',
      () => viscosityIndex(5, 6),
      'kv100CSt',
      'Kinematic viscosity at 100 C is 6 cSt and at 40 C 5 cSt; the value at 100 C must be the smaller.',
    ],
    [
      'an index below 2 cSt',
      () => viscosityIndex(5, 1.9),
      'kv100CSt',
      'Kinematic viscosity at 100 C is 1.9 cSt; the viscosity index is defined from 2 cSt upward.',
    ],
    [
      'a fluid like tar',
      () => kinematicCSt(makeFluid({ kv40CSt: 2000, kv100CSt: 2, density15: 900 }), -30),
      'tempC',
      'At -30 C this fluid would come out thicker than 20000000 cSt, beyond ASTM D341; its two published viscosities are too far apart for so low a temperature.',
    ],
    [
      'a circuit',
      () => solveSteady({ ...steady, applied: ['second' as Circuit] }),
      'applied',
      'There is no circuit called second; the circuits are forward, reverse, high.',
    ],
    [
      'a circuit twice',
      () => solveSteady({ ...steady, applied: ['high', 'high'] }),
      'applied',
      'A circuit is named twice; name each applied circuit once.',
    ],
    [
      'a fault',
      () => applyFaults(training, { torn: { severity: 1 } } as never),
      'torn',
      `There is no fault called torn; the faults are ${FAULT_IDS.join(', ')}.`,
    ],
    [
      'a fault in a circuit it has not',
      () => applyFaults(training, { filter: { severity: 1, circuit: 'high' } }),
      'filter',
      'filter does not sit in one circuit; leave the circuit out.',
    ],
    [
      'a fault in no circuit',
      () => applyFaults(training, { openPort: { severity: 1, circuit: 'low' as Circuit } }),
      'openPort',
      `There is no circuit called low; the circuits are ${CIRCUITS.join(', ')}.`,
    ],
    [
      'half a sensor',
      () => faultAmount('turbineSensor', 0.5),
      'turbineSensor',
      'Severity of turbineSensor is 0.5; it is 0 or 1, since the sensor reads falsely or it does not.',
    ],
    [
      'air on nothing',
      () => airTest(training, 'pump' as Circuit),
      'circuit',
      'There is nothing called pump to put under air; it is forward, reverse, high or transferSeal.',
    ],
    [
      'a lump as quick as the coolant',
      () =>
        warmedTo(
          { ...trainingLump, capacity: (trainingLump.loss + trainingLump.exchange) * coolant.time },
          { fluidC: 20, coolantC: 20, ambientC: 20, heat: 0, time: 1 },
        ),
      'lump',
      `A lump that answers within ${coolant.time} s answers exactly as fast as the coolant; give it another capacity.`,
    ],
  ])('%s', (_what, ask, argument, message) => {
    expect(said(ask)).toEqual([argument, message]);
  });
  it('each is an error of its own name', () => {
    try {
      faultAmount('filter', 2);
    } catch (thrown) {
      expect((thrown as Error).name).toBe('EngineError');
    }
  });
});
