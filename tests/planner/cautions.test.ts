/** Chocks, brake and a free path before a car is put in gear; nothing under the wheels of one that is to move: common practice, no source. */
import { describe, expect, test } from 'vitest';
import { TESTS, testOf } from '../../src/diagnosis/index.ts';
import { cautionsFor } from '../../src/planner/cautions.ts';

const said = (id: string): string => cautionsFor(testOf(id)).join(' ');

describe('cautions before a test', () => {
  test.each([
    'line.drive.700.hot',
    'line.reverse.700.hot',
    'line.drive.1500.cold',
    'clutch.forward.700.cold',
    'clutch.reverse.1500.hot',
    'stopTime.reverse.hot',
    'gaugeFlutter.park.3000.cold',
  ])(
    '%s: the car stands in gear, or in Park with the engine fast, so chocks, brake, and nobody before or behind it',
    (id) => {
      expect(said(id)).toMatch(/Wheels chocked, service brake held/);
      expect(said(id)).toMatch(/in front of the car or behind it/);
    },
  );

  test.each(['line.park.700.hot', 'coolerFlow.park.700.hot', 'fluidLevel', 'airTest.forward'])(
    '%s: no range that drives is selected',
    (id) => {
      expect(said(id)).not.toMatch(/chocked/);
    },
  );

  test.each(['takeoffSlip.drive.hot', 'takeoffSlip.reverse.hot'])(
    '%s: the car is to move, so no chocks, and nobody in its way',
    (id) => {
      expect(said(id)).not.toMatch(/chocked/);
      expect(said(id)).toMatch(/clear lane.*nobody stands in front or behind/);
    },
  );

  test('at 3000 rpm in Drive the wheels turn free', () => {
    expect(said('line.drive.3000.cold')).toMatch(/driven wheels free and guarded/);
    expect(said('line.drive.3000.cold')).not.toMatch(/chocked/);
  });

  test('every test with hot fluid says so', () => {
    const hot = TESTS.filter(({ setUps }) => setUps.includes('hot'));
    expect(hot.length).toBeGreaterThan(10);
    for (const { id } of hot) expect(said(id)).toContain('Fluid burns');
  });
});
