import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CIRCUITS,
  airGapFlow,
  airTest,
  applyFaults,
  BENCH_AIR,
  AIR_GAS_CONSTANT,
  ATMOSPHERE_PA,
  fluidAt,
  fluidClasses,
  gapFlow,
  gearbox,
  holeArea,
  holeFlow,
  makeFluid,
  solveSteady,
} from '../../src/engine/index.ts';
import type { Circuit, FaultSet, SteadyRequest } from '../../src/engine/index.ts';
import { SEED, faultSets, fluids, requests, severity, tempsC } from './arbitraries.ts';

const runs = { seed: SEED, numRuns: 400 };
// Two solves of nearly the same plant agree to rounding: pressures are found to the last bits of a double.
const SAME = 1 + 1e-9;

/** The request as it stands and with one more fault (which wins over the same fault in it). */
function withFaults(request: SteadyRequest, ...sets: FaultSet[]): SteadyRequest {
  return { ...request, plant: sets.reduce((plant, set) => applyFaults(plant, set), gearbox) };
}

describe('more gap, not more pressure', () => {
  const growing = [
    ['transferSeal', undefined],
    ...(['sealingRings', 'pistonSeal', 'openPort'] as const).flatMap((id) =>
      CIRCUITS.map((circuit) => [id, circuit] as const),
    ),
    ['regulatorBore', undefined],
    ['pumpWear', undefined],
  ] as const;
  it.each(growing)('%s (%s)', (id, circuit) => {
    fc.assert(
      fc.property(requests, faultSets, severity, severity, (request, others, s1, s2) => {
        const at = (value: number) =>
          solveSteady(
            withFaults(request, others, {
              [id]: circuit === undefined ? { severity: value } : { severity: value, circuit },
            }),
          );
        const less = at(Math.min(s1, s2));
        const more = at(Math.max(s1, s2));
        if (more.linePressure > less.linePressure * SAME) return false;
        return request.applied.every(
          (name) =>
            (more.circuits[name]?.pressure ?? 0) <= (less.circuits[name]?.pressure ?? 0) * SAME,
        );
      }),
      { ...runs, numRuns: 150 },
    );
  });

  it('and where it matters it is less, by far: a split seal on a hot idle', () => {
    const at = (value: number, tempC: number) =>
      solveSteady({
        plant: applyFaults(gearbox, { transferSeal: { severity: value } }),
        fluid: makeFluid(fluidClasses['low-viscosity']),
        tempC,
        engineSpeed: 700 / 60,
        lineCommand: 600e3,
        clutchCommand: 400e3,
        applied: ['forward'],
      }).circuits.forward?.pressure ?? Number.NaN;
    expect(at(0.5, 100)).toBeLessThan(0.6 * at(0, 100));
    expect(at(0.5, 0)).toBeGreaterThan(0.95 * at(0, 0));
  });
});

describe('hot fluid', () => {
  it('leaks more through a gap at the same pressure, for any fluid, gap and pressure', () => {
    const size = fc.integer({ min: 1, max: 400 });
    fc.assert(
      fc.property(fluids, tempsC, tempsC, size, size, (fluid, t1, t2, um, kPa) => {
        fc.pre(Math.abs(t1 - t2) > 0.01);
        const gap = { width: 0.014, height: um / 1e6, length: 3e-3 };
        const at = (tempC: number) => gapFlow(gap, kPa * 5e3, fluidAt(fluid, tempC)).flow;
        return at(Math.max(t1, t2)) > at(Math.min(t1, t2));
      }),
      { ...runs, numRuns: 1000 },
    );
  });

  it('20 to 100 C: about 11 times through a thin gap, 1.03 times through a hole', () => {
    const fluid = makeFluid({ kv40CSt: 34.5, kv100CSt: 7.4, density15: 850 });
    const gap = (um: number, tempC: number) =>
      gapFlow({ width: 0.014, height: um / 1e6, length: 3e-3 }, 4e5, fluidAt(fluid, tempC));
    const ratio = (um: number) => gap(um, 100).flow / gap(um, 20).flow;
    expect(ratio(20)).toBeGreaterThan(10.9);
    expect(ratio(20)).toBeLessThan(11.1);
    const hole = (tempC: number) => {
      const { density, kinematic } = fluidAt(fluid, tempC);
      return holeFlow(holeArea(2e-3), 4e5, density, kinematic);
    };
    expect(hole(100) / hole(20)).toBeGreaterThan(1.03);
    expect(hole(100) / hole(20)).toBeLessThan(1.035);
    // A wide crack stands between the two: the wider, the more like a hole.
    expect(ratio(20)).toBeGreaterThan(ratio(100));
    expect(ratio(100)).toBeGreaterThan(ratio(400));
    expect(ratio(400)).toBeLessThan(3);
    expect(gap(20, 100).viscousShare).toBeGreaterThan(0.99);
    expect(gap(400, 100).viscousShare).toBeLessThan(0.1);
  });
});

