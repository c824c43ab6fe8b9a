import { signal } from '@preact/signals';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import {
  ARRIVES,
  contradictions,
  decodeTable,
  hypothesesOf,
  isNumeric,
  LONGEST_STOP,
  nominalReader,
  NUMERIC,
  offScale,
  OUTCOMES,
  plannerOf,
  testOf,
  wayOf,
  withFault,
  type TakenReading,
  type Test,
} from '../../src/diagnosis/index.ts';
import { keptSecondTable } from '../../src/diagnosis/kept-second-table.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';
import type { Answer, Ask, Think } from '../../src/planner/messages.ts';
import { training } from '../../src/engine/index.ts';
import { twoFaultWords } from '../../src/planner/Lists.tsx';
import { makePlanner } from '../../src/planner/model.ts';
import { thinkOnPage } from '../../src/planner/think-on-page.ts';
import { thinker } from '../../src/planner/thinker.ts';
import { thinking } from '../../src/planner/thinking.ts';

const table = decodeTable(keptTable);
const planner = plannerOf(table);
const low: TakenReading = { test: testOf('clutch.forward.700.hot'), value: 170 };
const lower: TakenReading = { test: testOf('clutch.reverse.700.hot'), value: 165 };

beforeEach(() => {
  // The clock runs on: slices end by it.
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
});
afterEach(() => {
  vi.useRealTimers();
});

function page(think: Think = thinkOnPage) {
  const readings = signal<readonly TakenReading[]>([]);
  const after = signal<readonly TakenReading[]>([]);
  const model = makePlanner(readings, think, after);
  model.table.value = keptTable;
  return { readings, after, model };
}
const direct = (readings: readonly TakenReading[], state = ARRIVES) =>
  planner({ readings, state, priors: {} });
const ids = (next: readonly { readonly test: { readonly id: string }; readonly bits: number }[]) =>
  next.map(({ test: { id }, bits }) => [id, bits]);

test('piece by piece it says what the planner says in one go', () => {
  const { readings, model } = page();
  readings.value = [low];
  vi.runAllTimers();
  const said = direct([low], model.stands.value.state);
  expect(model.ranking.value).toBe(false);
  expect(model.advice.value?.faults).toEqual(said.faults);
  expect(model.advice.value?.fit).toEqual(said.fit);
  expect(ids(model.advice.value?.next ?? [])).toEqual(ids(said.next));
  expect(model.advice.value?.steps).toHaveLength(2);
  expect(model.advice.value?.next[0]?.expects.length).toBeGreaterThan(0);
});

test('what tests can read is awaited from the table to the first answer', () => {
  const { model } = page();
  expect(model.awaited.value).toBe(true);
  vi.runAllTimers();
  expect(model.awaited.value).toBe(false);
  model.table.value = null;
  expect(model.awaited.value).toBe(false);
});

test('the list comes first, and the tests while it can be read', () => {
  const { model } = page();
  while (model.advice.value === null) vi.advanceTimersToNextTimer();
  expect(model.ranking.value).toBe(true);
  expect(model.advice.value.next).toEqual([]);
  vi.runAllTimers();
  expect(model.ranking.value).toBe(false);
});

test('a reading that comes meanwhile ends the question before it', () => {
  const { readings, model } = page();
  vi.advanceTimersToNextTimer();
  readings.value = [low];
  vi.advanceTimersToNextTimer();
  readings.value = [low, lower];
  vi.runAllTimers();
  expect(model.advice.value?.of.readings).toEqual([low, lower]);
  expect(model.advice.value?.faults).toEqual(direct([low, lower]).faults);
});

test('answers that come late, or in another order, are not taken', () => {
  const asked: Ask[] = [];
  let tell: (answer: Answer) => void = () => undefined;
  const { readings, model } = page((told) => {
    tell = told;
    return { ask: (ask) => asked.push(ask), stop: () => undefined };
  });
  readings.value = [low];
  const [first, second] = asked;
  if (first?.kind !== 'think' || second?.kind !== 'think') throw new Error('Nothing was asked.');
  const listed = (of: readonly TakenReading[], turn: number): Answer => {
    const { faults, fit } = direct(of);
    return { kind: 'listed', turn, listed: { faults, fit, steps: [] } };
  };
  tell(listed([low], second.turn));
  tell(listed([], first.turn));
  tell({ kind: 'ranked', turn: first.turn, next: [], outcomes: [] });
  expect(model.advice.value?.faults).toEqual(direct([low]).faults);
  expect(model.ranking.value).toBe(true);
  tell({ kind: 'ranked', turn: second.turn, next: [], outcomes: [] });
  expect(model.ranking.value).toBe(false);
});

test('readings that cannot both be right are named, before the repair and after it', () => {
  const { readings, after, model } = page();
  const [one, other] = [600, 60].map((value) => ({ test: testOf('line.park.700.hot'), value }));
  if (!one || !other) throw new Error('There are two.');
  readings.value = [one, low, other];
  after.value = [other, one];
  vi.runAllTimers();
  const hypotheses = hypothesesOf(table);
  expect(model.clashing.value?.before).toEqual(contradictions(hypotheses, [one, low, other]));
  expect(model.clashing.value?.before).toHaveLength(1);
  expect(model.clashing.value?.after).toHaveLength(1);
});

