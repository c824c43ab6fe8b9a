/** Readings in the units of a shop, against what the command line answers in its own. */
import { describe, expect, it, test } from 'vitest';
import {
  clutchKpa,
  crackFault,
  inEachRange,
  makeCar,
  oneFault,
  readingOf,
  severityOf,
  sitsInOneCircuit,
  soundCar,
  type Car,
} from '../../src/car/index.ts';
import { circuitFlows } from '../../src/car/circuit-flows.ts';
import { letsGo, letsGoAtC, letsGoWhere } from '../../src/car/lets-go.ts';
import { needOf, needs } from '../../src/car/need.ts';
import { CIRCUITS, training, type Circuit } from '../../src/engine/index.ts';
import { steady } from '../solve/steady.ts';

const hot = (car: Car, more = {}) => readingOf(car, { tempC: 95, ...more });
const cracked = makeCar({ crackMm: 0.25 });

describe('one reading', () => {
  it('is what the command line answers, in kPa, L/min and N·m', () => {
    const said = steady({ applied: ['forward'], faults: { transferSeal: 0.625 } });
    const found = hot(cracked);
    const forward = said.circuits['forward'];
    expect(found.lineKpa).toBeCloseTo(said.line_kPa, 6);
    expect(found.clutches.forward.kPa).toBeCloseTo(forward?.pressure_kPa ?? NaN, 6);
    expect(found.clutches.forward.leakLmin).toBeCloseTo(forward?.leak_Lmin ?? NaN, 6);
    expect([found.engineRpm, found.lineCommandKpa, found.clutchCommandKpa]).toEqual([
      700, 600, 400,
    ]);
  });
  it('adds up: what the pump delivers goes where it is said to go', () => {
    const found = hot(cracked);
    const { rings, transferSeal, pistonSeal, hardLip, openPort } = found.clutches.forward.leaksLmin;
    expect(rings + transferSeal + pistonSeal + hardLip + openPort).toBeCloseTo(
      found.clutches.forward.leakLmin,
      9,
    );
    expect(found.clutches.forward.feedLmin).toBeCloseTo(found.clutches.forward.leakLmin, 6);
    expect(found.intakeLmin - found.slipLmin).toBeCloseTo(found.pumpLmin, 9);
    expect(
      found.clearancesLmin +
        found.bleedLmin +
        found.boreLmin +
        found.clutches.forward.feedLmin +
        found.leftOverLmin,
    ).toBeCloseTo(found.pumpLmin, 6);
    // 700 turns a minute of the pump's displacement.
    expect(found.fullLmin).toBeCloseTo(training.pump.displacement * 1e3 * 700, 9);
    expect(found.coolerLmin).toBeLessThanOrEqual(found.leftOverLmin);
  });
  it('of a clutch that is not on is nothing, wherever one looks', () => {
    const nothing = {
      ...{ kPa: 0, feedLmin: 0, leakLmin: 0, holdsNm: 0 },
      leaksLmin: { rings: 0, transferSeal: 0, pistonSeal: 0, hardLip: 0, openPort: 0 },
    };
    expect(hot(soundCar).clutches.reverse).toEqual(nothing);
    expect(hot(soundCar).clutches.high).toEqual(nothing);
    const park = hot(soundCar, { applied: [] });
    expect(CIRCUITS.map((circuit) => park.clutches[circuit])).toEqual([nothing, nothing, nothing]);
  });
  it('is taken at the commands of its point and range unless it is asked otherwise', () => {
    // Idle 600 and 400, load 1000 and 800 kPa; Reverse a third more and again: 1.3 times.
    expect(hot(soundCar, { point: 'load' })).toMatchObject({
      engineRpm: 1500,
      lineCommandKpa: 1000,
      clutchCommandKpa: 800,
    });
    const reverse = hot(soundCar, { circuit: 'reverse' });
    expect(reverse.lineCommandKpa).toBeCloseTo(780, 9);
    expect(reverse.clutchCommandKpa).toBeCloseTo(520, 9);
    expect(hot(soundCar, { engineRpm: 900, lineKpa: 500, clutchKpa: 300 })).toMatchObject({
      engineRpm: 900,
      lineCommandKpa: 500,
      clutchCommandKpa: 300,
    });
  });
  it('of a tap, and in each range one clutch at a time', () => {
    expect(clutchKpa(cracked, { tempC: 95, circuit: 'reverse' })).toBe(
      hot(cracked, { circuit: 'reverse' }).clutches.reverse.kPa,
    );
    expect(clutchKpa(cracked, { tempC: 95 })).toBe(hot(cracked).clutches.forward.kPa);
    const ranges = inEachRange(cracked, { tempC: 95 });
    for (const circuit of CIRCUITS) {
      expect(ranges[circuit]).toEqual(hot(cracked, { circuit }));
      expect(ranges[circuit].clutches[circuit].kPa).toBeGreaterThan(0);
    }
  });
});

