/** Cars that differ from the model: by how much, and what a shop reads on them. Chance is handed in, so it can be pinned. */
import { describe, expect, test } from 'vitest';
import {
  chanceFrom,
  drawClass,
  drawn,
  illnessOf,
  makeGenerated,
  nominalReader,
  signsNear,
  UNKNOWN,
} from '../../src/diagnosis/cars.ts';
import { CLASSES, isName, severitiesOf } from '../../src/diagnosis/hypotheses.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';
import { decodeTable } from '../../src/diagnosis/table-code.ts';
import { nominalWarmth } from '../../src/diagnosis/table.ts';
import { readSubject } from '../../src/diagnosis/read-subject.ts';
import { testOf, type OutcomeTest } from '../../src/diagnosis/tests.ts';
import { applyFaults, training, type Plant } from '../../src/engine/index.ts';
import { made, numeric } from './made.ts';

const table = decodeTable(keptTable);
const { signs } = made({ name: 'healthy' });
const mid = () => 0.5;

// Half-widths of what the planner does not know, written out again from section 3.
test('what the planner does not know of', () => {
  expect(UNKNOWN).toEqual({
    ...{ friction: 0.08, stroke: 0.08, spring: 0.08, crackLength: 0.2, pistonGap: 0.2, give: 0.2 },
    ...{
      inletLimit: 0.15,
      commands: 0.02,
      engineSpeed: 0.03,
      passage: 0.1,
      bleed: 0.1,
      cooler: 0.1,
    },
  });
});

describe('chance', () => {
  test('of one seed is the same again, lies from 0 to 1 and is even', () => {
    const [one, other, third] = [chanceFrom(1), chanceFrom(1), chanceFrom(2)];
    const many = Array.from({ length: 20_000 }, () => one());
    expect(many.slice(0, 50)).toEqual(Array.from({ length: 50 }, () => other()));
    expect(many.slice(0, 5)).not.toEqual(Array.from({ length: 5 }, () => third()));
    expect(Math.min(...many)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...many)).toBeLessThan(1);
    // A mean of 0.5 and a variance of 1/12, each to four of its own spreads.
    const mean = many.reduce((sum, x) => sum + x, 0) / many.length;
    expect(Math.abs(mean - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / many.length));
    const variance = many.reduce((sum, x) => sum + (x - mean) ** 2, 0) / many.length;
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / many.length));
  });
  // The published C of mulberry32 (T. Ettinger, from memory), written out in Python with whole numbers of any length.
  test.each([
    [0, [1144304738, 1416247, 958946056, 627933444]],
    [1, [2693262067, 11749833, 2265367787, 4213581821]],
    [12345, [4207900869, 1317490944, 2079646450, 3513001552]],
  ])('of seed %i is what the published program gives', (seed, whole) => {
    const chance = chanceFrom(seed);
    expect(whole.map(() => chance() * 2 ** 32)).toEqual(whole);
  });
});

describe('one outcome by chance', () => {
  const look = testOf('fluidLook') as OutcomeTest;
  const codes = testOf('codes') as OutcomeTest;
  test('each has its part of the way from 0 to 1', () => {
    const at = (x: number) => drawn(look, [0.5, 0.25, 0.125, 0.125], () => x);
    expect([0, 0.49, 0.5, 0.51, 0.74, 0.76, 0.874, 0.876, 0.999].map(at)).toEqual([
      ...['normal', 'normal', 'normal', 'dark', 'dark', 'metal', 'metal', 'foam', 'foam'],
    ]);
  });
  test('chances that sum to less leave the first', () => {
    expect(drawn(look, [0.1, 0.1, 0.1, 0.1], () => 0.9)).toBe('normal');
  });
  test('codes are told by their set', () => {
    const only = (place: number) => Array.from({ length: 8 }, (_, i) => Number(i === place));
    const sets = Array.from({ length: 8 }, (_, place) => drawn(codes, only(place), mid));
    expect(sets).toEqual([
      [],
      ['P0731'],
      ['P0736'],
      ['P0731', 'P0736'],
      ['P0733'],
      ['P0731', 'P0733'],
      ['P0736', 'P0733'],
      ['P0731', 'P0736', 'P0733'],
    ]);
  });
});

