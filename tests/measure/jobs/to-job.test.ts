import { describe, expect, test } from 'vitest';
import { asKept, standingOf, withReadings } from '../../../src/measure/log/to-job.ts';
import { takenOf } from '../../../src/measure/jobs/taken.ts';
import { newJob, readingsOf, type Job, type JobReading } from '../../../src/storage/jobs/job.ts';

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

describe('a log that stands in a job', () => {
  const log = [
    { test: 'stopTime', range: 'drive', temperature_C: 21.5, value: 0.62 },
    { test: 'stopTime', range: 'drive', temperature_C: 96, value: null },
    { test: 'stopTime', range: 'drive', temperature_C: 96, value: null },
    { test: 'takeoffSlip', range: 'drive', temperature_C: 96, value: 850 },
  ] as const;
  const once = withReadings(newJob('a', 1, 'Bay 3'), log, 1000);
  const changed = (edit: (reading: JobReading) => JobReading | null): Job => {
    const [[id, dated] = ['', undefined]] = Object.entries(once.readings);
    if (!dated?.value) throw new Error('Nothing stands there.');
    return {
      ...once,
      readings: { ...once.readings, [id]: { at: 2000, value: edit(dated.value) } },
    };
  };
  const count = (job: Job) => readingsOf(job).length;

  test('is not put there twice, in whichever order it comes', () => {
    expect(standingOf(once, asKept(log)).here).toBe(4);
    expect(withReadings(once, [...log].reverse(), 3000)).toEqual(once);
  });
  test('two readings alike are two', () => {
    const two = withReadings(newJob('a', 1, 'Bay 3'), log.slice(0, 2), 1000);
    expect(standingOf(two, asKept(log)).here).toBe(2);
    expect(count(withReadings(two, log, 3000))).toBe(4);
  });
  test('after the repair it stands there as well', () =>
    expect(
      standingOf(
        changed((one) => ({ ...one, phase: 'after' })),
        asKept(log),
      ).here,
    ).toBe(4));
  test('what was taken out or typed over is missing, and can be put there again', () => {
    for (const job of [
      changed(() => null),
      changed((one) => ({ ...one, typed: '0.7', value: 0.7 })),
    ]) {
      expect(standingOf(job, asKept(log)).here).toBe(3);
      const again = withReadings(job, log, 3000);
      expect(count(again)).toBe(count(job) + 1);
      expect(standingOf(again, asKept(log)).here).toBe(4);
    }
  });
  test('what somebody typed is no reading of a log', () => {
    const typed = changed((one) => ({ ...one, typed: '0.62' }));
    expect(standingOf(typed, asKept(log)).here).toBe(3);
  });
});

test('a reading that this version of the site does not know is kept, and not weighed', () => {
  const reading = { phase: 'before', value: 1, typed: '1', units: 'us' } as const;
  expect(takenOf({ ...reading, test: 'ofLater' })).toBeNull();
  expect(takenOf({ ...reading, test: 'line.park.700.hot', value: -4 })).toBeNull();
  expect(
    takenOf({ ...reading, test: 'line.park.700.hot', value: 500, temperatureC: 20 }),
  ).toBeNull();
});
