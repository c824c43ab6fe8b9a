import { expect, test } from 'vitest';
import { recordAll } from '../../src/car/record.ts';
import { bringRecordings, recording } from '../../src/car/recordings.ts';
import { replay } from '../../src/car/replay.ts';
import { illustrativeSettings } from '../../src/engine/index.ts';

bringRecordings(recordAll());

test('a clutch that never takes hold: judged late, stored, and Park chosen by the controller', () => {
  const sensor = { noiseRpm: 0, resolutionRpm: 1 };
  const { events, failed, codeAfter, states } = replay(
    recording('crack25'),
    illustrativeSettings,
    sensor,
  );
  // The model's rule: the engagement is checked 1.5 s after selection; a code follows slip that has lasted 0.3 s with pressure raised.
  expect(failed).toEqual({ check: 'engagement', after: 1.5 });
  const raised = events.find(({ event }) => event === 'pressure raised')?.time ?? Number.NaN;
  const selected = states.find(({ state }) => state === 'engaging')?.time ?? Number.NaN;
  expect(codeAfter).toBeCloseTo(raised + 0.3 - selected, 9);
  // With electronic selection and the car at a stand.
  expect(states.at(-1)?.state).toBe('failSafePark');
});
