import { expect, test } from 'vitest';
import { words as frame } from '../../src/layouts/words.en.ts';
import type { Lesson } from '../../src/lessons/lesson-schema.ts';
import { lessonTimes, minutesOf } from '../../src/lessons/lesson-times.ts';
import { timed } from '../../src/lessons/timed.ts';
import { ROUND_SIZE } from '../../src/quiz/pick-round.ts';

const words = (count: number): string => Array.from({ length: count }, () => 'word').join(' ');
const read = (body: string, hook = '', objectives: readonly string[] = []): number =>
  lessonTimes({ body, hook, objectives, asked: 6 }).read;

// The rule as the course states it, counted by hand.
test('150 words are a minute, and a word more begins the next', () => {
  expect(read(words(150))).toBe(1);
  expect(read(words(151))).toBe(2);
});

test('hook, objectives and titles are read; folds, formulas, figures, marks and tasks are not', () => {
  expect(read('', words(100), [words(25), words(26)])).toBe(2);
  expect(read(`<Section title="${words(151)}">\n\n</Section>`)).toBe(2);
  const unread = [
    `<GoDeeper title="${words(9)}">\n\n${words(300)}\n\n</GoDeeper>`,
    `$$\n${words(300)}\n$$`,
    '<Drawing of="converter" />',
    '<Src id="a" at="b c d" />',
    '(common practice, no source)',
    `<Tasks>\n\n${words(300)}`,
  ];
  expect(read([words(150), ...unread].join('\n\n'))).toBe(1);
});

test('what waits for a run is read', () => {
  expect(read(`<AfterRun of="fluid">\n\n${words(151)}\n\n</AfterRun>`)).toBe(2);
});

test('a number with its unit is one word', () => {
  expect(read(`${words(149)} <Num id="pressure-400" />`)).toBe(1);
  expect(read(`${words(150)} <Num id="pressure-400" />`)).toBe(2);
});

test('a run is 40 s, a task 60 s, each question of a round 45 s', () => {
  const lesson = {
    body: '<Fluid />\n\n<Drawing of="converter" />',
    hook: 'One.',
    objectives: [],
  };
  const times = lessonTimes({ ...lesson, asked: 6 });
  // 40 s and three tasks: 220 s. Four questions are the main path, and the rest of the round comes on top.
  expect(times).toEqual({ read: 1, simulate: 4, questions: 3, more: 2 });
  expect(minutesOf(times)).toBe(8);
  expect(lessonTimes({ ...lesson, asked: 5 })).toMatchObject({ questions: 3, more: 1 });
  expect(lessonTimes({ ...lesson, asked: 4 })).toMatchObject({ questions: 3, more: 0 });
  expect(lessonTimes({ ...lesson, asked: 0 })).toMatchObject({ questions: 0, more: 0 });
});

test('a lesson says how many questions its round asks', () => {
  const { asked, times } = timed({ data: { id: 'what-slip-is', hook: 'One.' } as Lesson });
  expect(asked.main + asked.more).toBe(ROUND_SIZE);
  const said = {
    ...{ read: '7', simulate: '5' },
    ...{ questions: String(times.questions), asked: asked.main },
  };
  expect(frame.lesson.times(said)).toBe('7 to read, 5 to try it, 3 for 4 questions');
  expect(frame.lesson.times({ ...said, asked: 0 })).toBe('7 to read, 5 to try it');
  expect(frame.lesson.more({ minutes: String(times.more), asked: asked.more })).toBe(
    'plus 2 minutes for 2 more questions',
  );
  expect(frame.lesson.more({ minutes: '1', asked: 1 })).toBe('plus 1 minute for 1 more question');
});
