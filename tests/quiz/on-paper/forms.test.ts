/** Keys are worked out by hand from the questions in ../sample.ts. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { passageText, type Passage, type Varied } from '../../../src/quiz/asked.ts';
import type { Put } from '../../../src/quiz/on-paper/put-parts.ts';
import { FEWEST, makeSheets, SHEETS, type Sheets } from '../../../src/quiz/on-paper/sheets.ts';
import { ask, forms } from '../sample.ts';

const questions = forms.map(ask);
const sheetsOf = (seed: string, from: readonly Varied[] = questions): Sheets =>
  makeSheets([{ lesson: 'lesson-a', questions: from }], FEWEST, seed);
const find = (puts: readonly Put[], id: string): Put => {
  const found = puts.find((put) => put.id === id);
  if (found === undefined) throw new Error(`${id} is not on the sheet`);
  return found;
};
const text = (passage: Passage): string => passageText(passage, 'si').replaceAll('\u00a0', ' ');
const texts = (passages: readonly Passage[] = []): readonly string[] => passages.map(text);
/** Each question of a seed as it stands on A and on B. */
const each = (id: string, check: (a: Put, b: Put) => void): void =>
  fc.assert(
    fc.property(fc.stringMatching(/^[a-z0-9-]{1,16}$/), (seed) => {
      const { a, b } = sheetsOf(seed);
      check(find(a, id), find(b, id));
    }),
    { numRuns: 120 },
  );

describe('steps to put in order', () => {
  const [chock, level, codes, drive] = [
    'Chock the wheels',
    'Look at the level at 40 °C',
    'Read the codes',
    'Drive it hot',
  ];
  const rightOrders = [
    [chock, level, codes, drive],
    [chock, codes, level, drive],
  ];

  test('the numbers of the key bring the lines into an order that is right, and say what may swap', () => {
    each('q-order', (...both) => {
      for (const { lines, right } of both) {
        if (right.kind !== 'order') throw new Error(right.kind);
        const written = texts(lines).map((line, at) => [right.numbers[at] ?? 0, line] as const);
        expect(rightOrders).toContainEqual(
          written.sort(([one], [other]) => one - other).map(([, line]) => line),
        );
        expect(right.numbers.toSorted()).toEqual([1, 2, 3, 4]);
        expect(right.swap).toEqual([[2, 3]]);
      }
    });
  });

  test('never stand in a right order, and each line of B has another number than that of A', () => {
    each('q-order', (a, b) => {
      for (const { lines } of [a, b]) expect(rightOrders).not.toContainEqual(texts(lines));
      texts(a.lines).forEach((line, at) => expect(texts(b.lines)[at]).not.toBe(line));
      expect(a.right).not.toEqual(b.right);
    });
  });

  test('are explained in the right order', () => {
    const { reasons } = find(sheetsOf('x').a, 'q-order');
    expect(reasons.map(({ letter }) => letter)).toEqual(['1', '2', '3', '4']);
    expect(rightOrders).toContainEqual(texts(reasons.map(({ words }) => words)));
    expect(reasons.map(({ why }) => text(why))).toContain('Because step drive is what it is.');
  });
});

describe('pairs', () => {
  const goesWith: Readonly<Record<string, string>> = {
    'Drive and Reverse': 'Shared seal',
    'Reverse alone': 'Reverse piston',
    'Every range': 'Pump',
  };

  test('each line has the letter of its partner, and what goes with nothing stands among them', () => {
    each('q-match', (...both) => {
      for (const { lines, partners = [], right, reasons } of both) {
        const letters = right.kind === 'letters' ? right.letters : [];
        const atLetter = new Map(partners.map(({ letter, words }) => [letter, text(words)]));
        expect([...atLetter.keys()]).toEqual(['A', 'B', 'C', 'D']);
        expect([...atLetter.values()]).toContain('Park pawl');
        expect(texts(lines)).toEqual(Object.keys(goesWith));
        expect(letters.map((letter) => atLetter.get(letter))).toEqual(Object.values(goesWith));
        const nothing = reasons.find(({ mark }) => mark === 'withNothing');
        expect(atLetter.get(nothing?.letter ?? '')).toBe('Park pawl');
        expect(text(nothing?.why ?? [])).toBe('It holds the car and slips nowhere.');
      }
    });
  });

  test('no line has the same letter on both sheets', () => {
    each('q-match', ({ right: a }, { right: b }) => {
      if (a.kind !== 'letters' || b.kind !== 'letters') throw new Error('no letters');
      a.letters.forEach((letter, at) => expect(b.letters[at]).not.toBe(letter));
    });
  });
});

