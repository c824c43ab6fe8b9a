/** What customers are said to notice is what the engine says now, and what the trade says of these faults. */
import { describe, expect, test } from 'vitest';
import { accountsOf, packed } from '../../src/cases/accounts.ts';
import { ANSWERS, DAYS } from '../../src/cases/answers.ts';
import { clockSays, minutesUntil } from '../../src/cases/days.ts';
import { keptAccounts } from '../../src/cases/kept-accounts.ts';
import { carOf } from '../../src/cases/talk-cars.ts';
import { CLASSES } from '../../src/diagnosis/hypotheses.ts';

// One of each kind: shared gap, cold only, frost only, all ranges hot. The rest takes a minute: npm run accounts.
test.each([
  ['transferSeal', undefined],
  ['hardLip', 'forward'],
  ['filter', undefined],
  ['regulatorBore', undefined],
])('%s is as the engine has it now', { timeout: 60_000 }, (name, circuit) => {
  const index = CLASSES.findIndex((of) => of.name === name && of.circuit === circuit);
  const of = CLASSES[index];
  if (of === undefined) throw new Error(`no class ${name}`);
  const now = accountsOf(index, of).map(packed);
  expect(now).toEqual(keptAccounts.filter(([first]) => first === index));
});

test('every class that is in the list has a car', () => {
  const there = new Set(keptAccounts.map(([index]) => index));
  CLASSES.forEach(({ name }, index) => expect(there.has(index)).toBe(name !== 'unlisted'));
});

describe('what the trade says (common practice, no source)', () => {
  test.each([
    ['transferSeal', 'both', 'hot'],
    ['sealingRings', 'drive', 'hot'],
    ['pistonSeal', 'drive', 'hot'],
    ['clutchControl', 'drive', 'hot'],
    ['hardLip', 'drive', 'cold'],
    ['openPort', 'drive', 'same'],
    ['pressureControl', 'both', 'same'],
    ['frictionWear', 'both', 'same'],
    ['healthy', 'none', 'neither'],
  ] as const)('%s: %s, %s', (name, ranges, warm) => {
    const truth = carOf(name, 'forward').truthOn('overnight-flat');
    expect(ANSWERS.ranges[truth.ranges]).toBe(ranges);
    expect(ANSWERS.warm[truth.warm]).toBe(warm);
  });

  test('a starved pump is worst in frost, and a false sensor is a light and nothing else', () => {
    expect(ANSWERS.weather[carOf('filter', 'forward').truthOn('overnight-flat').weather]).toBe(
      'worse',
    );
    const sensor = carOf('turbineSensor', 'forward').truthOn('overnight-flat');
    expect(ANSWERS.lights[sensor.lights]).toBe('yes');
    expect(ANSWERS.ranges[sensor.ranges]).toBe('none');
  });
});

test('hills are quicker than the flat, and a warm start quicker than a cold one', () => {
  for (const tempC of [65, 77, 85]) {
    const [flat, hills, stopFlat, stopHills] = DAYS.map(
      (day) => minutesUntil(tempC, day) ?? Infinity,
    );
    expect(hills).toBeLessThan(flat ?? 0);
    expect(stopHills).toBeLessThan(stopFlat ?? 0);
    expect(stopHills).toBeLessThan(hills ?? 0);
    expect(stopFlat).toBeLessThan(flat ?? 0);
  }
  // Warm enough already; and hotter than gentle driving ever gets.
  expect(minutesUntil(55, 'stop-flat')).toBe(0);
  expect(minutesUntil(110, 'overnight-flat')).toBeNull();
  expect([null, 0, 8, 20, 40].map(clockSays)).toEqual(['not', 'first', 'ten', 'half', 'longer']);
});
