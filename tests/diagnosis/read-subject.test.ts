import { expect, test } from 'vitest';
import {
  heldTrace,
  isNumeric,
  nominalWarmth,
  readSubject,
  stoppedIn,
  testOf,
  type NumericTest,
} from '../../src/diagnosis/index.ts';
import {
  applyFaults,
  makeFluid,
  solveEngagement,
  training,
  type FaultSet,
} from '../../src/engine/index.ts';

const numeric = (id: string): NumericTest => {
  const one = testOf(id);
  if (!isNumeric(one)) throw new Error(`${id} reads no number.`);
  return one;
};
const subjectOf = (faults: FaultSet) => {
  const plant = applyFaults(training, faults);
  return { plant, fluid: plant.fluid, warmth: nominalWarmth };
};
const read = (faults: FaultSet, id: string): number => readSubject(subjectOf(faults), numeric(id));
/** As the fault paper has them: hard rubber leaks cold and seals warm, a thin gap the other way round. */
const hardLip: FaultSet = { hardLip: { severity: 0.85, circuit: 'forward' } };
const ring: FaultSet = { sealingRings: { severity: 0.6, circuit: 'forward' } };

test('a test is read at the temperature that it names', () => {
  const tap = (faults: FaultSet, warm: string) => read(faults, `clutch.forward.700.${warm}`);
  expect(tap(hardLip, 'cold')).toBeLessThan(0.9 * tap(hardLip, 'hot'));
  expect(tap(ring, 'hot')).toBeLessThan(0.9 * tap(ring, 'cold'));
  const stop = (faults: FaultSet, warm: string) => read(faults, `stopTime.drive.${warm}`);
  expect(stop(hardLip, 'cold')).toBeGreaterThan(stop(hardLip, 'hot') + 0.1);
  expect(stop(ring, 'hot')).toBeGreaterThan(stop(ring, 'cold') + 0.1);
});

test('the slip of a take-off is the most there is from a second after the brake is off, whatever the sensor says at rest', () => {
  for (const range of ['drive', 'reverse'] as const)
    for (const faults of [ring, hardLip, { frictionWear: { severity: 1 } }] as const) {
      const { plant, fluid, warmth } = subjectOf(faults);
      const { trace } = solveEngagement({
        ...{
          plant,
          fluid: makeFluid(fluid),
          tempC: warmth.hot,
          range,
          rangeSelection: 'electronic',
        },
      });
      const slips = Array.from(trace.slipRpm).filter(
        (_, i) => Math.round(1000 * (trace.time[i] ?? 0)) >= 4000,
      );
      const most = Math.max(...slips.map(Math.abs));
      expect(read(faults, `takeoffSlip.${range}.hot`)).toBeCloseTo(Math.log(most + 30), 12);
      const lies = { ...faults, turbineSensor: { severity: 1 } };
      expect(read(lies, `takeoffSlip.${range}.hot`)).toBeCloseTo(Math.log(most + 30), 12);
    }
});

test('what a log shows of it as well', () => {
  const shown = (warm: string) =>
    stoppedIn(heldTrace(subjectOf(ring), numeric(`stopTime.drive.${warm}`)));
  expect(shown('hot')).toBeGreaterThan(shown('cold') + 0.1);
});
