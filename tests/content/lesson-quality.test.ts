// What every lesson must be, beyond its form (lesson-files.test.ts): plain, sourced, with something to move in it, and
// with no term before its introduction. Runs over all lessons that are there.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { course } from '../../src/lessons/course.ts';
import { glossarySchema, lessonSchema } from '../../src/lessons/lesson-schema.ts';
import { objectivesOf } from '../../src/lessons/objectives.ts';
import { count, grade, TERM } from './reading-grade.ts';

const READING_GRADE = 8;

const read = (folder: string, ending: string) =>
  readdirSync(join('content', folder))
    .filter((name) => name.endsWith(ending))
    .map((name) => ({
      id: basename(name, ending),
      text: readFileSync(join('content', folder, name), 'utf8'),
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
const place = new Map(course.map(({ id }, index) => [id, index + 1]));

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

/** Digits with a unit, as somebody would type them. */
const unit =
  '(?:k?Pa|MPa|bar|psi|°\\s?[CF]|L\\/min|L|litres?|gallons?|gpm|rpm|mm|cm[²³]?|in[²³]?|inch(?:es)?|µm|m|km\\/h|mph|N·m|lbf·ft|N|lbf|kg|kW|g\\/s|cSt|mPa·s|kg\\/m³|%|percent|s|ms|seconds?|minutes?|min|hours?|h|degrees|thousandths|volts?|V|ohms?|A)(?:\\/[\\p{L}²³]+)?';
const measured = new RegExp(
  `(?<![\\p{L}\\d.])\\d[\\d.,]*[\\s\\u00a0\\u202f]?${unit}(?![\\p{L}\\d])`,
  'gu',
);

/** Known to the lesson and no result: each with the reason why it needs no source. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  // The case of water, which explains the sum: by definition of the units, near enough.
  'hot-fluid-thin-fluid': ['1 cSt', '1000 kg/m³', '1 mPa·s'],
  // The whole of something, by definition.
  'thin-gap-open-hole': ['100 %'],
};

/** Measured numbers in prose that are neither an engine number nor sourced within their sentence. */
function unsourced(body: string): string[] {
  const kept = body
    .replace(/\$\$[^]*?\$\$/g, '')
    .replace(/\$[^$\n]*\$/g, '')
    .replace(/<Num [^>]*\/>/g, '')
    .replace(/<Src [^>]*\/>/g, '\u00a7')
    .replace(/\(common practice, no source\)/g, '\u00a7')
    .replace(/\bP[0-3][\dA-F]{3}\b/g, '');
  // A lesson's attributes (titles) count as prose; a sentence ends with its block as well.
  const sentences = kept.split(/(?<=[.!?]["”’)]?)\s+|\n\s*\n/);
  return sentences
    .filter((sentence) => !sentence.includes('\u00a7'))
    .flatMap((sentence) => Array.from(sentence.matchAll(measured), ([found]) => found.trim()));
}

const fillers =
  /\b(simply|just|obviously|basically|clearly|of course|needless to say|as you can see|it is important to note|please note)\b/gi;

/** `WhoGoesHungry` lives in src/widgets/who-goes-hungry; what makes it a simulation is its sim.ts, which the question player has not. */
const folder = (tag: string): string =>
  tag.replace(/(?<=[a-z])[A-Z]/g, (letter) => `-${letter}`).toLowerCase();

test('there are lessons to check', () => {
  expect(lessons.length).toBeGreaterThan(0);
});

/** Tags that stand alone on a line and move nothing. */
const NOT_SIMULATIONS = ['ControllerDiagram', 'Drawing', 'EngineTable', 'Retrieval'];

describe.each(lessons)('$id', ({ id, body, head }) => {
  const words = `${prose(body)}\n\n${head.hook.replace(terms, TERM)}`;

  test('the minutes it promises are what its words and simulations take', () => {
    const text = body.slice(0, body.indexOf('<Tasks>')).replace(/\$\$[\s\S]*?\$\$/g, '');
    const words = text
      .replace(/<[^>]+>/g, ' x ')
      .split(/\s+/)
      .filter(Boolean).length;
    const simulations = Array.from(text.matchAll(/^<([A-Z]\w*)\s*\/>/gm)).filter(
      ([, tag = '']) => !NOT_SIMULATIONS.includes(tag),
    ).length;
    // 220 words a minute, a calm pace for plain text (common practice, no source), and a bet and a run for each picture.
    const needed = words / 220 + 2 * simulations;
    expect(simulations).toBeGreaterThan(0);
    expect(head.minutes).toBeGreaterThanOrEqual(Math.floor(needed));
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

  test('has no number with a unit that is neither computed, sourced nor marked', () => {
    const found = unsourced(body);
    const known = allowed[id] ?? [];
    expect(found.filter((number) => !known.includes(number))).toEqual([]);
    expect(
      known.filter((number) => !found.includes(number)),
      'allowed, and not there',
    ).toEqual([]);
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

  test('has tasks to finish, to diagnose and to decide', () => {
    for (const kind of ['finish', 'diagnose', 'decide'])
      expect(body, kind).toContain(`<Task kind="${kind}"`);
  });

  test('explains no term before the lesson that introduces it', () => {
    const early = Array.from(body.matchAll(/<Term id="([^"]+)"/g), ([, term = '']) => term).filter(
      (term) => {
        const entry = glossary.find((known) => known.id === term);
        const introduced = place.get(entry?.data.lesson ?? '');
        return introduced === undefined || introduced > head.order;
      },
    );
    expect(early).toEqual([]);
  });

  test('explains each term that it is said to introduce', () => {
    const missing = glossary
      .filter(({ data }) => data.lesson === id)
      .filter((entry) => !body.includes(`<Term id="${entry.id}"`));
    expect(missing.map((entry) => entry.id)).toEqual([]);
  });
});

describe('the checks can fail', () => {
  test.each([
    ['The line reads 600 kPa.', ['600 kPa']],
    ['It drops to 80 °C (176 °F) there.', ['80 °C', '176 °F']],
    ['At 1500 rpm it is fine.', ['1500 rpm']],
    ['It took 5 seconds.', ['5 seconds']],
    ['Allow 5 seconds (common practice, no source).', []],
    ['Water burns at 66 °C in 2 seconds <Src id="burn-times" />.', []],
    ['Code P0731 in 1975 after 3 tests, all in lesson 2.', []],
    ['It holds <Num id="holds" /> at idle.', []],
    ['A good one <Src id="x" />. The next reads 40 psi.', ['40 psi']],
    ['$p = 3$ and $$ F = 4 \\text{ kPa} $$', []],
  ])('%s', (sentence, found) => {
    expect(unsourced(sentence)).toEqual(found);
  });

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
