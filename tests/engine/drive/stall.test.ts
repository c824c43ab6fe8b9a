import { describe, expect, it } from 'vitest';
import {
  training,
  EngineError,
  engineTorque,
  impellerTorque,
  RAD_S_PER_RPM,
  stallSpeed,
} from '../../../src/engine/index.ts';

describe('stall speed', () => {
  // By hand: above idle + 20 rpm the governor gives nothing, so 180 u - 8 = (n / 170)^2.
  it.each([
    [0.2, 170 * Math.sqrt(28)],
    [0.6, 1700],
    [1, 170 * Math.sqrt(172)],
  ])('at a throttle of %d', (throttle, rpm) => {
    expect(stallSpeed(training.drive, throttle, 700)).toBeCloseTo(rpm, 8);
  });
  // By hand, closed throttle: 20 + 700 - n - 8 = (n / 170)^2, so n = 170 (sqrt(170^2 + 4 * 712) - 170) / 2.
  it('at closed throttle is the idle the converter pulls down to', () => {
    const rpm = (170 * (Math.sqrt(170 * 170 + 4 * 712) - 170)) / 2;
    expect(stallSpeed(training.drive, 0, 700)).toBeCloseTo(rpm, 8);
  });
  it('balances engine and impeller, and rises with throttle', () => {
    let last = 0;
    for (let u = 0; u <= 1.0001; u += 0.05) {
      const throttle = Math.min(1, u);
      const rpm = stallSpeed(training.drive, throttle, 700);
      const taken = impellerTorque(training.drive, rpm * RAD_S_PER_RPM, 0);
      expect(engineTorque(rpm, throttle, 700)).toBeCloseTo(taken, 9);
      expect(rpm).toBeGreaterThan(last);
      last = rpm;
    }
  });
  it.each([-0.1, 1.1, Number.NaN])('refuses a throttle of %d, naming the range', (throttle) => {
    expect(() => stallSpeed(training.drive, throttle, 700)).toThrow(EngineError);
    expect(() => stallSpeed(training.drive, throttle, 700)).toThrow(/from 0 to 1/u);
  });
});
