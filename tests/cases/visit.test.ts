import { expect, test } from 'vitest';
import {
  costOf,
  drivesIn,
  LOOK_MINUTES,
  standingAfter,
  TALK_MINUTES,
} from '../../src/cases/visit.ts';
import { LOOKS } from '../../src/cases/lists.ts';

test('one conversation is paid once, however much is asked', () => {
  const two = standingAfter(
    [
      { kind: 'ask', what: 'ranges' },
      { kind: 'ask', what: 'lights' },
    ],
    false,
  );
  expect(two.minutes).toBe(TALK_MINUTES);
});

test('a gauge that is on costs no second time, and a hot car is warmed once', () => {
  // The planner's minutes (its specification, section 2): 20 to warm, 12 for the gauge, 2 to read.
  const first = { kind: 'test', what: 'line.park.700.hot' } as const;
  const again = { kind: 'test', what: 'line.drive.700.hot' } as const;
  expect(costOf(first, drivesIn(false))).toBe(20 + 12 + 2);
  expect(costOf(again, standingAfter([first], false))).toBe(2);
  // Overnight to cool: 90.
  const cold = { kind: 'test', what: 'line.park.700.cold' } as const;
  expect(costOf(cold, standingAfter([first], false))).toBe(90 + 2);
});

test('every look takes some time, and leaves the car as it stands', () => {
  for (const what of LOOKS) {
    expect(LOOK_MINUTES[what]).toBeGreaterThan(0);
    const { state } = standingAfter([{ kind: 'look', what }], true);
    expect(state).toEqual(drivesIn(true).state);
  }
});
