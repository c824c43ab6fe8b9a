import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Answer } from '../../../src/storage/answer.ts';
import type { DatedAnswer } from '../../../src/storage/bundle/bundle.ts';
import {
  missingFrom,
  numbersFor,
  type Numbered,
} from '../../../src/storage/bundle/missing-answers.ts';

const answer = (option: string): Answer => ({
  kind: 'prediction',
  sim: 'fluid',
  option,
  confidence: 'certain',
  right: true,
});
const given = (at: number, option = 'a') => ({ at, answer: answer(option) });
const numbered = (times: readonly number[]): Numbered[] =>
  times.map((at, i) => ({ n: i + 1, ...given(at, `here ${i}`) }));
const keysOf = (here: readonly Numbered[]): number[] => here.map(({ n }) => n);

/** The log after the file is in, by number; what has none goes to the end. */
function merged(here: readonly Numbered[], file: readonly ReturnType<typeof given>[]) {
  const missing = missingFrom(here, file);
  const numbers = numbersFor(here, keysOf(here), missing);
  const last = Math.max(0, ...keysOf(here));
  return [
    ...here,
    ...missing.map(({ at, answer }, i) => ({ n: numbers[i] ?? last + 1 + i, at, answer })),
  ].sort((a, b) => a.n - b.n);
}

describe('answers that are missing', () => {
  test('are those of the file that are not here, each as often as it is missing', () => {
    const here = [given(1), given(2), given(2)];
    expect(missingFrom(here, here)).toEqual([]);
    expect(missingFrom(here, [given(2), given(2), given(2), given(3)]).map(({ at }) => at)).toEqual(
      [2, 3],
    );
    expect(missingFrom([], here)).toHaveLength(3);
  });

  test('are known again whatever the order of their entries', () => {
    const turned = { at: 1, answer: Object.fromEntries(Object.entries(answer('a')).toReversed()) };
    expect(missingFrom([given(1)], [turned as never])).toEqual([]);
  });
});

describe('a rehearsal that was handed in on two devices', () => {
  const of = (seed: number, item: string, at: number): DatedAnswer => ({
    at,
    answer: {
      ...{ kind: 'retrieval', lesson: 'l', item, seed, result: 'right', certainty: 2 },
      given: { kind: 'chosen', ids: ['a'] },
    },
  });
  const here = [of(7, 'one', 100), of(7, 'two', 101)];
  const file = [of(7, 'one', 200), of(7, 'two', 201), of(7, 'three', 202)];

  test('counts each question once, and what was answered there alone comes in', () => {
    expect(missingFrom(here, file, new Set([7])).map(({ at }) => at)).toEqual([202]);
    expect(missingFrom([], [...here, ...file], new Set([7])).map(({ at }) => at)).toEqual([
      100, 101, 202,
    ]);
  });
  test('is told from a round: what two devices asked each for itself was asked twice', () => {
    expect(missingFrom(here, file, new Set([8])).map(({ at }) => at)).toEqual([200, 201, 202]);
  });
});

describe('where a missing answer goes', () => {
  test('between those before and after it, and the others keep their numbers', () => {
    const here = numbered([10, 20, 30]);
    const times = merged(here, [given(5), given(15), given(16), given(35)]).map(({ at }) => at);
    expect(times).toEqual([5, 10, 15, 16, 20, 30, 35]);
  });

  test('in the order of the file, also where its clock was set back', () => {
    const options = merged(numbered([10, 20, 30]), [given(25, 'x'), given(3, 'y'), given(26, 'z')]);
    const words = options.map(({ answer }) => (answer as { option: string }).option);
    expect(words).toEqual(['here 0', 'here 1', 'x', 'y', 'z', 'here 2']);
  });

  test('never where something else lies, though it cannot be read', () => {
    const here = numbered([10, 20]).map((one, i) => ({ ...one, n: [1, 3][i] ?? 0 }));
    const numbers = numbersFor(here, [1, 2, 3], missingFrom(here, [given(15), given(16)]));
    expect(numbers).toEqual([1 + 1 / 3, 1 + 2 / 3]);
  });

  test('to the end where there is no room left between two', () => {
    const here = numbered([10, 20]).map((one, i) => ({
      ...one,
      n: [1, 1 + Number.EPSILON][i] ?? 0,
    }));
    expect(numbersFor(here, keysOf(here), missingFrom(here, [given(15)]))).toEqual([undefined]);
  });

  test('is the same for two devices that trade files, whichever begins', () => {
    // Clocks that run forward: then the order is that of the times.
    const times = fc.uniqueArray(fc.integer({ min: 0, max: 500 }), { maxLength: 30 });
    fc.assert(
      fc.property(times, fc.array(fc.boolean(), { minLength: 30, maxLength: 30 }), (all, side) => {
        const rising = all.toSorted((a, b) => a - b);
        const mine = numbered(rising.filter((_, i) => side[i]));
        const theirs = numbered(rising.filter((_, i) => !side[i]));
        expect(merged(mine, theirs).map(({ at }) => at)).toEqual(rising);
        expect(merged(theirs, mine).map(({ at }) => at)).toEqual(rising);
        // A second time nothing is missing.
        const together = merged(mine, theirs);
        expect(merged(together, theirs)).toEqual(together);
      }),
    );
  });

  // As many as some years of daily rounds; each pair of loops over them would run into the time a test may take.
  test('20,000 come to a device that has none, and 20,000 between 20,000', () => {
    const here = numbered(Array.from({ length: 20_000 }, (_, i) => i * 2));
    const file = Array.from({ length: 20_000 }, (_, i) => given(i * 2 + 1));
    expect(numbersFor([], [], missingFrom([], file))).toHaveLength(20_000);
    expect(new Set(numbersFor(here, keysOf(here), missingFrom(here, file))).size).toBe(20_000);
  });
});