test('the drawing of a circuit shows that circuit', () => {
  const reading = hot(cracked, { circuit: 'reverse' });
  expect(circuitFlows(reading, 'reverse')).toEqual({
    pump: reading.pumpLmin,
    clearances: reading.clearancesLmin,
    feed: reading.clutches.reverse.feedLmin,
    rings: reading.clutches.reverse.leaksLmin.rings,
    crack: reading.clutches.reverse.leaksLmin.transferSeal,
    leftOver: reading.leftOverLmin,
  });
  expect(circuitFlows(reading, 'forward')).toMatchObject({ feed: 0, rings: 0, crack: 0 });
});

describe('a car as described', () => {
  it('a crack by its height: 0.4 mm is the worst, so 0.25 is 0.625 of it', () => {
    expect(crackFault(0.25).transferSeal?.severity).toBeCloseTo(0.625, 9);
    expect(cracked.plant.leaks.forward.transferSeal.height).toBeCloseTo(0.25e-3, 12);
    expect(makeCar({ crackMm: 0 }).plant).toBe(training);
    const both = makeCar({ crackMm: 0.1, faults: oneFault('filter', 50) });
    expect(both.plant.leaks.forward.transferSeal.height).toBeCloseTo(0.1e-3, 12);
    expect(both.plant.pump.suctionResistance).toBeGreaterThan(training.pump.suctionResistance);
  });
  it('a fault by its share of the worst, in a circuit where it sits in one', () => {
    expect(oneFault('filter', 30)).toEqual({ filter: { severity: 0.3 } });
    expect(oneFault('openPort', 70)).toEqual({ openPort: { severity: 0.7, circuit: 'forward' } });
    expect(oneFault('openPort', 70, 'reverse')).toEqual({
      openPort: { severity: 0.7, circuit: 'reverse' },
    });
    expect([49, 50, 100].map((percent) => severityOf('turbineSensor', percent))).toEqual([0, 1, 1]);
    expect([sitsInOneCircuit('hardLip'), sitsInOneCircuit('pumpWear')]).toEqual([true, false]);
  });
  it('on its own fluid, one by name, or one by its numbers', () => {
    expect(soundCar.fluid.kv40CSt).toBe(training.fluid.kv40CSt);
    expect(makeCar({ fluid: 'standard' }).fluid).toMatchObject({ kv40CSt: 35, kv100CSt: 7.3 });
    expect(makeCar({ fluid: { kv40CSt: 40, kv100CSt: 8, density15: 850 } }).fluid.kv40CSt).toBe(40);
  });
});

describe('where it lets go', () => {
  it('is where its margin goes through nothing', () => {
    expect(letsGoWhere((tempC) => 82 - tempC)).toMatchObject({ kind: 'at' });
    const at = letsGoWhere((tempC) => 82 - tempC);
    expect(at.kind === 'at' && at.tempC).toBeCloseTo(82, 9);
    expect(letsGoWhere(() => 1)).toEqual({ kind: 'always' });
    expect(letsGoWhere(() => -1)).toEqual({ kind: 'never' });
    // At the very end it still holds.
    expect(letsGoWhere((tempC) => 140 - tempC)).toEqual({ kind: 'always' });
    expect(letsGoWhere((tempC) => -30 - tempC)).toMatchObject({ kind: 'at' });
  });
  it('there the tap has what the demand needs, and a degree on it has not', () => {
    for (const demand of ['gentle', 'firm'] as const) {
      const tempC = letsGoAtC(cracked, demand);
      expect(clutchKpa(cracked, { tempC })).toBeCloseTo(needs[demand].kPa, 6);
      expect(clutchKpa(cracked, { tempC: tempC + 1 })).toBeLessThan(needs[demand].kPa);
    }
    expect(letsGo(soundCar, 'standing')).toEqual({ kind: 'always' });
  });
  it('is no temperature where it always holds or never does', () => {
    expect(() => letsGoAtC(soundCar, 'standing')).toThrow(
      'There is no temperature at which it lets go: it always holds.',
    );
    const gone = makeCar({ faults: oneFault('openPort', 100) });
    expect(() => letsGoAtC(gone, 'firm')).toThrow(
      'There is no temperature at which it lets go: it never holds.',
    );
  });
  it('a demand needs as much pressure as its torque asks of plates and spring', () => {
    const { faces, meanRadius, friction, springForce, area } = training.clutches.forward;
    for (const demand of ['standing', 'gentle', 'firm'] as const) {
      const { torqueNm, kPa } = needOf(demand);
      expect(kPa).toBeCloseTo(
        (torqueNm / (friction * faces * meanRadius) + springForce) / area / 1e3,
        6,
      );
    }
    expect([needs.standing.engineRpm, needs.firm.engineRpm]).toEqual([700, 1500]);
    expect(needs.gentle.engineRpm).toBeGreaterThan(700);
    expect(needOf('firm', training, 'high' satisfies Circuit).torqueNm).toBe(needs.firm.torqueNm);
  });
});
