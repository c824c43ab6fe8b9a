import { expect, test } from 'vitest';
import { withReadings } from '../../../src/measure/log/to-job.ts';
import { takenOf } from '../../../src/measure/jobs/taken.ts';
import { newJob, readingsOf } from '../../../src/storage/jobs/job.ts';

test('readings of a log stand in the job in their order, with their temperatures, and are understood there', () => {
  const job = withReadings(
    newJob('a', 1, 'Bay 3'),
    [
      { test: 'stopTime', range: 'drive', temperature_C: 21.5, value: 0.62 },
      { test: 'stopTime', range: 'drive', temperature_C: 96, value: null },
      { test: 'takeoffSlip', range: 'drive', temperature_C: 96, value: 850 },
    ],
    1000,
  );
  const read = readingsOf(job).map((one) => takenOf(one));
  expect(read.map((one) => [one?.test.id, one?.value, one?.temperatureC])).toEqual([
    ['stopTime.drive.cold', 0.62, 21.5],
    ['stopTime.drive.hot', null, 96],
    ['takeoffSlip.drive.hot', 850, 96],
  ]);
});

test('a reading that this version of the site does not know is kept, and not weighed', () => {
  const reading = { phase: 'before', value: 1, typed: '1', units: 'us' } as const;
  expect(takenOf({ ...reading, test: 'ofLater' })).toBeNull();
  expect(takenOf({ ...reading, test: 'line.park.700.hot', value: -4 })).toBeNull();
  expect(
    takenOf({ ...reading, test: 'line.park.700.hot', value: 500, temperatureC: 20 }),
  ).toBeNull();
});
