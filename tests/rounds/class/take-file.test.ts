import { expect, test } from 'vitest';
import { takeFile, type Member } from '../../../src/rounds/class/take-file.ts';
import { writeBundle } from '../../../src/storage/bundle/bundle.ts';
import { answersFrom, classFile, emptyBundle, NOON } from './class-files.ts';

function taken(text: string, there: readonly Member[] = []): Member {
  const one = takeFile(text, there, there.length + 1);
  if (one.kind !== 'new') throw new Error(`${one.kind} is not new`);
  return one.member;
}
const DAY = 86_400_000;
const early = ['gap right certain', 'air wrong fairly'];
const late = [...early, 'slip right guess'];

test('a file is a member by the name in it, with its answers in the order of the clock', () => {
  const file = writeBundle({
    ...emptyBundle,
    name: 'Bay 3',
    written: NOON,
    answers: [
      ...answersFrom(['gap wrong certain'], NOON),
      ...answersFrom(['air right guess'], NOON - DAY),
      // A prediction is no question.
      {
        at: NOON,
        answer: { kind: 'prediction', sim: 's', option: 'o', confidence: 'certain', right: true },
      },
    ],
  });
  expect(taken(file)).toMatchObject({
    name: 'Bay 3',
    number: 1,
    answers: [
      { item: 'air', result: 'right', ids: ['yes'], certainty: 1 },
      { item: 'gap', result: 'wrong', ids: ['no'], certainty: 3 },
    ],
  });
});

test('a file without a name has none, and one without answers is none', () => {
  expect(taken(classFile(null, early)).name).toBeNull();
  expect(takeFile(classFile('A', []), [], 1)).toEqual({ kind: 'empty' });
});

test('what is no such file is refused in the words of the reader of files', () => {
  const one = takeFile('{"kind":"other"}', [], 1);
  expect(one.kind === 'refused' && one.sentence).toMatch(/comes from somewhere else/);
});

test('the same learner twice counts once, by the fuller file, whatever the names say', () => {
  const first = taken(classFile(null, early));
  expect(takeFile(classFile('A', early), [first], 2)).toEqual({ kind: 'same', as: first });
  const fuller = takeFile(classFile('A', late), [first], 2);
  expect(fuller).toMatchObject({ kind: 'fuller', as: first, member: { name: 'A', number: 1 } });
  const full = taken(classFile('A', late));
  expect(takeFile(classFile('A', early), [full], 2)).toEqual({ kind: 'same', as: full });
  // Two who gave the same answers at other times are two.
  expect(takeFile(classFile('A', early, NOON + DAY), [full], 2)).toMatchObject({ kind: 'new' });
});