describe('a job with a mistake in it', () => {
  test('keeps its steps in order, and the number of the wrong one is ticked', () => {
    each('q-spot', (...both) => {
      for (const { options, right, reasons } of both) {
        expect(options?.map(({ letter, words }) => `${letter} ${text(words)}`)).toEqual([
          '1 Lift the car',
          '2 Go under it',
          '3 Start the engine',
        ]);
        expect(right).toEqual({ kind: 'letters', letters: ['2'] });
        expect(reasons.map(({ correct, mark }) => (correct ? 'it' : mark))).toEqual([
          'rightStep',
          'it',
          'rightStep',
        ]);
      }
    });
  });

  test('with a step missing, has a place before, between and after the others', () => {
    const { steps, gaps, options, right, reasons } = find(sheetsOf('x').b, 'q-gap');
    expect(steps).toHaveLength(3);
    expect(options).toBeUndefined();
    expect(gaps).toEqual([0, 1, 2, 3]);
    // After "Lift the car", the first of three.
    expect(right).toEqual({ kind: 'gaps', gaps: [1] });
    expect(text(reasons[0]?.words ?? [])).toBe('Set the stands');
    expect(reasons.filter(({ correct }) => correct)).toHaveLength(1);
  });
});

describe('a case', () => {
  test('prints every reading with its minutes from cold, and the key has the cheapest', () => {
    each('q-case', (...both) => {
      for (const { readings, options, right, cheapest } of both) {
        // 2 each, 20 to warm it up, and 3 for the tool or 12 for the gauge.
        expect(readings?.map(({ minutes }) => minutes)).toEqual([25, 34, 34]);
        expect(readings?.map(({ reads }) => text(reads))).toEqual([
          '400 kPa',
          '400 kPa',
          '400 kPa',
        ]);
        expect(cheapest?.minutes).toBe(25);
        expect(texts(cheapest?.readings.map(({ words }) => words))).toEqual(['The log']);
        const letters = right.kind === 'letters' ? right.letters : [];
        expect(
          options?.filter(({ letter }) => letters.includes(letter)).map(({ words }) => text(words)),
        ).toEqual(['The shared seal']);
      }
    });
  });

  test('has another right letter on B', () => {
    each('q-case', (a, b) => expect(a.right).not.toEqual(b.right));
  });
});

describe('a question that varies', () => {
  const varied = questions.map((one, at): Varied =>
    at > 0
      ? one
      : {
          ...one,
          variant: '1',
          others: ['2', '3'].map((variant) => ({ ...one, variant, stem: [`Variant ${variant}`] })),
        },
  );
  const stems = (seed: string) =>
    SHEETS.map((sheet) => text(find(sheetsOf(seed, varied)[sheet], 'q-order').stem));

  test('is the same on A and B and whenever its seed is typed, and each variant comes up', () => {
    const seen = new Set<string>();
    for (let seed = 0; seed < 60; seed += 1) {
      const [a = '', b] = stems(String(seed));
      expect(a).toBe(b);
      expect(stems(String(seed))).toEqual([a, b]);
      seen.add(a);
    }
    expect(seen.size).toBe(3);
  });
});

test('a chart goes onto both sheets with its question', () => {
  const axis = { title: 'Pressure, kPa', ticks: [{ place: 40, text: '0' }] };
  const chart = {
    about: ['Two lines.'],
    ...{ width: 320, height: 200, left: 40, right: 310, top: 20, bottom: 160 },
    x: { si: axis, us: axis },
    y: { si: axis, us: axis },
    lines: [{ path: 'M40 40H300', letter: 'A', x: 302, y: 40 }],
    ...{ head: [], rows: [] },
  };
  const { a, b } = sheetsOf(
    'x',
    questions.map((one) => ({ ...one, chart })),
  );
  for (const put of [...a, ...b]) expect(put.chart).toBe(chart);
});
