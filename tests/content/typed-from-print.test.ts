/** A reader has what is printed, rounded, in one unit system; who works with that has to be told that it is right. */
import { describe, expect, test } from 'vitest';
import { objectives } from '../../src/lessons/objectives.ts';
import { authoredBank, retrievalSet } from '../../src/lessons/question-bank.ts';
import { passageText, type Asked, type AskedNumber } from '../../src/quiz/asked.ts';
import { quantityOf } from '../../src/quantity/by-name.ts';
import { parseAmount } from '../../src/quantity/parse-amount.ts';
import { format } from '../../src/quantity/print.ts';
import { grade } from '../../src/quiz/grade.ts';
import { whatCounts } from '../../src/quiz/what-counts.ts';
import { amountsIn, typedIn } from './stem-amounts.ts';
import { chosenBetween, chosenSums, typedSums } from './worked-from-print.ts';

const systems = ['si', 'us'] as const;
type System = (typeof systems)[number];

const sets = [...new Set(objectives.map(({ lesson }) => lesson))].map(retrievalSet);
const asked = sets.flatMap(({ questions }) => questions);
const entryOf = new Map(
  authoredBank().flatMap((q) => (q.kind === 'number' ? [[q.id, q.number.entry]] : [])),
);
const withEntry = (entry: 'type' | 'choose') => asked.filter(({ id }) => entryOf.get(id) === entry);
const variantsOf = ({ others = [], ...first }: (typeof asked)[number]): readonly Asked[] => [
  first,
  ...others,
];

function given<Found>(
  stem: Asked['stem'],
  system: System,
  sum: (...values: number[]) => Found,
): Found {
  const values = amountsIn(passageText(stem, system)).map(({ value }) => value);
  expect(values.length, passageText(stem, system)).toBeGreaterThanOrEqual(sum.length);
  return sum(...values);
}

describe.each(withEntry('type'))('$id', (question) => {
  const sum = typedSums[question.id];

  test('has its sum in worked-from-print.ts', () => {
    expect(sum).toBeDefined();
  });

  test.runIf(sum).each(systems)('worked out from what is printed it is right: %s', (system) => {
    for (const one of variantsOf(question)) {
      if (one.kind !== 'number' || sum === undefined) throw new Error(`${one.id} is no number.`);
      const unit = amountsIn(passageText(one.valueWords, system))[0]?.unit ?? '';
      const text = typedIn(given(one.stem, system, sum), unit);
      const where = `"${passageText(one.stem, system)}" ${text}, key ${passageText(one.valueWords, system)}`;
      expect(isRight(one, text, system), where).toBe(true);
    }
  });
});

/** "anything from about 982 lbf to about 1042 lbf": the limits that the reason of an answer names. */
const namedLimits = (text: string): readonly number[] =>
  amountsIn(/anything (from about .*) counts as right/u.exec(text)?.[1] ?? '').map(
    ({ value }) => value,
  );

describe.each(withEntry('type'))('$id, explained', (question) => {
  const sum = typedSums[question.id];
  test.runIf(sum).each(systems)(
    'does not look like a mistake in arithmetic to who works from what is printed: %s',
    (system) => {
      for (const one of variantsOf(question)) {
        if (one.kind !== 'number' || sum === undefined) throw new Error(`${one.id} is no number.`);
        const shown = passageText(one.valueWords, system);
        const [{ unit } = { unit: '' }] = amountsIn(shown);
        const worked = given(one.stem, system, sum);
        const quantity = quantityOf(one.quantity);
        const read = parseAmount(typedIn(worked, unit), quantity, system);
        if (read.ok && format(read.value, quantity, system) === shown) continue;
        const [least = Number.NaN, most = Number.NaN] = namedLimits(
          passageText(whatCounts(one), system),
        );
        const where = `"${passageText(one.stem, system)}" ${typedIn(worked, unit)}, shown ${shown}: ${passageText(whatCounts(one), system)}`;
        expect(worked, where).toBeGreaterThanOrEqual(least);
        expect(worked, where).toBeLessThanOrEqual(most);
      }
    },
  );
});

function isRight(question: AskedNumber, text: string, system: System): boolean {
  const graded = grade(question, { kind: 'typed', text, system }, 1);
  if (!graded.ok) throw new Error(`${question.id}, "${text}": ${graded.sentence}`);
  return graded.outcome.right;
}

describe.each(withEntry('choose'))('$id', ({ id, ...question }) => {
  const sum = chosenSums[id];
  const limits = chosenBetween[id];

  test('has its sum or its limits in worked-from-print.ts', () => {
    expect(sum ?? limits).toBeDefined();
  });

  test.each(systems)('what is printed leads to the right option: %s', (system) => {
    for (const one of variantsOf({ id, ...question })) {
      if (one.kind !== 'single') throw new Error(`${one.id} is no choice.`);
      const options = one.options.map(({ words, correct }) => ({
        value: amountsIn(passageText(words, system))[0]?.value ?? Number.NaN,
        correct,
      }));
      const where = `"${passageText(one.stem, system)}"`;
      if (sum !== undefined) {
        const worked = given(one.stem, system, sum);
        expect(worked, where).not.toBeNaN();
        const off = ({ value }: { value: number }) => Math.abs(value - worked);
        const nearest = [...options].sort((a, b) => off(a) - off(b))[0];
        expect(nearest?.correct, `${where} ${worked}`).toBe(true);
      } else if (limits !== undefined) {
        const [low, high] = given(one.stem, system, limits);
        const inside = options.filter(({ value }) => value > low && value < high);
        expect(inside, `${where} ${low} to ${high}`).toMatchObject([{ correct: true }]);
      }
    }
  });
});

test('no sum is left over from a question that is gone', () => {
  const ids = new Set(entryOf.keys());
  const sums = [typedSums, chosenSums, chosenBetween].flatMap((table) => Object.keys(table));
  expect(sums.filter((id) => !ids.has(id))).toEqual([]);
});
