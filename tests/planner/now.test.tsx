import { signal } from '@preact/signals';
import render from 'preact-render-to-string';
import { afterAll, expect, test, vi } from 'vitest';
import {
  areTwo,
  LONGEST_STOP,
  nominalReader,
  NUMERIC,
  offScale,
  testOf,
  withFault,
  type TakenReading,
} from '../../src/diagnosis/index.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';
import { training } from '../../src/engine/index.ts';
import { Causes, Next, twoFaultWords } from '../../src/planner/Lists.tsx';
import { makePlanner } from '../../src/planner/model.ts';
import { noTestLeft } from '../../src/planner/no-test-left.ts';
import { Now } from '../../src/planner/Now.tsx';
import { thinkOnPage } from '../../src/planner/think-on-page.ts';

vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
afterAll(() => {
  vi.useRealTimers();
});
const text = (html: string): string => html.replace(/<[^>]+>/g, ' ').replace(/[\s\u00a0]+/g, ' ');
const read = (id: string, value: number | null | string): TakenReading => ({
  test: testOf(id),
  value,
});

function said(given: readonly TakenReading[]) {
  const model = makePlanner(signal(given), thinkOnPage);
  model.table.value = keptTable;
  vi.runAllTimers();
  const advice = model.advice.value;
  if (advice === null) throw new Error('The planner said nothing.');
  return {
    advice,
    now: text(render(<Now model={model} />)),
    causes: text(render(<Causes model={model} />)),
    next: text(render(<Next model={model} />)),
  };
}

/** A line of 300 kPa in Park and 600 in Drive at the same commands; a turbine that stops at once and late. */
const CONTRARY = [
  read('line.park.700.hot', 300),
  read('line.drive.700.hot', 600),
  read('clutch.forward.700.hot', 391),
  read('stopTime.drive.hot', 0.6),
  read('stopTime.drive.hot', 1.8),
];
/** Everything that is measured in numbers, by the engine, on a car with a worn pump and worn rings. */
const spoilt = nominalReader(
  withFault(
    withFault(training, { name: 'pumpWear' }, 0.7),
    { name: 'sealingRings', circuit: 'forward' },
    0.5,
  ),
);
const TWO_FAULTS = [
  ...NUMERIC.filter(({ at }) => at.warmth !== 'frost').map((one) => {
    const value = offScale(one, spoilt(one.id));
    return { test: one, value: one.kind === 'stopTime' && value > LONGEST_STOP ? null : value };
  }),
  read('airWhere.forward', 'rings'),
];
const OPENS = /look there first|repair one/i;

test('of readings that contradict each other it is said that they do not fit, and nothing is to be opened or repaired', () => {
  const { advice, now, causes, next } = said(CONTRARY);
  expect(advice.clash).toBe(true);
  expect(advice.faults[0]?.fault).toBe('unlisted');
  expect(now).toContain('These readings do not fit together.');
  expect(causes).toContain('Take those that cannot both be right once more first');
  for (const one of [now, causes, next]) expect(one).not.toMatch(OPENS);
});

/** Numbers from anywhere, of which two faults explain each as well as one. */
const ANYWHERE = {
  together: [
    read('clutch.forward.1500.hot', 360),
    read('coolerFlow.park.700.hot', 5.5),
    read('line.drive.1500.hot', 850),
    read('line.reverse.700.hot', 530),
  ],
  apart: [
    read('clutch.forward.700.hot', 220),
    read('line.drive.1500.hot', 470),
    read('clutch.forward.1500.hot', 820),
    read('stopTime.reverse.hot', 1.5),
    read('line.reverse.700.hot', 420),
    read('clutch.reverse.700.hot', 430),
  ],
};

test('where something outside the list stands first nothing is to be repaired or opened up', () => {
  const { advice, now, causes, next } = said(ANYWHERE.together);
  expect([advice.clash, advice.faults[0]?.fault]).toEqual([false, 'unlisted']);
  expect(advice.two && areTwo(advice.two)).toBe(true);
  expect(now).toContain('These readings fit no fault of this list');
  expect(causes).toContain('repair neither of them yet. Take the reading that surprises you most');
  for (const one of [now, causes, next]) expect(one).not.toMatch(OPENS);
});

test('a pair is not named from readings of which two cannot both be right', () => {
  const { advice, now, causes } = said(ANYWHERE.apart);
  expect(advice.clash).toBe(true);
  expect(advice.two && areTwo(advice.two)).toBe(true);
  expect(now).toContain('These readings do not fit together.');
  expect(causes).not.toMatch(OPENS);
  expect(causes).not.toContain('of the pairs');
});

test('the share of a pair is one of the pairs', () => {
  expect(twoFaultWords(said(TWO_FAULTS).advice, 'us')).toMatch(
    /% of the pairs; how likely two faults are at all is not in that\)\. Repair one of them/,
  );
});

test.each([
  ['clutchControl', false, /look there first/],
  ['unlisted', false, /names no part/],
  ['healthy', false, /names no part/],
  ['clutchControl', true, /First take the readings/],
] as const)(
  'with %s first and contradicting readings: %s, the end is said as %s',
  (fault, clash, words) => {
    expect(noTestLeft({ faults: [{ fault, probability: 0.95 }], clash })).toMatch(words);
  },
);

test('until it is known whether readings contradict each other, they are being weighed', () => {
  const model = makePlanner(signal(CONTRARY), thinkOnPage);
  model.table.value = keptTable;
  const now: string[] = [];
  const stop = model.advice.subscribe(() => now.push(text(render(<Now model={model} />))));
  vi.runAllTimers();
  stop();
  expect(now.filter((one) => one.includes('on the list now'))).toEqual([]);
  expect(now.some((one) => one.includes('Weighing your readings.'))).toBe(true);
});
