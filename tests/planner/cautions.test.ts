/** Chocks, brake and a free path before a car is put in gear; nothing under the wheels of one that is to move: common practice, no source. */
import { describe, expect, test } from 'vitest';
import { TESTS, testOf } from '../../src/diagnosis/index.ts';
import { cautionsFor } from '../../src/planner/cautions.ts';
import { needsOf } from '../../src/planner/reading-text.ts';

const said = (id: string): string => cautionsFor(testOf(id), 'us').join(' ');

describe('cautions before a test', () => {
  const RUNS = TESTS.filter(({ kind, at }) => at.rpm !== undefined || kind === 'stopTime');
  const STANDS = RUNS.filter(({ id }) => id !== 'line.drive.3000.cold');

  test.each(STANDS.map(({ id }) => id))(
    '%s: the engine runs, in gear or in Park, so chocks, brake, and nobody before or behind it',
    (id) => {
      expect(said(id)).toMatch(/Chock the wheels, then hold the service brake/);
      expect(said(id)).toMatch(/in front of the car or behind it/);
    },
  );

  test.each(RUNS.map(({ id }) => id))('%s: the engine runs, so the extraction does', (id) => {
    expect(said(id)).toContain('Turn the exhaust extraction on');
  });

  test.each(['fluidLevel', 'cable', 'airTest.forward'])('%s: no engine drives the car', (id) => {
    expect(said(id)).not.toMatch(/[Cc]hock/);
  });

  test.each(['stopTime.drive.hot', 'takeoffSlip.drive.hot'])('%s: nobody goes under', (id) => {
    expect(said(id)).not.toContain('go under');
  });

  test.each(['fluidLevel', 'line.park.700.hot', 'coolerFlow.park.700.hot', 'panFilter'])(
    '%s: somebody goes under, and the exhaust may be hot',
    (id) => {
      expect(said(id)).toContain('Let the exhaust cool before you go under.');
    },
  );

  test('after a night the exhaust is cold', () => {
    expect(said('line.park.700.cold')).not.toContain('exhaust cool');
  });

  test.each(['takeoffSlip.drive.hot', 'takeoffSlip.reverse.hot'])(
    '%s: the car is to move, so no chocks, and nobody in its way',
    (id) => {
      expect(said(id)).not.toMatch(/[Cc]hock/);
      expect(said(id)).toMatch(/clear lane.*nobody stands in front or behind/);
    },
  );

  test('at 3000 rpm in Drive the wheels turn free', () => {
    expect(said('line.drive.3000.cold')).toMatch(/driven wheels free and guarded/);
    expect(said('line.drive.3000.cold')).not.toMatch(/[Cc]hock/);
  });

  test('every test with hot fluid says so', () => {
    const hot = TESTS.filter(({ setUps }) => setUps.includes('hot'));
    expect(hot.length).toBeGreaterThan(10);
    for (const { id } of hot) expect(said(id)).toContain('Hot fluid burns skin.');
  });

  test('amounts are those of the reader’s units alone, and every caution is a sentence', () => {
    for (const test of TESTS)
      for (const system of ['si', 'us'] as const) {
        for (const caution of cautionsFor(test, system)) expect(caution).toMatch(/^[A-Z].*\.$/u);
        const all = cautionsFor(test, system).join(' ');
        expect(all).not.toMatch(system === 'us' ? /kPa|°C|\d L\b/u : /psi|°F|\bqt\b/u);
      }
    const drained = (system: 'si' | 'us') =>
      cautionsFor(testOf('coolerFlow.park.700.hot'), system).join(' ');
    expect(drained('us')).toContain('1.0\u00a0qt');
    expect(drained('si')).toContain('1.0\u00a0L');
    expect(cautionsFor(testOf('airTest.forward'), 'us').join(' ')).toContain('40\u00a0psi');
  });

  test('what has to be done first is a sentence too', () => {
    expect(needsOf(['hot', 'gaugeLine'], 'us')).toBe(
      'First warm the car to 203\u00a0°F and fit the gauge on the line.',
    );
    expect(needsOf([], 'us')).toBe('');
  });
});
