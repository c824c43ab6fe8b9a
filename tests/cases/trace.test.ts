import { expect, test } from 'vitest';
import { stopTraceOf } from '../../src/cases/trace.ts';
import { applyFaults, training } from '../../src/engine/index.ts';

const at = (trace: { time: readonly number[]; turbine: readonly number[] }, time: number) =>
  trace.turbine[trace.time.findIndex((one) => one >= time - 1e-9)] ?? NaN;

test('the trace falls where the clock says: above 30 rpm just before, below just after', () => {
  const trace = stopTraceOf(training, 'stopTime.drive.hot', 0.9);
  expect(at(trace, 0)).toBeGreaterThan(600);
  expect(at(trace, 0.8)).toBeGreaterThan(30);
  expect(at(trace, 1)).toBeLessThan(30);
});

test('a turbine that did not stop turns to the end', () => {
  const bad = applyFaults(training, { transferSeal: { severity: 0.9 } });
  const trace = stopTraceOf(bad, 'stopTime.drive.hot', null);
  expect(trace.turbine.at(-1)).toBeGreaterThan(30);
});

test('a test that has no clock has no trace', () => {
  expect(() => stopTraceOf(training, 'line.park.700.hot', 1)).toThrow(/has no trace/);
});
