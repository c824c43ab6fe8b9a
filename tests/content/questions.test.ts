/** The whole bank: form, lint, coverage, numbers. Reads content/en/questions as the site does. */
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { lintBank } from '../../src/quiz/lint.ts';
import { passageText, type Asked, type Passage } from '../../src/quiz/asked.ts';
import { grade } from '../../src/quiz/grade.ts';
import { best, worst } from '../quiz/given.ts';
import { resolveQuestion } from '../../src/quiz/resolve.ts';
import { course } from '../../src/lessons/course.ts';
import { madeByEngine } from '../../src/lessons/made-by-engine.ts';
import { numberNamed } from '../../src/lessons/number-named.ts';
import { objectives } from '../../src/lessons/objectives.ts';
import { questionBank, retrievalSet } from '../../src/lessons/question-bank.ts';
import { numbers } from '../../src/numbers/index.ts';

const bank = questionBank();
const asked: readonly Asked[] = bank.map((q) => resolveQuestion(q, numberNamed, madeByEngine));
/** What is shown to choose among. */
function shownIn(q: Asked): readonly Passage[] {
  switch (q.kind) {
    case 'number':
      return [];
    case 'single':
    case 'several':
    case 'case':
      return q.options.map(({ words }) => words);
    case 'order':
    case 'spot':
      return q.steps.map(({ words }) => words);
    case 'match':
      return [...q.pairs, ...q.partners].map(({ words }) => words);
  }
}
const lessons = [...new Set(objectives.map((o) => o.lesson))];

test('the lint finds nothing: one best answer, positive stems, coverage, keys spread (L10, L11)', () => {
  expect(lintBank(bank, objectives)).toEqual([]);
});

test('no reason begins with "Right": it is read by who chose another answer, too', () => {
  const whys = bank.flatMap((q) => Array.from(JSON.stringify(q).matchAll(/"why":"([^"]*)/gu)));
  expect(whys.length).toBeGreaterThan(1000);
  expect(whys.map(([, why]) => why).filter((why) => why?.startsWith('Right.'))).toEqual([]);
});

test('every lesson has its set, with at least one question in a new setting (L5)', () => {
  for (const lesson of lessons) {
    const set = retrievalSet(lesson);
    expect(set.questions.length, lesson).toBeGreaterThanOrEqual(8);
    expect(set.objectives.length, lesson).toBeGreaterThanOrEqual(3);
  }
});

test('every source is one that content/en/sources describes', () => {
  const known = new Set(
    readdirSync('content/en/sources').map((name) => name.replace(/\.\w+$/, '')),
  );
  const missing = bank.filter(
    (q) =>
      q.source !== 'engine' && q.source !== 'common practice, no source' && !known.has(q.source),
  );
  expect(missing.map((q) => `${q.id}: ${q.source}`)).toEqual([]);
});

test('every lesson with objectives or questions is in the course', () => {
  const planned = new Set(course.map((lesson) => lesson.id));
  expect([...lessons, ...bank.map((q) => q.lesson)].filter((id) => !planned.has(id))).toEqual([]);
});

test.each(['hot-fluid-thin-fluid', 'thin-gap-open-hole'])(
  '%s has three questions in a new setting',
  (lesson) => {
    expect(bank.filter((q) => q.lesson === lesson && q.unseen).length).toBeGreaterThanOrEqual(3);
  },
);

