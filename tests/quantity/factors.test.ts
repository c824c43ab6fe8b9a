import { describe, expect, it } from 'vitest';
import { M3_PER_US_GALLON, NM_PER_LBF_FT, PA_PER_PSI } from '../../src/engine/index.ts';
import {
  GRAM_PER_POUND,
  KILOWATT_PER_HORSEPOWER,
  KM_PER_MILE,
  KPA_PER_PSI,
  LITRE_PER_US_GALLON,
  MM_PER_INCH,
  NEWTON_METRE_PER_POUND_FOOT,
  NEWTON_PER_POUND_FORCE,
} from '../../src/quantity/factors.ts';
import { KILOJOULE_PER_BTU } from '../../src/quantity/heat-held.ts';

/*
 * NIST SP 811 (2008), appendix B.8, printed to seven figures: psi 6.894 757 E+03 Pa, US gallon 3.785 412 E-03 m3, lbf ft
 * 1.355 818 N m, lbf 4.448 222 N, mile 1.609 344 E+03 m, horsepower (550 ft lbf/s) 7.456 999 E+02 W, British thermal unit of
 * the International Table 1.055 056 E+03 J. Its exact definitions:
 * inch 0.0254 m, pound 0.453 592 37 kg, standard gravity 9.806 65 m/s2, US gallon 231 cubic inches.
 */
const INCH = 0.0254;
const POUND_FORCE = 0.45359237 * 9.80665;

describe('conversion factors', () => {
  it('agree with NIST SP 811 as printed, to its seven figures', () => {
    expect(KPA_PER_PSI).toBeCloseTo(6.894757, 6);
    expect(LITRE_PER_US_GALLON).toBeCloseTo(3.785412, 6);
    expect(NEWTON_METRE_PER_POUND_FOOT).toBeCloseTo(1.355818, 6);
    expect(NEWTON_PER_POUND_FORCE).toBeCloseTo(4.448222, 6);
    expect(KM_PER_MILE).toBe(1.609344);
    expect(KILOJOULE_PER_BTU).toBeCloseTo(1.055056, 6);
    expect(KILOWATT_PER_HORSEPOWER).toBeCloseTo(0.7456999, 7);
  });
  it('follow from the exact definitions in SP 811', () => {
    expect(KPA_PER_PSI).toBeCloseTo(POUND_FORCE / INCH ** 2 / 1000, 12);
    expect(LITRE_PER_US_GALLON).toBeCloseTo(231 * INCH ** 3 * 1000, 12);
    expect(NEWTON_METRE_PER_POUND_FOOT).toBeCloseTo(POUND_FORCE * 12 * INCH, 12);
    expect(NEWTON_PER_POUND_FORCE).toBeCloseTo(POUND_FORCE, 12);
    expect(MM_PER_INCH).toBeCloseTo(INCH * 1000, 12);
    expect(KM_PER_MILE).toBeCloseTo((5280 * 12 * INCH) / 1000, 12);
    expect(KILOWATT_PER_HORSEPOWER).toBeCloseTo((550 * POUND_FORCE * 12 * INCH) / 1000, 12);
    // Of the International Table: 4.1868 J for a gram and a kelvin, so that much for a pound and 1/1.8 of one.
    expect(KILOJOULE_PER_BTU).toBeCloseTo((4.1868 * GRAM_PER_POUND) / 1.8 / 1000, 10);
    expect(GRAM_PER_POUND).toBe(453.59237);
  });
  it('are those of the engine, digit for digit, where it has them', () => {
    expect(KPA_PER_PSI * 1000).toBeCloseTo(PA_PER_PSI, 9);
    expect(LITRE_PER_US_GALLON / 1000).toBeCloseTo(M3_PER_US_GALLON, 15);
    expect(NEWTON_METRE_PER_POUND_FOOT).toBe(NM_PER_LBF_FT);
  });
});
