import { expect, test } from 'vitest';
import {
  clockText,
  elapsed,
  paused,
  secondsLeft,
  started,
  STOPPED,
} from '../../src/meeting/clock.ts';

const MINUTE = 60_000;

test('a clock runs, stands and runs on', () => {
  const first = paused(started(STOPPED, 1000), 1000 + 2 * MINUTE);
  expect(elapsed(first, 99 * MINUTE)).toBe(2 * MINUTE);
  const again = started(first, 50 * MINUTE);
  expect(elapsed(again, 51 * MINUTE)).toBe(3 * MINUTE);
  expect(started(again, 70 * MINUTE)).toBe(again);
});

test('a clock that was set back takes nothing away', () => {
  expect(elapsed({ ran: 5000, since: 90_000 }, 10_000)).toBe(5000);
});

test('ten minutes begin full, end at nothing, and go over', () => {
  const clock = started(STOPPED, 0);
  const at = (ms: number): string => clockText(secondsLeft(clock, 10, ms));
  expect(at(0)).toBe('10:00');
  expect(at(1)).toBe('10:00');
  expect(at(55_000)).toBe('9:05');
  expect(at(10 * MINUTE)).toBe('0:00');
  expect(at(10 * MINUTE + 30_000)).toBe('+0:30');
});
