// What every lesson must be, beyond the form that src/lessons/check holds it to: plain, with something to move in it. Runs over all lessons that are there.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { glossarySchema, lessonSchema } from '../../src/lessons/lesson-schema.ts';
import { lessonTimes, minutesOf } from '../../src/lessons/lesson-times.ts';
import { objectivesOf } from '../../src/lessons/objectives.ts';
import { count, grade, TERM } from './reading-grade.ts';

const READING_GRADE = 8;

const read = (folder: string, ending: string) =>
  readdirSync(join('content', 'en', folder))
    .filter((name) => name.endsWith(ending))
    .map((name) => ({
      id: basename(name, ending),
      text: readFileSync(join('content', 'en', folder, name), 'utf8'),
    }));

const lessons = read('lessons', '.mdx')
  .map(({ id, text }) => {
    const [, head = '', body = ''] = /^---\n([^]*?)\n---\n([^]*)$/.exec(text) ?? [];
    return { id, body, head: lessonSchema.parse(parse(head)) };
  })
  .sort((a, b) => a.head.order - b.head.order);
const glossary = read('glossary', '.yaml').map(({ id, text }) => ({
  id,
  data: glossarySchema.parse(parse(text)),
}));

/** Every name a glossary entry goes by, longest first, so that "pump slip" goes before "pump". */
const names = glossary
  .flatMap(({ data }) => [data.term, ...data.also])
  .sort((a, b) => b.length - a.length)
  .map((name) => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
const terms = new RegExp(`(?<![\\p{L}])(?:${names.join('|')})(?:s|es)?(?![\\p{L}])`, 'giu');

/** The words that a reader reads as sentences: no tables, headings, formulas or tags. */
function prose(body: string): string {
  return (
    body
      .replace(/\{\/\*[^]*?\*\/\}/g, '')
      .replace(/\$\$[^]*?\$\$/g, '\n\n')
      .replace(/\$[^$\n]*\$/g, TERM)
      .replace(/^\|.*\|\s*$/gm, '')
      .replace(/^#+ .*$/gm, '')
      .replace(/<Term [^>]*>[^]*?<\/Term>/g, TERM)
      .replace(/<Num [^>]*\/>/g, TERM)
      .replace(/\s*<Src [^>]*\/>/g, '')
      .replace(/<\/?[A-Z][^>]*>/g, '\n\n')
      // The mark for what has no source is no sentence of the lesson.
      .replace(/\s*\(common practice, no source\)/g, '')
      .replace(/[*_`]/g, '')
      .replace(terms, TERM)
  );
}

const fillers =
  /\b(simply|just|obviously|basically|clearly|of course|needless to say|as you can see|it is important to note|please note)\b/gi;

/** `WarmUpDrive` drives the warm-up; others go by the name of their folder. */
const OTHER_NAMES: Readonly<Record<string, string>> = { WarmUpDrive: 'warm-up' };

/** `WhoGoesHungry` lives in src/widgets/who-goes-hungry; what makes it a simulation is its sim.ts, which the question player has not. */
const folder = (tag: string): string =>
  OTHER_NAMES[tag] ?? tag.replace(/(?<=[a-z])[A-Z]/g, (letter) => `-${letter}`).toLowerCase();

test('there are lessons to check', () => {
  expect(lessons.length).toBeGreaterThan(0);
});

describe.each(lessons)('$id', ({ id, body, head }) => {
  const words = `${prose(body)}\n\n${head.hook.replace(terms, TERM)}`;

  test('the minutes it promises are what its words, simulations and questions take', () => {
    const times = lessonTimes(body, head.hook);
    expect(times.simulate).toBeGreaterThan(0);
    expect(head.minutes, JSON.stringify(times)).toBe(minutesOf(times));
  });

  test('shows nothing after a run that it does not have', () => {
    const ids = Array.from(body.matchAll(/<AfterRun of="([^"]*)"/gu), ([, of]) => of);
    const tags = Array.from(body.matchAll(/^<([A-Z]\w*)\s*\/>/gmu), ([, tag = '']) => folder(tag));
    expect(ids.filter((of = '') => !tags.includes(of))).toEqual([]);
  });

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
    const simulations = alone.filter((tag) =>
      existsSync(join('src', 'widgets', folder(tag), 'sim.ts')),
    );
    expect(simulations.length).toBeGreaterThanOrEqual(1);
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
