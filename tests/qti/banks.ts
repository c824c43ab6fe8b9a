/** Any bank of questions that the site could have. */
import fc from 'fast-check';
import { EXTRA, START, type Asked, type AskedOption, type Passage } from '../../src/quiz/asked.ts';
import { arrivals } from '../../src/quiz/case-minutes.ts';
import { quantityNames } from '../../src/quantity/by-name.ts';
import type { QtiBank } from '../../src/qti/bank.ts';
import { settled } from '../../src/qti/passage.ts';

const slug = fc.stringMatching(/^[a-z0-9]{1,8}(-[a-z0-9]{1,8}){0,2}$/);
/** XML 1.0 has no place for control characters and no half of a pair, and a question has none either. */
const text = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 40 })
  .filter((one) => /^[\t\n\u0020-\ud7ff\ue000-\ufffd]+$/u.test(one));
const amount = fc.record({ si: text, us: text });
const passage: fc.Arbitrary<Passage> = fc
  .array(fc.oneof(text, amount), { minLength: 1, maxLength: 5 })
  .map((pieces) => settled(pieces));
const value = fc.double({ noNaN: true, min: -1e5, max: 1e5 }).map((one) => one + 0);

const common = {
  id: slug,
  objectives: fc.uniqueArray(slug, { minLength: 1, maxLength: 3 }),
  concept: slug,
  lookAlikes: fc.uniqueArray(slug, { maxLength: 2 }),
  level: fc.constantFrom('recall', 'apply', 'diagnose'),
  unseen: fc.boolean(),
  stem: passage,
  source: fc.oneof(slug, fc.constant('common practice, no source')),
  variant: fc.option(slug, { nil: undefined }),
};
const lines = { id: slug, words: passage, why: passage };
const byId = { selector: ({ id }: { id: string }) => id };

const options = fc.uniqueArray(fc.record({ ...lines, correct: fc.boolean() }), {
  ...byId,
  minLength: 2,
  maxLength: 6,
});

const choice = fc
  .record({
    ...common,
    kind: fc.constantFrom('single', 'several'),
    options,
    ordered: fc.boolean(),
  })
  .map((asked) => ({ ...asked, options: keyed(asked.options, asked.kind) }));

/** A single has one right option, the others at least one. */
const keyed = (options: readonly AskedOption[], kind: string): readonly AskedOption[] =>
  options.map((option, index) => ({
    ...option,
    correct: index === 0 || (kind === 'several' && option.correct),
  }));

const number = fc.record({
  ...common,
  kind: fc.constant('number'),
  quantity: fc.constantFrom(...quantityNames),
  value,
  within: fc.double({ noNaN: true, min: 1e-6, max: 1e3 }),
  valueWords: passage,
  why: passage,
  distractors: fc.uniqueArray(
    fc.record({ rule: slug, value, valueWords: passage, mistake: text, why: passage }),
    { selector: ({ rule }) => rule, maxLength: 3 },
  ),
});

const steps = fc.uniqueArray(fc.record(lines), { ...byId, minLength: 3, maxLength: 5 });

const order = fc.record({
  ...common,
  kind: fc.constant('order'),
  steps: steps.map((all) => all.map((step, place) => ({ ...step, rank: (place * 2) % 3 }))),
});

const match = fc
  .record({ ...common, kind: fc.constant('match'), pairs: steps, extra: fc.option(passage) })
  .map(({ extra, pairs, ...asked }) => ({
    ...asked,
    pairs,
    partners: [
      ...(extra === null ? [] : [{ id: EXTRA, words: extra }]),
      ...pairs.map(({ id, why }) => ({ id, words: why })).reverse(),
    ],
    ...(extra !== null && { extraWhy: extra }),
  }));

const spot = fc
  .record({ ...common, kind: fc.constant('spot'), steps, missing: fc.option(passage) })
  .map(({ missing, ...asked }) => ({
    ...asked,
    answers: [
      ...(missing === null ? [] : [START]),
      ...asked.steps.slice(0, missing === null ? 2 : 1).map(({ id }) => id),
    ],
    ...(missing !== null && { missing: { words: missing, why: missing } }),
  }));

const minutes = fc.nat(90);
/** Ids of readings have dots, as those of the tests they are. */
const test = fc.tuple(slug, slug).map((parts) => parts.join('.'));
const reading = fc.record({
  ...{ ...lines, id: test, reads: passage, minutes },
  warmth: fc.option(fc.constantFrom('cold', 'hot'), { nil: undefined }),
  setUps: fc.array(fc.record({ id: slug, minutes }), { maxLength: 3 }),
});
const shortCase = fc
  .record({
    ...common,
    kind: fc.constant('case'),
    arrives: fc.constantFrom(...arrivals),
    readings: fc.uniqueArray(reading, { ...byId, minLength: 1, maxLength: 5 }),
    options,
    cheapest: fc.nat(4),
  })
  .map(({ cheapest, ...asked }) => ({
    ...asked,
    options: keyed(asked.options, asked.kind),
    // They are taken in an order of their own.
    cheapest: asked.readings
      .slice(0, cheapest + 1)
      .map(({ id }) => id)
      .reverse(),
  }));

const axis = { title: 'Pressure', ticks: [{ place: 12.5, text: '100' }] };
const chart = fc.record({ about: passage, cell: passage }).map(({ about, cell }) => ({
  about,
  ...{ width: 400, height: 250, left: 40, right: 380, top: 20, bottom: 220 },
  x: { si: axis, us: { ...axis, title: 'Pressure in psi' } },
  y: { si: axis, us: axis },
  lines: [{ path: 'M40 20L380 220', letter: 'A', x: 380, y: 220 }],
  head: ['Speed', 'A'],
  rows: [[cell, cell]],
}));

export const question = fc
  .tuple(fc.oneof(choice, number, order, match, spot, shortCase), fc.option(chart, { freq: 4 }))
  .map(([asked, drawn]) =>
    drawn === null ? asked : { ...asked, chart: drawn },
  ) as fc.Arbitrary<Asked>;

export const bank: fc.Arbitrary<QtiBank> = fc.record({
  system: fc.constantFrom('si', 'us'),
  version: fc.constant('1.2.3'),
  lessons: fc
    .uniqueArray(
      fc.record({
        id: slug,
        title: text.map((one) => one.replaceAll(/\s/gu, ' ')),
        questions: fc.array(question, { minLength: 1, maxLength: 4 }),
      }),
      { ...byId, minLength: 1, maxLength: 3 },
    )
    .map((lessons) =>
      lessons.map((lesson, l) => ({
        ...lesson,
        // An id is its own in the whole bank.
        questions: lesson.questions.map((one, q) => ({ ...one, id: `${one.id}-${l}-${q}` })),
        objectives: [...new Set(lesson.questions.flatMap(({ objectives }) => objectives))].map(
          (id) => ({ id, text: `Say what ${id} is.` }),
        ),
      })),
    ),
});