describe('a fault as the planner believes in it', () => {
  test('name, circuit and severity, each evenly', () => {
    const draws = (...all: readonly number[]) => {
      const left = [...all];
      return drawClass(() => left.shift() ?? 0, ['filter', 'openPort', 'healthy']);
    };
    expect(draws(0, 0, 0)).toEqual({ of: { name: 'filter' }, severity: 0.55 });
    expect(draws(0.3, 0.9, 1).severity).toBeCloseTo(1, 12);
    expect(draws(0.34, 0, 0)).toEqual({
      of: { name: 'openPort', circuit: 'forward' },
      severity: 0.35,
    });
    expect(draws(0.34, 0.5, 0.5)).toEqual({
      of: { name: 'openPort', circuit: 'reverse' },
      severity: 0.675,
    });
    expect(draws(0.66, 0.99, 0).of).toEqual({ name: 'openPort', circuit: 'high' });
    expect(draws(0.67, 0, 0.7)).toEqual({ of: { name: 'healthy' }, severity: 1 });
  });
});

describe('what codes go by', () => {
  test('of the row next to a severity; of what has none, of its only one', () => {
    const index = CLASSES.findIndex(({ name }) => name === 'transferSeal');
    const rows = table[index] ?? [];
    const at = (place: number) => rows[place]?.map(({ nominal }) => nominal) ?? [];
    for (const [severity, place] of [
      [0.05, 0],
      [0.3, 5],
      [0.52, 9],
      [0.53, 10],
      [1, 19],
    ] as const) {
      const found = signsNear(table, { name: 'transferSeal' }, severity);
      expect(at(place)).toContain(found.stop.drive);
      expect(at(place)).toContain(found.highTap);
    }
    const healthy = signsNear(table, { name: 'healthy' }, 1);
    expect(healthy.stop.drive).toBeGreaterThan(0.3);
    expect(healthy.stop.drive).toBeLessThan(
      signsNear(table, { name: 'transferSeal' }, 1).stop.drive,
    );
    expect(healthy.highTap).toBeGreaterThan(300);
    // The sensor lies, the box is healthy.
    expect(signsNear(table, { name: 'turbineSensor' }, 1).highTap).toBeGreaterThan(300);
  });
});

describe('a car whose chances all fall in the middle', () => {
  const sick = (name: string, severity: number) => {
    if (!isName(name)) throw new Error(name);
    return illnessOf({ name }, severity, signs);
  };
  // With 0.5 nothing differs; a normal number by Box and Muller is root(2 ln 2) cos(pi), 1.17741 below.
  const low = -Math.sqrt(2 * Math.log(2));
  const nominal = nominalReader(training);

  test('reads as the nominal one, less its error and the gauge’s gain', () => {
    const car = makeGenerated(training, sick('healthy', 1), mid);
    const line = nominal('line.drive.700.hot') * (1 + 0.015 * low);
    expect(car(numeric('line.drive.700.hot')).value).toBeCloseTo(
      line + Math.max(0.02 * line, 10) * low,
      6,
    );
    const tap = nominal('clutch.forward.700.hot') * (1 + 0.015 * low);
    expect(car(numeric('clutch.forward.700.hot')).value).toBeCloseTo(
      tap + Math.max(0.02 * tap, 10) * low,
      6,
    );
    // No gauge, no gain.
    const stop = nominal('stopTime.drive.hot');
    expect(car(numeric('stopTime.drive.hot')).value).toBeCloseTo(
      stop + Math.hypot(0.08, 0.05 * stop) * low,
      6,
    );
    const slip = nominal('takeoffSlip.drive.hot');
    expect(car(numeric('takeoffSlip.drive.hot')).value).toBeCloseTo(
      Math.max(0, Math.exp(slip + 0.25 * low) - 30),
      6,
    );
  });
  test('with its fault, which the engine solves', () => {
    const plant = applyFaults(training, { transferSeal: { severity: 0.6 } });
    const car = makeGenerated(training, sick('transferSeal', 0.6), mid);
    const solved = readSubject(
      { plant, fluid: plant.fluid, warmth: nominalWarmth },
      numeric('clutch.forward.700.hot'),
    );
    const tap = solved * (1 + 0.015 * low);
    expect(car(numeric('clutch.forward.700.hot')).value).toBeCloseTo(
      tap + Math.max(0.02 * tap, 10) * low,
      6,
    );
  });
  test('is read once: the same test reads the same again', () => {
    const car = makeGenerated(training, sick('healthy', 1), chanceFrom(5));
    const first = car(numeric('line.drive.700.hot'));
    expect(car(numeric('line.drive.700.hot'))).toBe(first);
    const level = car(testOf('fluidLevel'));
    expect(car(testOf('fluidLevel'))).toBe(level);
    expect(['full', 'low', 'veryLow']).toContain(level.value);
  });
  test('one that never stops reads nothing', () => {
    const car = makeGenerated(training, sick('transferSeal', 1), mid);
    expect(car(numeric('stopTime.drive.hot')).value).toBeNull();
  });
});