describe('numbers', () => {
  // Frozen from tests/content/question-keys.py, which never saw src/engine. 1e-6: both solve the same equations to
  // far below; only SciPy's root tolerance stands between them.
  const truth = JSON.parse(readFileSync('tests/content/question-keys.json', 'utf8')) as Record<
    string,
    number
  >;

  test.each(Object.keys(truth))('%s agrees with the rival', (key) => {
    const expected = truth[key] ?? Number.NaN;
    expect(Math.abs(numberNamed(key).value - expected) / Math.abs(expected)).toBeLessThan(1e-6);
  });

  test('every number that is asked for has a rival value', () => {
    // Those of questions that vary: variations.test.ts.
    const missing = bank.flatMap((q) =>
      q.kind === 'number' && q.varies === undefined && truth[q.number.key] === undefined
        ? [q.number.key]
        : [],
    );
    expect(missing).toEqual([]);
  });

  test('key and mistakes stay apart: no wrong rule lands within the tolerance of the right value or of another', () => {
    for (const q of asked) {
      if (q.kind !== 'number') continue;
      const values = [q.value, ...q.distractors.map((d) => d.value)];
      for (const [i, a] of values.entries()) {
        for (const b of values.slice(i + 1)) {
          expect(Math.abs(a - b), `${q.id}: ${a} and ${b}`).toBeGreaterThan(
            q.within * (i === 0 ? 1 : 0.5),
          );
        }
      }
    }
  });

  test('numbers offered as a choice read differently in both unit systems', () => {
    for (const q of asked) {
      const offered = shownIn(q);
      for (const system of ['si', 'us'] as const) {
        const texts = offered.map((words) => passageText(words, system));
        expect(new Set(texts).size, `${q.id}: ${texts.join(' | ')}`).toBe(texts.length);
      }
    }
  });

  test('the value as printed, in either system, is graded right; each mistake as printed is recognised', () => {
    for (const q of asked) {
      if (q.kind !== 'number') continue;
      for (const system of ['si', 'us'] as const) {
        const typed = (text: string) => {
          const graded = grade(q, { kind: 'typed', text, system }, 1);
          if (!graded.ok) throw new Error(`${q.id}: ${graded.sentence}`);
          return graded.outcome;
        };
        expect(
          typed(passageText(q.valueWords, system)).right,
          `${q.id} ${passageText(q.valueWords, system)}`,
        ).toBe(true);
        for (const d of q.distractors) {
          const outcome = typed(passageText(d.valueWords, system));
          expect(outcome.right, `${q.id} ${d.rule}`).toBe(false);
          expect(outcome.explained.find((e) => e.taken)?.id, `${q.id} ${d.rule}`).toBe(d.rule);
        }
      }
    }
  });
});

test('what the bank says is right is graded right, and every line of it is explained', () => {
  for (const q of asked) {
    const right = grade(q, best(q), 1);
    const wrong = grade(q, worst(q), 1);
    if (!right.ok || !wrong.ok) throw new Error(q.id);
    expect([right.outcome.right, wrong.outcome.right], q.id).toEqual([true, false]);
    expect(right.outcome.explained.every(({ why }) => why.length > 0)).toBe(true);
  }
});

describe('words', () => {
  /** Everything that a reader of it may come to see. */
  const texts = (q: Asked): string[] => {
    const graded = [best(q), worst(q)].map((given) => grade(q, given, 1));
    return [
      q.stem,
      ...shownIn(q),
      ...graded.flatMap((one) =>
        one.ok ? one.outcome.explained.flatMap((e) => [e.words, e.why]) : [],
      ),
    ].map((words) => passageText(words, 'si'));
  };

  test('no filler, and no braces left over', () => {
    for (const q of asked) {
      for (const text of texts(q)) {
        expect(text, q.id).not.toMatch(/\b(simply|just|obviously|of course|basically)\b/i);
        expect(text, q.id).not.toMatch(/[{}]/);
      }
    }
  });

  test('amounts with a unit of one system only are written as tokens', () => {
    // °C, kPa, L/min and N·m differ between the systems; typed into a text they would show to every reader.
    for (const q of bank) {
      expect(JSON.stringify(q).replace(/\{[^{}"]*\}/g, ''), q.id).not.toMatch(
        /\d\s?(°C|°F|kPa|psi|L\/min|gpm|N·m|lbf)/,
      );
    }
    for (const [key, { wrong }] of numbers) {
      for (const { mistake } of Object.values(wrong)) {
        expect(mistake, key).not.toMatch(/\d\s?(°C|°F|kPa|psi|L\/min|gpm|N·m|lbf|degrees)/);
      }
    }
  });
});
