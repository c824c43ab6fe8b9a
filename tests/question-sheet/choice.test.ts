import { describe, expect, test } from 'vitest';
import { readChoice, type Faults, type Typed } from '../../src/question-sheet/choice.ts';
import { areas } from './areas.ts';

const good: Typed = {
  lessons: new Set(['two', 'one']),
  count: ' 20 ',
  units: 'us',
  seed: 'Friday',
  version: '',
};
const faultsOf = (change: Partial<Typed>): Faults => {
  const read = readChoice({ ...good, ...change }, areas);
  return 'faults' in read ? read.faults : {};
};

test('what is good is read, lessons in the order of the course', () => {
  expect(readChoice(good, areas)).toEqual({
    lessons: areas[0]?.lessons,
    all: false,
    count: 20,
    units: 'us',
    seed: 'friday',
    version: '',
  });
});

describe('a fault stands at its field, in a sentence that says what may stand there', () => {
  test.each([
    ['', 'Type how many questions you want, 5 to 40.'],
    ['a dozen', '“a dozen” is not a whole number. Type one from 5 to 40.'],
    ['7.5', '“7.5” is not a whole number. Type one from 5 to 40.'],
    ['-6', '“-6” is not a whole number. Type one from 5 to 40.'],
    ['4', 'A sheet holds 5 to 40 questions, and you asked for 4.'],
    ['41', 'A sheet holds 5 to 40 questions, and you asked for 41.'],
    ['99999999999999999999', /^A sheet holds 5 to 40/],
    [
      '23',
      'The lessons you ticked hold 22 questions. Ask for no more than that, or tick more lessons.',
    ],
  ])('count %j', (count, sentence) => {
    expect(faultsOf({ count })).toEqual({ count: expect.stringMatching(sentence) as string });
  });

  test.each([
    ['', /^Type a seed/],
    ['bay 3', /and this one has a space in it\.$/],
    ['ölig', /and this one has “ö” in it\.$/],
    ['a-very-long-seed-indeed', /16 characters at most/],
  ])('seed %j', (seed, sentence) => {
    expect(faultsOf({ seed })).toEqual({ seed: expect.stringMatching(sentence) as string });
  });

  test('no lesson, and a version that is none: all of them at once', () => {
    expect(faultsOf({ lessons: new Set(), seed: '!', version: 'old', count: '3' })).toEqual({
      lessons: 'Tick at least one lesson to draw from.',
      seed: expect.stringContaining('“!”') as string,
      version: expect.stringContaining('six letters and digits') as string,
      count: expect.stringContaining('5 to 40') as string,
    });
  });
});
