import { expect, test } from 'vitest';
import {
  lessonRoundsKeeper,
  roundOfLesson,
  withRound,
  type LessonRounds,
} from '../../src/storage/lesson-rounds.ts';
import { fakeArea } from './fake-area.ts';

const DAY = 86_400_000;
const NOW = 100 * DAY;
const none: LessonRounds = { byLesson: {} };
const round = { begun: NOW, seed: 7, items: ['a', 'b'] };

test('a round waits for its lesson until it is over', () => {
  const area = fakeArea();
  const keeper = lessonRoundsKeeper(area);
  keeper.update((rounds) => withRound(rounds, 'fluid', round, NOW));
  const { data } = lessonRoundsKeeper(area).read();
  expect(roundOfLesson(data, 'fluid', NOW + DAY)).toEqual(round);
  expect(roundOfLesson(data, 'another', NOW)).toBeUndefined();
  keeper.update((rounds) => withRound(rounds, 'fluid', undefined, NOW));
  expect(keeper.read().data).toEqual(none);
});

test('a week later it is asked afresh, also where the clock was wrong, and goes with the next write', () => {
  const kept = withRound(none, 'fluid', round, NOW);
  expect(roundOfLesson(kept, 'fluid', NOW + 7 * DAY)).toEqual(round);
  expect(roundOfLesson(kept, 'fluid', NOW + 7 * DAY + 1)).toBeUndefined();
  expect(roundOfLesson(kept, 'fluid', NOW - 8 * DAY)).toBeUndefined();
  const next = withRound(kept, 'other', { ...round, begun: NOW + 8 * DAY }, NOW + 8 * DAY);
  expect(Object.keys(next.byLesson)).toEqual(['other']);
});

test.each([
  [null],
  [{}],
  [{ byLesson: [] }],
  [{ byLesson: { fluid: null } }],
  [{ byLesson: { fluid: { ...round, begun: -1 } } }],
  [{ byLesson: { fluid: { ...round, seed: 'x' } } }],
  [{ byLesson: { fluid: { ...round, items: [1] } } }],
])('what is none is not taken for one: %j', (data) => {
  const area = fakeArea();
  area.setItem('hot-clutch:lesson-rounds:a', JSON.stringify({ v: 1, n: 1, data }));
  area.setItem('hot-clutch:lesson-rounds:slot', 'a');
  expect(lessonRoundsKeeper(area).read()).toEqual({ data: none, status: 'unreadable' });
});
