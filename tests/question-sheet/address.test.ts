import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readAddress, searchOf, SHOWN } from '../../src/question-sheet/address.ts';
import { readChoice, type Choice } from '../../src/question-sheet/choice.ts';
import { areas, lessons } from './areas.ts';

const choices: fc.Arbitrary<Choice> = fc
  .record({
    lessons: fc.subarray(lessons, { minLength: 1 }),
    count: fc.integer({ min: 5, max: 10 }),
    units: fc.constantFrom('us' as const, 'si' as const),
    seed: fc.stringMatching(/^[a-z0-9-]{1,16}$/),
  })
  .map((one) => ({ ...one, all: one.lessons.length === lessons.length, version: '7k2m9q' }));

describe('the address of a sheet', () => {
  test('reads back as the choice that it was made of', () => {
    fc.assert(
      fc.property(choices, fc.constantFrom(...SHOWN), (choice, shown) => {
        const read = readAddress(searchOf(choice, '7k2m9q', shown), areas, 'us');
        expect(read).toMatchObject({ shown, gone: [] });
        expect(read && readChoice(read.typed, areas)).toEqual(choice);
      }),
    );
  });

  test('is none without a seed', () => {
    expect(readAddress('', areas, 'us')).toBeUndefined();
    expect(readAddress('?count=7', areas, 'us')).toBeUndefined();
  });

  test('keeps what is wrong in it for the field that it belongs to', () => {
    const read = readAddress(
      '?lessons=one.gone.two&count=lots&units=furlongs&seed=a b&version=?&show=c',
      areas,
      'si',
    );
    expect(read).toEqual({
      typed: {
        lessons: new Set(['one', 'two']),
        count: 'lots',
        units: 'si',
        seed: 'a b',
        version: '?',
      },
      shown: 'a',
      gone: ['gone'],
    });
  });

  test('never throws, whatever stands in it', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (seed, rest) => {
        const read = readAddress(`?seed=${seed}&lessons=${rest}&count=${rest}`, areas, 'us');
        if (read !== undefined) readChoice(read.typed, areas);
      }),
      { numRuns: 100 },
    );
  });
});
