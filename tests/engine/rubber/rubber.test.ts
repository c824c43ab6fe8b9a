import { describe, expect, it } from 'vitest';
import { EngineError, rubberOverSteel, springBackRatio } from '../../../src/engine/index.ts';

describe('rubber against steel', () => {
  // By hand: 10 mm, (120 - 12)e-6 1/K, 50 K colder: 10 x 108e-6 x 50 = 0.054 mm.
  it('shrinks by 54 um on 10 mm and 50 K', () => {
    expect(rubberOverSteel(0.01, 20, -30)).toBeCloseTo(-54e-6, 12);
  });
  it('comes back to where it was', () => {
    expect(rubberOverSteel(0.01, 20, 80) + rubberOverSteel(0.01, 80, 20)).toBeCloseTo(0, 15);
    expect(rubberOverSteel(0.01, 20, 20)).toBe(0);
  });
});

describe('springing back, Williams, Landel and Ferry (1955): log a = -17.44 (T - Tg) / (51.6 + T - Tg)', () => {
  const decades = (tempC: number, referenceC: number, glassC: number): number =>
    Math.log10(springBackRatio(tempC, referenceC, glassC));
  // By hand. 51.6 K above the glass point the fraction is one half: 17.44 / 2 = 8.72 decades. At 100 K: 1744 / 151.6 = 11.504.
  it('has 8.72 decades at 51.6 K and 11.50 at 100 K above the glass point', () => {
    expect(decades(0, 51.6, 0)).toBeCloseTo(8.72, 9);
    expect(decades(0, 100, 0)).toBeCloseTo(11.504, 3);
  });
  // By hand, glass point -30: 0 degC is 523.2 / 81.6 = 6.412, 20 degC is 872 / 101.6 = 8.583; 2.171 decades between them.
  it('takes about 148 times as long at 0 as at 20 degC with a glass point of -30', () => {
    expect(decades(0, 20, -30)).toBeCloseTo(2.1709, 3);
    expect(springBackRatio(20, 20, -30)).toBe(1);
  });
  it('is slower the colder it is', () => {
    const slow = [-30, -10, 0, 20, 60].map((tempC) => springBackRatio(tempC, 20, -30));
    expect(slow).toEqual(slow.toSorted((one, other) => other - one));
  });
  it('refuses what lies below the glass point or far above it', () => {
    expect(() => springBackRatio(-31, 20, -30)).toThrow(EngineError);
    expect(() => springBackRatio(71, 20, -30)).toThrow('from -30 to 70 C');
  });
});
