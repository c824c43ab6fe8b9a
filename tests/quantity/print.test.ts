import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantities, quantityNames } from '../../src/quantity/by-name.ts';
import { decimalsFor, format, formatNumber, printer } from '../../src/quantity/print.ts';
import {
  flow,
  kinematicViscosity,
  length,
  pressure,
  roadSpeed,
  seconds,
  speed,
  temperature,
  times,
} from '../../src/quantity/quantities.ts';

describe('printing', () => {
  it('keeps a number and its unit on one line', () => {
    expect(format(620, pressure, 'si')).toBe('620\u00a0kPa');
    expect(format(620, pressure, 'us')).toBe('90\u00a0psi');
    expect(format(20, flow, 'us')).toBe('5.28\u00a0gpm');
    expect(format(-40, temperature, 'si')).toBe('\u221240\u00a0°C');
    expect(printer('us')(620, pressure)).toBe('90\u00a0psi');
  });
  it('has one unit and one system in a text', () => {
    expect(format(0.25, length, 'us')).toBe('10\u00a0thousandths');
    expect(format(0.25, length, 'si')).toBe('0.25\u00a0mm');
    expect(format(5, roadSpeed, 'us')).toBe('3.1\u00a0mph');
    expect(format(5, roadSpeed, 'si')).toBe('5\u00a0km/h');
    expect(format(48.3, roadSpeed, 'us')).toBe('30\u00a0mph');
  });
  // What the instruments of a shop show: a feeler gauge, a digital gauge, a tester, a stop watch, a viscosity sheet.
  it.each([
    [0.016, length, 'us', '0.6'],
    [0.07, length, 'us', '2.8'],
    [0.16, length, 'us', '6'],
    [0.249, length, 'us', '10'],
    [1.9, length, 'us', '75'],
    [0.025, length, 'si', '0.025'],
    [0.07, length, 'si', '0.07'],
    [0.4, length, 'si', '0.40'],
    [6.9, pressure, 'si', '7'],
    [6.9, pressure, 'us', '1.0'],
    [6.889, speed, 'us', '7'],
    [1.5, seconds, 'si', '1.50'],
    [0.0123, flow, 'si', '0.012'],
    [9.994, flow, 'si', '9.99'],
    [5.4, kinematicViscosity, 'si', '5.40'],
    [29.6, kinematicViscosity, 'us', '29.6'],
    [1234.5, kinematicViscosity, 'si', '1235'],
    [1.034, times, 'si', '1.03'],
    [11.62, times, 'si', '11.6'],
  ] as const)('%f of %o reads %s: %s', (value, quantity, system, text) => {
    expect(formatNumber(value, quantity, system)).toBe(text);
  });
  it('judges a size as it will be printed: 9.97 psi is 10 psi, not 10.0', () => {
    expect(formatNumber(9.97 * 6.894757, pressure, 'us')).toBe('10');
    expect(formatNumber(2.97 * 0.0254, length, 'us')).toBe('3');
    expect(formatNumber(9.996, flow, 'si')).toBe('10.0');
    expect(decimalsFor(-9.97, pressure.us.digits)).toEqual([0, 0]);
  });
  it('says nothing as 0, never minus 0, and has words for no value', () => {
    expect(format(0, flow, 'si')).toBe('0\u00a0L/min');
    expect(format(-0.2, temperature, 'si')).toBe('0\u00a0°C');
    expect(format(Number.NaN, pressure, 'us')).toBe('no value');
  });
  it('prints one value one way, whatever dust the conversions left on it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...quantityNames),
        fc.constantFrom('si' as const, 'us' as const),
        fc.integer({ min: 1, max: 99_999 }),
        (name, system, n) => {
          const value = n / 100;
          const dusty = (value / 6.894757293168361) * 6.894757293168361;
          expect(format(dusty, quantities[name], system)).toBe(
            format(value, quantities[name], system),
          );
        },
      ),
      // Halfway between 500 and 501, and a hair under it after the way to psi and back.
      { examples: [['pressure', 'si', 50_050]] },
    );
  });
  it('follows the marks it is given', () => {
    expect(format(0.25, length, 'si', '.,')).toBe('0,25\u00a0mm');
    expect(format(12345, speed, 'us')).toBe('12,345\u00a0rpm');
    expect(format(12345, speed, 'us', '.,')).toBe('12.345\u00a0rpm');
    expect(format(1500, speed, 'us')).toBe('1500\u00a0rpm');
  });
});