test('what differs is moved by no more than its half-width, and by all of it somewhere', () => {
  /** The plant that is handed to the illness when every chance is the same. */
  const plantAt = (x: number): Plant => {
    let seen: Plant = training;
    const spoil = (sound: Plant): Plant => (seen = sound);
    makeGenerated(training, { spoil, chances: () => [1] }, () => x);
    return seen;
  };
  const share = (x: number, of: (plant: Plant) => number) => of(plantAt(x)) / of(training) - 1;
  for (const [x, sign] of [
    [0, -1],
    [1 - 1e-12, 1],
  ] as const) {
    const at = (of: (plant: Plant) => number) => share(x, of);
    expect(at((p) => p.clutches.forward.friction)).toBeCloseTo(sign * 0.08, 9);
    expect(at((p) => p.clutches.reverse.strokeVolume)).toBeCloseTo(sign * 0.08, 9);
    expect(at((p) => p.clutches.high.springForce)).toBeCloseTo(sign * 0.08, 9);
    expect(at((p) => p.clutches.forward.compliance)).toBeCloseTo(sign * 0.2, 9);
    expect(at((p) => p.leaks.forward.transferSeal.length)).toBeCloseTo(sign * 0.2, 9);
    expect(at((p) => p.pump.suctionLimit)).toBeCloseTo(sign * 0.15, 9);
    expect(at((p) => p.testPoints.idle.line)).toBeCloseTo(sign * 0.02, 9);
    expect(at((p) => p.testPoints.load.clutch)).toBeCloseTo(sign * 0.02, 9);
    expect(at((p) => p.feed.passage)).toBeCloseTo(sign * 0.1, 9);
    expect(at((p) => p.bleedArea)).toBeCloseTo(sign * 0.1, 9);
    expect(at((p) => p.cooler.resistance)).toBeCloseTo(sign * 0.1, 9);
    // And what the planner does know of.
    expect(at((p) => p.feed.area)).toBeCloseTo(sign * 0.1, 9);
    expect(at((p) => p.pump.slip)).toBeCloseTo(sign * 0.2, 9);
    expect(at((p) => p.lineClearances.height)).toBeCloseTo(sign * 0.1, 9);
    expect(at((p) => p.leaks.forward.rings.height)).toBeCloseTo(sign * 0.1, 9);
    expect(at((p) => p.leaks.forward.transferSeal.width)).toBeCloseTo(sign * 0.2, 9);
  }
  expect(share(0.5, (p) => p.clutches.forward.friction)).toBe(0);
});

test('only numbers are read as numbers', () => {
  expect(() => nominalReader(training)('fluidLook')).toThrow('fluidLook reads no number.');
  const read = nominalReader(training);
  expect(read('line.park.700.hot')).toBe(read('line.park.700.hot'));
  expect(severitiesOf('turbineSensor')).toEqual([1]);
});
