// What every lesson must be, beyond the form that src/lessons/check holds it to: plain, with something to move in it. Runs over all lessons that are there.
import { describe, expect, test } from 'vitest';
import { objectivesOf } from '../../src/lessons/objectives.ts';
import { simulations } from '../../src/lessons/simulations.ts';
import { glossary, lessons, prose, terms } from './lesson-prose.ts';
import { count, grade, TERM } from './reading-grade.ts';

const READING_GRADE = 8;

const fillers =
  /\b(simply|just|obviously|basically|clearly|of course|needless to say|as you can see|it is important to note|please note)\b/gi;

test('there are lessons to check', () => {
  expect(lessons.length).toBeGreaterThan(0);
});

describe.each(lessons)('$id', ({ id, body, head }) => {
  const words = `${prose(body)}\n\n${head.hook.replace(terms, TERM)}`;

  test(`reads at grade ${READING_GRADE} or below (Kincaid et al. 1975)`, () => {
    const counted = count(words);
    // Enough words for a grade to mean something.
    expect(counted.words).toBeGreaterThan(400);
    expect(grade(counted)).toBeLessThanOrEqual(READING_GRADE);
  });

  test('has no filler', () => {
    expect(`${body} ${head.hook} ${head.description} ${head.title}`.match(fillers)).toBeNull();
  });

  test('has something to move', () => {
    const alone = Array.from(body.matchAll(/^<([A-Z]\w+) ?[^>]*\/>\s*$/gm), ([, tag = '']) => tag);
    expect(alone.filter((tag) => Object.hasOwn(simulations, tag)).length).toBeGreaterThanOrEqual(1);
  });

  test('has three objectives or more', () => {
    expect(objectivesOf(id).length).toBeGreaterThanOrEqual(3);
  });

  test('explains each term that it is said to introduce', () => {
    const missing = glossary
      .filter(({ data }) => data.lesson === id)
      .filter((entry) => !body.includes(`<Term id="${entry.id}"`));
    expect(missing.map((entry) => entry.id)).toEqual([]);
  });
});

describe('the checks can fail', () => {
  test('tables, headings, tags and terms weigh nothing', () => {
    const text =
      '### Lubrication temperature\n\nIt is <Term id="x">lubrication</Term> <Num id="y" />.\n\n| considerable | deterioration |\n';
    expect(prose(text)).not.toMatch(/lubrication|deterioration|temperature/i);
    expect(count(prose(text))).toMatchObject({ sentences: 1, words: 4, plainWords: 2 });
  });

  test.each(['It is just a leak.', 'Obviously so.', 'Of course it is.'])('filler: %s', (text) => {
    expect(text.match(fillers)).not.toBeNull();
  });
});
