/** Questions that vary: every variant of every one, against the rival and against the rules of a good question. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { authoredBank, questionBank } from '../../src/lessons/question-bank.ts';
import { numberNamed } from '../../src/lessons/number-named.ts';
import { objectives } from '../../src/lessons/objectives.ts';
import { askedOf, VARIANTS, variantsOf, type Variant } from '../../src/lessons/variants.ts';
import { passageText, type Asked } from '../../src/quiz/asked.ts';
import { grade } from '../../src/quiz/grade.ts';
import { lintBank } from '../../src/quiz/lint.ts';
import { pickVariant } from '../../src/quiz/pick-variant.ts';
import { resolveQuestion } from '../../src/quiz/resolve.ts';
import type { Question } from '../../src/quiz/schema.ts';

interface Rival {
  readonly numbers: Readonly<Record<string, number>>;
  readonly wrong: Readonly<Record<string, Readonly<Record<string, number>>>>;
  readonly truth: Readonly<Record<string, boolean>>;
}
// Frozen from tests/content/variation-keys.py, which works out every number without src.
const rivals = JSON.parse(readFileSync('tests/content/variation-keys.json', 'utf8')) as Record<
  string,
  Record<string, Rival>
>;
const varying = authoredBank().filter(({ varies }) => varies !== undefined);
const systems = ['si', 'us'] as const;
const rivalOf = (question: Question, { variation }: Variant): Rival => {
  const rival = rivals[question.id]?.[variation.id];
  if (rival === undefined) {
    throw new Error(`No rival for "${question.id}" in "${variation.id}": run variation-keys.py.`);
  }
  return rival;
};
const eachAsked = (look: (asked: Asked) => void): void => {
  for (const question of varying) {
    const { others = [], ...first } = askedOf(question);
    [first, ...others].forEach(look);
  }
};

describe.each(varying)('$id', (question) => {
  const variants = variantsOf(question);

  test('the rival has these variants and no others', () => {
    expect(Object.keys(rivals[question.id] ?? {}).sort()).toEqual(
      variants.map(({ variation }) => variation.id).sort(),
    );
  });

  // 1e-6: both solve the same equations to far below; only SciPy's root tolerance stands between them.
  test('numbers, wrong rules and truths agree with the rival in every variant', () => {
    for (const variant of variants) {
      const rival = rivalOf(question, variant);
      const { variation } = variant;
      const named = (name: string) => numberNamed(variation.numbers[name] ?? '');
      // Air held is a share of a hundred; the two take the gas constant of air to five and to seven figures, 1e-5 apart.
      const close = (got: number, wanted: number, name: string, what = name): void =>
        expect(
          Math.abs(got - wanted),
          `${variation.id} ${what}: ${got}, and the rival has ${wanted}`,
        ).toBeLessThanOrEqual(
          1e-6 * Math.max(Math.abs(wanted), named(name).quantity === 'percent' ? 200 : 1e-3),
        );
      for (const [name, wanted] of Object.entries(rival.numbers)) {
        close(named(name).value, wanted, name);
      }
      for (const [name, rules] of Object.entries(rival.wrong)) {
        const { wrong } = named(name);
        for (const [rule, wanted] of Object.entries(rules)) {
          close(wrong[rule]?.value ?? Number.NaN, wanted, name, `${name}, ${rule}`);
        }
      }
      expect(variation.truth).toEqual(rival.truth);
    }
  });

  test('the rival has what is asked: the key with every wrong rule, or the truth of every option', () => {
    for (const variant of variants) {
      const rival = rivalOf(question, variant);
      if (question.kind === 'number') {
        const { key, distractors } = question.number;
        expect(rival.numbers).toHaveProperty([key]);
        expect(Object.keys(rival.wrong[key] ?? {})).toEqual(
          expect.arrayContaining(distractors.map(({ rule }) => rule)),
        );
      } else if (question.kind === 'single' || question.kind === 'several') {
        expect(Object.keys(rival.truth).sort()).toEqual(
          question.options.map(({ id }) => id).sort(),
        );
      }
    }
  });

  test('what is marked as correct is true in the first variant', () => {
    if (question.kind === 'number') return;
    expect(variants[0]?.question).toMatchObject({
      options: (question as { options?: readonly { correct: boolean }[] }).options?.map(
        ({ correct }) => ({ correct }),
      ),
    });
  });

  test('no two variants read alike', () => {
    const { others = [], ...first } = askedOf(question);
    const texts = [first, ...others].map((asked) =>
      [
        asked.stem,
        ...(asked.kind === 'number' ? [asked.valueWords] : []),
        ...('options' in asked ? asked.options.map((o) => o.words) : []),
      ]
        .map((words) => passageText(words, 'si'))
        .join(' '),
    );
    expect(new Set(texts).size).toBe(VARIANTS);
  });

  test('the same seed brings the same variant, and every one is reached', () => {
    const asked = askedOf(question);
    const reached = new Set(
      Array.from({ length: 200 }, (_, seed) => pickVariant(asked, seed * 7919).variant),
    );
    expect(reached.size).toBe(VARIANTS);
    for (const seed of [0, 1, 1_700_000_000_000]) {
      expect(pickVariant(asked, seed)).toEqual(pickVariant(asked, seed));
    }
  });
});

test('the lint finds nothing, whichever variants are asked', () => {
  for (let turn = 0; turn < VARIANTS; turn += 1) {
    const asked = authoredBank().map((q) => variantsOf(q)[turn]?.question ?? q);
    expect(lintBank(asked, objectives), `turn ${turn}`).toEqual([]);
  }
});

test('the bank has each of them in its first variant', () => {
  const bank = questionBank();
  for (const question of varying) {
    expect(bank).toContainEqual(variantsOf(question)[0]?.question);
  }
});

test('the value as printed is graded right in either system, and each mistake as printed is named', () => {
  eachAsked((asked) => {
    if (asked.kind !== 'number') return;
    for (const system of systems) {
      const typed = (words: Asked['stem']) => {
        const given = { kind: 'typed', text: passageText(words, system), system } as const;
        const graded = grade(asked, given, 1);
        if (!graded.ok) throw new Error(`${asked.id}: ${graded.sentence}`);
        return graded.outcome;
      };
      const where = `${asked.id} ${asked.variant ?? ''} ${system}`;
      expect(typed(asked.valueWords).right, where).toBe(true);
      for (const { rule, valueWords } of asked.distractors) {
        const { right, explained } = typed(valueWords);
        expect(right, `${where} ${rule}`).toBe(false);
        expect(explained.find(({ taken }) => taken)?.id, `${where} ${rule}`).toBe(rule);
      }
    }
  });
});

test('no wrong rule is right: each value lies further from the key than its tolerance, and from the others', () => {
  for (const question of varying) {
    if (question.kind !== 'number') continue;
    for (const { question: one } of variantsOf(question)) {
      if (one.kind !== 'number') throw new Error(`${question.id} has changed its kind.`);
      const asked = resolveQuestion(
        { ...one, number: { ...one.number, entry: 'type' } },
        numberNamed,
      );
      if (asked.kind !== 'number') throw new Error(`${question.id} is no number.`);
      const values = [asked.value, ...asked.distractors.map(({ value }) => value)];
      for (const [i, a] of values.entries()) {
        for (const b of values.slice(i + 1)) {
          expect(Math.abs(a - b), `${asked.id}: ${a} and ${b}`).toBeGreaterThan(
            asked.within * (i === 0 ? 1 : 0.5),
          );
        }
      }
    }
  }
});

test('options read differently in both systems, amounts stand in order, and one or several are right', () => {
  eachAsked((asked) => {
    if (asked.kind !== 'single' && asked.kind !== 'several') return;
    const where = `${asked.id} ${asked.variant ?? ''}`;
    const right = asked.options.filter(({ correct }) => correct).length;
    if (asked.kind === 'single') expect(right, where).toBe(1);
    else {
      expect(right, where).toBeGreaterThan(1);
      expect(right, where).toBeLessThan(asked.options.length);
    }
    for (const system of systems) {
      const texts = asked.options.map(({ words }) => passageText(words, system));
      expect(new Set(texts).size, `${where}: ${texts.join(' | ')}`).toBe(texts.length);
      if (!asked.ordered) continue;
      const sizes = texts.map((text) =>
        Number(/-?[\d.]+/.exec(text.replace('−', '-').replaceAll(',', ''))?.[0]),
      );
      expect(sizes, where).toEqual([...sizes].sort((a, b) => a - b));
    }
  });
});

test('no choice of words and no braces are left over in any variant', () => {
  eachAsked((asked) => {
    expect(JSON.stringify(asked), asked.id).not.toMatch(/\[\[|\]\]|\{=|"[^"]*\{[a-zA-Z]+ /);
  });
});