describe('which range it hurts', () => {
  it('high does not notice the transfer seal, to the last bit', () => {
    fc.assert(
      fc.property(requests, faultSets, severity, (request, others, value) => {
        const alone = { ...request, applied: ['high'] as const };
        const sound = solveSteady(withFaults(alone, others, { transferSeal: { severity: 0 } }));
        const split = solveSteady(withFaults(alone, others, { transferSeal: { severity: value } }));
        expect(split).toEqual(sound);
      }),
      runs,
    );
  });

  it('forward and reverse suffer from it alike', () => {
    fc.assert(
      fc.property(requests, severity, (request, value) => {
        const at = (circuit: Circuit) =>
          solveSteady({
            ...withFaults(request, { transferSeal: { severity: value } }),
            applied: [circuit],
          }).circuits[circuit];
        expect(at('reverse')).toEqual(at('forward'));
      }),
      runs,
    );
  });
});

describe('engine speed', () => {
  it('never costs pressure', () => {
    fc.assert(
      fc.property(requests, fc.integer({ min: 0, max: 1000 }), (request, more) => {
        const faster = Math.min(8000 / 60, request.engineSpeed * (1 + more / 1000));
        const slow = solveSteady(request);
        const fast = solveSteady({ ...request, engineSpeed: faster });
        if (fast.linePressure * SAME < slow.linePressure) return false;
        return request.applied.every(
          (name) =>
            (fast.circuits[name]?.pressure ?? 0) * SAME >= (slow.circuits[name]?.pressure ?? 0),
        );
      }),
      runs,
    );
  });

  it('at rest there is no pressure and no flow, whatever is wrong', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const still = solveSteady({ ...request, engineSpeed: 0 });
        expect(still.linePressure).toBe(0);
        expect(still.status.converged).toBe(true);
        for (const flow of [
          still.pumpFlow,
          still.clearances,
          still.regulatorLoss,
          still.leftOver,
        ]) {
          expect(Math.abs(flow)).toBe(0);
        }
        for (const name of request.applied) {
          expect(still.circuits[name]).toMatchObject({ pressure: 0, feed: 0, leak: 0, holds: 0 });
        }
      }),
      runs,
    );
  });

  it('no command, no pressure', () => {
    fc.assert(
      fc.property(requests, (request) => {
        expect(solveSteady({ ...request, lineCommand: 0 }).linePressure).toBe(0);
        const open = solveSteady({ ...request, clutchCommand: 0 });
        for (const name of request.applied) expect(open.circuits[name]?.pressure).toBe(0);
      }),
      runs,
    );
  });
});

describe('air finds cold what fluid hides', () => {
  const cold = fluidAt(makeFluid(fluidClasses['low-viscosity']), 20);
  it.each([10, 15, 20, 25])(
    'a crack of %d um: over a thousand times the flow of 20 C fluid',
    (um) => {
      const gap = { width: 0.014, height: um / 1e6, length: 3e-3 };
      // Air counted as it leaves, in free litres, as the ear and a meter on the bench have it. Thinner by 3000 times, and
      // it expands 3.7 times on the way; near the choked limit less.
      const freeDensity = ATMOSPHERE_PA / (AIR_GAS_CONSTANT * BENCH_AIR.tempK);
      const air = airGapFlow(gap, BENCH_AIR) / freeDensity;
      expect(air / gapFlow(gap, 275e3, cold).flow).toBeGreaterThan(1000);
    },
  );

  it('a split seal that costs under 5 % of pressure cold passes grams of air a second', () => {
    const plant = applyFaults(gearbox, { transferSeal: { severity: 0.5 } });
    const request = {
      fluid: makeFluid(fluidClasses['low-viscosity']),
      tempC: 0,
      engineSpeed: 700 / 60,
      lineCommand: 600e3,
      clutchCommand: 400e3,
      applied: ['forward'] as const,
    };
    const sound = solveSteady({ ...request, plant: gearbox }).circuits.forward?.pressure ?? 0;
    const split = solveSteady({ ...request, plant }).circuits.forward?.pressure ?? 0;
    expect(split).toBeGreaterThan(0.95 * sound);
    expect(airTest(gearbox, 'transferSeal')).toBe(0);
    expect(airTest(plant, 'transferSeal')).toBeGreaterThan(1e-3);
    // The circuit's own test does not see it: it is blown on its own.
    expect(airTest(plant, 'forward')).toBe(airTest(gearbox, 'forward'));
  });

  it.each(['sealingRings', 'pistonSeal', 'openPort'] as const)(
    '%s shows in its own circuit and in no other',
    (id) => {
      const plant = applyFaults(gearbox, { [id]: { severity: 0.5, circuit: 'reverse' } });
      // All choked, so areas tell: sound rings 9.4 mm2; half a fault adds 1.8 mm2 of port, 3 of piston seal or 18 of rings.
      expect(airTest(plant, 'reverse')).toBeGreaterThan(1.18 * airTest(gearbox, 'reverse'));
      for (const target of ['forward', 'high', 'transferSeal'] as const) {
        expect(airTest(plant, target)).toBe(airTest(gearbox, target));
      }
    },
  );

  it('and more crack never passes less air', () => {
    fc.assert(
      fc.property(severity, severity, (s1, s2) => {
        const at = (value: number) =>
          airTest(applyFaults(gearbox, { pistonSeal: { severity: value } }), 'forward');
        return at(Math.max(s1, s2)) >= at(Math.min(s1, s2));
      }),
      runs,
    );
  });
});
