import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recordAll, solved } from '../../src/car/record.ts';
import { bringRecordings, recording, RECORDING_IDS } from '../../src/car/recordings.ts';
import { speedsAsText, speedsIn } from '../../src/car/speeds-as-text.ts';

/** Half a tenth of an rpm, and what binary adds. */
const HALF = 0.05 + 1e-9;

/** The largest difference between two columns. */
function apart(one: ArrayLike<number>, other: ArrayLike<number>): number {
  expect(one.length).toBe(other.length);
  return Math.max(...Array.from(one, (value, i) => Math.abs(value - (other[i] ?? NaN))));
}

it('keeps any speeds to a tenth of an rpm', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -8000, max: 8000, noNaN: true }), { minLength: 1 }),
      (rpm) => {
        const kept = speedsIn(speedsAsText(Float64Array.from(rpm)));
        expect(apart(rpm, kept)).toBeLessThanOrEqual(HALF);
      },
    ),
  );
});

describe.each(RECORDING_IDS)('recording %s, as a page brings it', (id) => {
  bringRecordings(recordAll());
  const { trace, stoppedAfter } = solved(id);
  const mine = recording(id);

  it('has the speeds that were solved', () => {
    expect(apart(mine.turbineRpm, trace.turbineRpm)).toBeLessThanOrEqual(HALF);
    expect(apart(mine.outputRpm, trace.outputRpm)).toBeLessThanOrEqual(HALF);
    expect(mine.stoppedAfter).toBe(stoppedAfter);
  });

  it('works out the road speed and the pedal as the solver did', () => {
    // Half a tenth of an rpm at the output is 0.52 mm/s on the road: wheels of 0.35 m behind a final drive of 3.5.
    expect(apart(mine.vehicleSpeed, trace.vehicleSpeed)).toBeLessThan(5.3e-4);
    expect(apart(mine.throttle, trace.throttle)).toBeLessThan(1e-9);
  });
});
