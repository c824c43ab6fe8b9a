import { describe, expect, test } from 'vitest';
import * as ui from '../../src/ui/quantity.ts';
import { figures, inSystem, withUnit, type Quantity } from '../../src/quiz/quantities.ts';

// Factors: NIST SP 811 (2008), appendix B, printed to seven figures there.
test.each<[Quantity, number, number]>([
  ['pressure', 6.894757, 1],
  ['flow', 3.785412, 1],
  ['torque', 1.355818, 1],
  ['force', 4.448222, 1],
  ['area', 6.4516, 1],
  ['temperature', 100, 212],
  ['temperature', -40, -40],
  ['temperatureRise', 10, 18],
])('%s: %f is %f in US units', (quantity, si, us) => {
  expect(inSystem(si, quantity, 'us')).toBeCloseTo(us, 6);
});

// Two tables exist because quiz may import neither engine nor ui; readers must never see them disagree.
describe('agrees with what the rest of the page prints', () => {
  const pairs: [Quantity, ui.Quantity][] = [
    ['pressure', ui.pressure],
    ['temperature', ui.temperature],
    ['flow', ui.flow],
    ['torque', ui.torque],
    ['length', ui.length],
    ['kinematicViscosity', ui.kinematicViscosity],
  ];
  test.each(pairs)('%s', (mine, theirs) => {
    for (const value of [0.16, 4, 37, 600]) {
      expect(inSystem(value, mine, 'us')).toBeCloseTo(theirs.toUs(value), 9);
      for (const system of ['si', 'us'] as const) {
        expect(withUnit(value, mine, system)).toContain(theirs[system].unit);
      }
    }
  });
});

test('three figures, a real minus, never minus nothing', () => {
  expect([
    figures(382.6),
    figures(5.678),
    figures(0.16349),
    figures(-12.34),
    figures(-0),
    figures(1200),
  ]).toEqual(['383', '5.68', '0.163', '−12.3', '0', '1200']);
  expect(() => figures(Number.NaN)).toThrow(/finite/);
});

test('cracks stay in millimetres, with thousandths for US readers', () => {
  expect(withUnit(0.16, 'length', 'si')).toBe('0.16\u00a0mm');
  expect(withUnit(0.16, 'length', 'us')).toBe('0.16\u00a0mm (6.3\u00a0thousandths)');
});
