import { expect, test } from 'vitest';
import type { Learner } from '../../../src/quiz/class/first-answers.ts';
import { meetingTopics } from '../../../src/quiz/class/meeting-topics.ts';

const items = [
  { id: 'gap-1', concept: 'gap', lesson: 'thin-gap' },
  { id: 'gap-2', concept: 'gap', lesson: 'thin-gap' },
  { id: 'air-1', concept: 'air', lesson: 'bench' },
  { id: 'slip-1', concept: 'slip', lesson: 'slip' },
];

/** "gap-1 wrong certain" and so on, in the order answered. */
const learner = (name: string, ...said: readonly string[]): Learner => ({
  name,
  answers: said.map((words, at) => {
    const [item = '', result, sure] = words.split(' ');
    return {
      item,
      at,
      ids: [],
      result: result as 'right' | 'wrong' | 'partial',
      certainty: sure === 'certain' ? 3 : sure === 'fairly' ? 2 : 1,
    };
  }),
});

test('what two were certain of comes before what three only missed; one person’s slip is no topic', () => {
  const learners = [
    learner('A', 'gap-1 wrong certain', 'air-1 wrong guess', 'slip-1 wrong certain'),
    learner('B', 'gap-2 wrong certain', 'gap-1 wrong fairly', 'air-1 partial guess'),
    learner('C', 'gap-1 right fairly', 'air-1 wrong guess', 'slip-1 right certain'),
  ];
  expect(meetingTopics(items, learners)).toEqual([
    { concept: 'gap', lesson: 'thin-gap', item: 'gap-1', asked: 3, missed: 2, certain: 2 },
    { concept: 'air', lesson: 'bench', item: 'air-1', asked: 3, missed: 3, certain: 0 },
  ]);
});

test('a person counts once for an idea, and what was right at the first try stays right', () => {
  const learners = [
    learner('A', 'gap-1 wrong guess', 'gap-2 wrong guess'),
    learner('B', 'gap-1 right guess', 'gap-1 wrong certain', 'gap-2 right guess'),
    learner('C', 'gap-2 wrong guess'),
  ];
  expect(meetingTopics(items, learners)).toEqual([
    { concept: 'gap', lesson: 'thin-gap', item: 'gap-2', asked: 3, missed: 2, certain: 0 },
  ]);
});

test('questions that the bank no longer has are left out, and nobody gives no topics', () => {
  const gone = [learner('A', 'gone wrong certain'), learner('B', 'gone wrong certain')];
  expect(meetingTopics(items, gone)).toEqual([]);
  expect(meetingTopics(items, [])).toEqual([]);
});

test('five at most unless more are asked for', () => {
  const many = Array.from({ length: 9 }, (_, i) => ({
    id: `q${i}`,
    concept: `c${i}`,
    lesson: 'l',
  }));
  const wrong = many.map(({ id }) => `${id} wrong guess`);
  const two = [learner('A', ...wrong), learner('B', ...wrong)];
  expect(meetingTopics(many, two)).toHaveLength(5);
  expect(meetingTopics(many, two, 9)).toHaveLength(9);
});