test('another transmission is reasoned about afresh, and what is no table is said to be none', () => {
  const { readings, model } = page();
  readings.value = [low];
  vi.runAllTimers();
  model.table.value = keptSecondTable;
  expect(model.advice.value).toBeNull();
  expect(model.grounds.value).toBeNull();
  vi.runAllTimers();
  const second = plannerOf(decodeTable(keptSecondTable));
  const said = second({ readings: [low], state: model.stands.value.state, priors: {} });
  expect(model.advice.value?.faults).toEqual(said.faults);
  expect(model.grounds.value).not.toBeNull();
  model.table.value = 'no table';
  vi.runAllTimers();
  expect(model.unreadable.value).toBe('no table');
  expect(model.advice.value).toBeNull();
});

test('a page that goes away takes its timer with it', () => {
  const { model } = page();
  expect(vi.getTimerCount()).toBe(1);
  model.stop();
  expect(vi.getTimerCount()).toBe(0);
});

test('the way of the planner on a car that is read as it goes is the one on a car read at once', () => {
  // Two taps low, the rest as it likes: no car of anybody's, but one way through it.
  const read = (test: Test): TakenReading => {
    if (!isNumeric(test))
      return { test, value: test.kind === 'codes' ? [] : OUTCOMES[test.kind][0] };
    return { test, value: test.kind === 'clutchPressure' ? 170 : 1 };
  };
  const most = 3;
  const told: Answer[] = [];
  const works = thinking((answer) => {
    told.push(answer);
    if (answer.kind === 'wants') works.ask({ kind: 'read', turn: 1, reading: read(answer.test) });
  }, Infinity);
  works.ask({ kind: 'way', turn: 1, table: keptTable, state: ARRIVES, most });
  vi.runAllTimers();
  const last = told.at(-1);
  const way = [...wayOf(hypothesesOf(table), read)].slice(1, most + 1);
  expect(last?.kind === 'way' && last.tests.map(({ reading }) => reading.test.id)).toEqual(
    way.map((milestone) => milestone.last?.reading.test.id),
  );
});

/** Lets promises that are done go on. */
const settled = () => vi.advanceTimersByTimeAsync(1000);

test.each([
  ['is refused', () => Promise.reject(new Error('no worker'))],
  [
    'cannot be made',
    () =>
      Promise.resolve(() => {
        throw new Error('no worker');
      }),
  ],
  [
    'is lost on its first question',
    () =>
      Promise.resolve<Think>((told) => ({
        ask: () => told({ kind: 'lost' }),
        stop: () => undefined,
      })),
  ],
] as const)('where the worker %s the page thinks', async (_how, worker) => {
  const { readings, model } = page(thinker(worker, () => Promise.resolve(thinkOnPage)));
  readings.value = [low];
  await settled();
  expect(model.advice.value?.faults).toEqual(direct([low]).faults);
  expect(model.ranking.value).toBe(false);
  expect(model.lost.value).toBe(false);
});

test('where nothing thinks, it is said', async () => {
  const no = () => Promise.reject(new Error('not there'));
  const { model } = page(thinker(no, no));
  await settled();
  expect(model.lost.value).toBe(true);
});

test('two faults are named where one does not explain it, and the page says which', () => {
  // A worn pump and worn rings of the forward clutch: what each test reads is the engine's, with both on one car.
  const spoilt = withFault(
    withFault(training, { name: 'pumpWear' }, 0.7),
    { name: 'sealingRings', circuit: 'forward' },
    0.5,
  );
  const nominal = nominalReader(spoilt);
  const all = NUMERIC.filter(({ at }) => at.warmth !== 'frost').map((test): TakenReading => {
    const value = offScale(test, nominal(test.id));
    return { test, value: test.kind === 'stopTime' && value > LONGEST_STOP ? null : value };
  });
  const { readings, model } = page();
  // Rings and a piston seal lose the same; where the air comes out tells them apart.
  readings.value = [...all, { test: testOf('airWhere.forward'), value: 'rings' }];
  vi.runAllTimers();
  const two = model.advice.value?.two;
  expect(two?.pairs[0]?.of).toEqual(
    expect.arrayContaining([{ name: 'pumpWear' }, { name: 'sealingRings', circuit: 'forward' }]),
  );
  expect(model.advice.value?.fit.singleFaultFits).toBe(false);
  expect(twoFaultWords(model.advice.value, 'us')).toContain('Worn sealing rings, forward clutch');
  // One fault alone is not taken for two.
  const single = nominalReader(withFault(training, { name: 'pumpWear' }, 0.7));
  readings.value = all.map(({ test }) => ({
    test,
    value: isNumeric(test) ? offScale(test, single(test.id)) : null,
  }));
  vi.runAllTimers();
  expect(model.advice.value?.fit.singleFaultFits).toBe(true);
  expect(twoFaultWords(model.advice.value, 'us')).toBe('');
});
