/**
 * Every number that a question quotes or asks for, by name. The engine computes them when the site is built; a wrong rule
 * is a function too, so a distractor moves with the model (learning.md L12). src/quiz stays free of the engine: it gets
 * `questionNumber` passed in.
 */
import type { KeyNumber } from '../../quiz/resolve.ts';
import type { QuestionNumbers } from './form.ts';
import { hotFluid } from './hot-fluid.ts';
import { gapHole } from './gap-hole.ts';
import { path } from './path.ts';
import { pressure } from './pressure.ts';
import { pump } from './pump.ts';
import { select } from './select.ts';
import { slip } from './slip.ts';
import { turbine } from './turbine.ts';

const parts = { pressure, hotFluid, gapHole, pump, path, select, turbine, slip };

export const questionNumbers: QuestionNumbers = Object.assign(
  {},
  ...Object.values(parts),
) as QuestionNumbers;

export function questionNumber(key: string): KeyNumber {
  const found = questionNumbers[key];
  if (found === undefined) {
    throw new Error(
      `there is no engine number "${key}". There are: ${Object.keys(questionNumbers).sort().join(', ')}.`,
    );
  }
  const wrong = Object.entries(found.wrong ?? {}).map(
    ([rule, { mistake, value }]) => [rule, { mistake, value: value() }] as const,
  );
  return { quantity: found.quantity, value: found.value(), wrong: Object.fromEntries(wrong) };
}
