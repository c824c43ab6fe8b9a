import { expect, test } from 'vitest';
import { coolestWith, engage, soundCar, traceAt } from '../../src/car/index.ts';
import { END, SELECT } from '../../src/car/recordings.ts';

test('a trace is read from its row on, and not behind its end', () => {
  const solved = engage(soundCar, { tempC: 20 });
  const row = solved.trace.time.findIndex((time) => time > SELECT + 1 - 1e-4);
  expect(traceAt(solved, 'turbineRpm', 1)).toBe(solved.trace.turbineRpm[row]);
  const behind = END - SELECT + 1;
  expect(() => traceAt(solved, 'turbineRpm', behind)).toThrow(
    `The trace ends before ${behind} s after selection.`,
  );
});

test('an event that comes in every car, or in none, has no coolest fluid', () => {
  expect(() => coolestWith(soundCar, 'turbine stopped')).toThrow(
    '"turbine stopped" does not begin between 20 and 100 °C.',
  );
  expect(() => coolestWith(soundCar, 'code stored')).toThrow('does not begin between');
});
