import { describe, expect, it } from 'vitest';
import {
  CIRCUITS,
  commandsAt,
  parseSheet,
  plantFromSheet,
  secondTraining,
  training,
  trainingSheet,
} from '../../../src/engine/index.ts';

/** The paper's section 12 in SI, converted by hand. */
describe('the training transmission is the paper’s', () => {
  it('pump, line and feed', () => {
    expect(training.pump).toEqual({
      displacement: 17e-6,
      slip: 3e-8,
      suctionResistance: 3.4e8,
      suctionLimit: 60e3,
    });
    expect(training.lineClearances).toEqual({ width: 0.4, height: 38e-6, length: 4e-3 });
    expect(training.bleedArea).toBeCloseTo((Math.PI * 1.6e-3 ** 2) / 4, 15);
    expect(training.feed.area).toBeCloseTo((Math.PI * 1.9e-3 ** 2) / 4, 15);
    // Hagen-Poiseuille: 128 L / (pi d^4) of a 5 mm bore 0.31 m long, which the paper rounds to 2e10.
    expect(training.feed.passage / ((128 * 0.31) / (Math.PI * 5e-3 ** 4))).toBeCloseTo(1, 1);
    expect(training.feed.band).toBe(20e3);
    expect(training.cooler).toEqual({ pressure: 400e3, resistance: 6.3e11 });
    expect(training.sump).toEqual({ fill: 8e-3, spare: 0.5e-3, pullDown: 0.25e-6 });
  });
  it('clutches, rings, seal and drive', () => {
    for (const circuit of CIRCUITS) {
      expect(training.clutches[circuit]).toEqual({
        area: 85e-4,
        springForce: 900,
        strokeVolume: 30e-6,
        compliance: 1e-10,
        faces: 10,
        meanRadius: 0.065,
        friction: 0.13,
      });
      expect(training.leaks[circuit].rings).toEqual({ width: 0.377, height: 25e-6, length: 2e-3 });
      expect(training.leaks[circuit].transferSeal.width).toBe(circuit === 'high' ? 0 : 0.014);
    }
    expect(training.drive).toMatchObject({
      capacity: 170,
      stallTorqueRatio: 2,
      engineInertia: 0.18,
      turbineInertia: 0.035,
      idleRpm: 700,
      ratios: { forward: 4, reverse: 3.4, high: 1.5 },
      finalDrive: 3.5,
      wheelRadius: 0.35,
      mass: 2000,
      drag: 150,
    });
  });
  it('commands, Reverse times 1.3', () => {
    expect(commandsAt(training, 'idle', 'forward')).toEqual({
      engineRpm: 700,
      line: 600e3,
      clutch: 400e3,
    });
    expect(commandsAt(training, 'load', 'high')).toEqual({
      engineRpm: 1500,
      line: 1000e3,
      clutch: 800e3,
    });
    expect(commandsAt(training, 'idle', 'reverse')).toEqual({
      engineRpm: 700,
      line: 780e3,
      clutch: 520e3,
    });
    expect(commandsAt(training, 'load', 'reverse')).toEqual({
      engineRpm: 1500,
      line: 1300e3,
      clutch: 1040e3,
    });
    // 620 and 420 kPa times 1.4.
    expect(commandsAt(secondTraining, 'idle', 'reverse').line).toBeCloseTo(868e3, 6);
    expect(commandsAt(secondTraining, 'idle', 'reverse').clutch).toBeCloseTo(588e3, 6);
  });
});

it('a clutch of its own stands over the one that all share, and the others stay', () => {
  const plant = plantFromSheet(parseSheet({ clutches: { reverse: { area_cm2: 120, faces: 12 } } }));
  expect(plant.clutches.reverse).toEqual({ ...training.clutches.reverse, area: 120e-4, faces: 12 });
  expect(plant.clutches.forward).toEqual(training.clutches.forward);
  expect(plant.healthy.clutches).toEqual(plant.clutches);
});

it('a fluid of its own is the one it is filled with', () => {
  const fluid = { kv40_cSt: 34, kv100_cSt: 7, density15_kgm3: 860 };
  expect(plantFromSheet({ ...trainingSheet, fluid }).fluid).toEqual({
    kv40CSt: 34,
    kv100CSt: 7,
    density15: 860,
  });
  // Generic low-viscosity class as the paper lists it.
  expect(training.fluid).toEqual({ kv40CSt: 29.6, kv100CSt: 6, density15: 845 });
});
