import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { fahrenheit } from '../../src/engine/index.ts';
import { quantities, quantityNames, type QuantityName } from '../../src/quantity/by-name.ts';
import { fromShown, toShown } from '../../src/quantity/quantity.ts';

// Factors: NIST SP 811 (2008), appendix B.8, printed to seven figures there; a square and a cubic inch are exact.
test.each<[QuantityName, number, number]>([
  ['pressure', 6.894757, 1],
  ['pressure', 101.325, 14.69595],
  ['flow', 3.785412, 1],
  ['torque', 1.355818, 1],
  ['force', 4.448222, 1],
  ['area', 6.4516, 1],
  ['volume', 16.387064, 1],
  ['temperature', 100, 212],
  ['temperature', -40, -40],
  ['temperatureRise', 10, 18],
  ['length', 0.0254, 1],
  ['dimension', 25.4, 1],
  ['leverArm', 0.3048, 1],
  ['roadSpeed', 1.609344, 1],
  ['power', 0.7456999, 1],
  ['heat', 1.355818, 1],
  ['fluidVolume', 0.946353, 1],
  ['mass', 0.45359237, 1],
  // lb ft2, appendix B.8: 4.214 011 E-02 kg m2.
  ['inertia', 0.04214011, 1],
  // 1 lb/min is 453.592 37 g in 60 s.
  ['airFlow', 7.559873, 1],
])('%s: %f is %f in US units', (name, si, us) => {
  expect(toShown(si, quantities[name], 'us')).toBeCloseTo(us, 5);
});

describe('every quantity', () => {
  it('comes back to where it started', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...quantityNames),
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        (name, value) => {
          const quantity = quantities[name];
          expect(fromShown(toShown(value, quantity, 'us'), quantity, 'us')).toBeCloseTo(value, 8);
          expect(toShown(value, quantity, 'si')).toBe(value + 0);
        },
      ),
    );
  });
  it('agrees with the engine on the Fahrenheit scale', () => {
    for (const tempC of [-40, -17.7, 0, 37.8, 100])
      expect(toShown(tempC, quantities.temperature, 'us')).toBe(fahrenheit(tempC));
  });
  it('has digits that start at nothing, rise in size and fall in decimals', () => {
    for (const name of quantityNames) {
      for (const { digits } of [quantities[name].si, quantities[name].us]) {
        expect(digits[0]?.[0], name).toBe(0);
        digits.slice(1).forEach(([from, decimals], i) => {
          expect(from, name).toBeGreaterThan(digits[i]?.[0] ?? 0);
          expect(decimals, name).toBeLessThan(digits[i]?.[1] ?? 0);
        });
      }
    }
  });
});
