import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  flow,
  format,
  fromShown,
  KPA_PER_PSI,
  length,
  LITRE_PER_US_GALLON,
  NEWTON_METRE_PER_POUND_FOOT,
  pressure,
  printNumber,
  speed,
  temperature,
  temperatureRise,
  torque,
  toShown,
} from '../../src/ui/quantity.ts';

/*
 * NIST SP 811 (2008), appendix B.8: psi 6.894 757 E+03 Pa, US gallon 3.785 412 E-03 m3,
 * lbf ft 1.355 818 N m, degree Fahrenheit (t - 32)/1.8. Its exact definitions: inch 0.0254 m,
 * pound 0.453 592 37 kg, standard gravity 9.806 65 m/s2, US gallon 231 cubic inches.
 */
const INCH = 0.0254;
const POUND_FORCE = 0.45359237 * 9.80665;

describe('conversion factors', () => {
  it('agree with NIST SP 811 as printed, to its seven figures', () => {
    expect(KPA_PER_PSI).toBeCloseTo(6.894757, 6);
    expect(LITRE_PER_US_GALLON).toBeCloseTo(3.785412, 6);
    expect(NEWTON_METRE_PER_POUND_FOOT).toBeCloseTo(1.355818, 6);
  });
  it('follow from the exact definitions in SP 811', () => {
    expect(KPA_PER_PSI).toBeCloseTo(POUND_FORCE / INCH ** 2 / 1000, 12);
    expect(LITRE_PER_US_GALLON).toBeCloseTo(231 * INCH ** 3 * 1000, 12);
    expect(NEWTON_METRE_PER_POUND_FOOT).toBeCloseTo(POUND_FORCE * 12 * INCH, 12);
  });
  it('turn known pairs into each other', () => {
    expect(temperature.toUs(100)).toBe(212);
    expect(temperature.toUs(-40)).toBe(-40);
    expect(temperatureRise.toUs(100)).toBeCloseTo(180, 12);
    expect(pressure.toUs(101.325)).toBeCloseTo(14.69595, 4); // SP 811: 1 atm is 101.325 kPa, 14.696 psi
  });
  it('come back to where they started', () => {
    const any = fc.double({ min: -1e4, max: 1e4, noNaN: true });
    for (const q of [pressure, temperature, temperatureRise, flow, torque, speed, length]) {
      fc.assert(
        fc.property(any, (v) => {
          expect(fromShown(toShown(v, q, 'us'), q, 'us')).toBeCloseTo(v, 8);
          expect(toShown(v, q, 'si')).toBe(v);
        }),
      );
    }
  });
});

describe('printing', () => {
  it('keeps a number and its unit on one line', () => {
    expect(format(620, pressure, 'si')).toBe('620\u00a0kPa');
    expect(format(620, pressure, 'us')).toBe('90\u00a0psi');
    expect(format(20, flow, 'us')).toBe('5.28\u00a0gpm');
    expect(format(-40, temperature, 'si')).toBe('\u221240\u00a0°C');
  });
  it('gives small pressures a decimal and never says minus zero', () => {
    expect(format(6.9, pressure, 'si')).toBe('6.9\u00a0kPa');
    expect(format(-0.2, temperature, 'si')).toBe('0\u00a0°C');
    expect(printNumber(-0.001, 1)).toBe('0.0');
  });
  it('adds thousandths of an inch beside millimetres in US units', () => {
    expect(format(0.254, length, 'us')).toBe('0.25\u00a0mm (10\u00a0thousandths)');
    expect(format(0.254, length, 'si')).toBe('0.25\u00a0mm');
  });
  it('groups from ten thousand on and has words for no value', () => {
    expect(printNumber(9999, 0)).toBe('9999');
    expect(printNumber(1234567.25, 1)).toBe('1\u202f234\u202f567.3');
    expect(format(Number.NaN, pressure, 'us')).toBe('no value');
  });
});
