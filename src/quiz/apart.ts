import { passageText, type Asked, type AskedNumber } from './asked.ts';
import { grade } from './grade.ts';

const systems = ['si', 'us'] as const;

/**
 * Whether a question can be told right from wrong: no mistake lies within the tolerance of the right value, each is named when
 * its own value is typed, and options read differently in both unit systems; and the truth of its options fits its kind.
 */
export function isApart(asked: Asked): boolean {
  if (asked.kind === 'number') return valuesApart(asked) && printedApart(asked);
  if (asked.kind !== 'single' && asked.kind !== 'several') return true;
  const right = asked.options.filter(({ correct }) => correct).length;
  const fits = asked.kind === 'single' ? right === 1 : right > 1 && right < asked.options.length;
  return (
    fits &&
    systems.every(
      (system) =>
        new Set(asked.options.map(({ words }) => passageText(words, system))).size ===
        asked.options.length,
    )
  );
}

function valuesApart({ value, within, distractors }: AskedNumber): boolean {
  const wrong = distractors.map((one) => one.value);
  return wrong.every(
    (one, i) =>
      Math.abs(one - value) > 1.1 * within &&
      wrong.slice(0, i).every((other) => Math.abs(one - other) > 0.6 * within),
  );
}

function printedApart(asked: AskedNumber): boolean {
  return systems.every((system) => {
    const taken = (words: AskedNumber['valueWords']): string | undefined => {
      const graded = grade(asked, { kind: 'typed', text: passageText(words, system), system }, 1);
      return graded.ok ? graded.outcome.explained.find((one) => one.taken)?.id : undefined;
    };
    return (
      taken(asked.valueWords) === 'right' &&
      asked.distractors.every(({ rule, valueWords }) => taken(valueWords) === rule)
    );
  });
}
