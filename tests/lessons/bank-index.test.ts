import { expect, test } from 'vitest';
import { bankIndex } from '../../src/lessons/bank-index.ts';
import { course } from '../../src/lessons/course.ts';
import { questionBank } from '../../src/lessons/question-bank.ts';
import { readBankIndex } from '../../src/quiz/bank-index.ts';

test('the index has every question once, in the order of the course, and is read back as it was sent', () => {
  const index = bankIndex();
  expect(index.items.map(({ id }) => id).sort()).toEqual(
    questionBank()
      .map(({ id }) => id)
      .sort(),
  );
  const places = index.items.map(({ lesson }) => course.findIndex(({ id }) => id === lesson));
  expect(places).toEqual([...places].sort((a, b) => a - b));
  expect(readBankIndex(JSON.stringify(index))).toEqual(index);
});

test.each(['', '{}', '<html>', '{"form":2,"lessons":[],"items":[]}', '{"form":1,"items":[{}]}'])(
  'what is no index is refused: %s',
  (text) => {
    expect(() => readBankIndex(text)).toThrow();
  },
);
