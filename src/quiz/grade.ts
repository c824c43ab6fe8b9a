/**
 * Grading. Whatever was answered, what comes back explains EVERY option: right or wrong alone teaches almost nothing
 * (Van der Kleij 2015: .05 against .49 with an explanation).
 */
import type { Asked, AskedChoice, AskedNumber, Passage } from './asked.ts';
import { marks, type Certainty } from './certainty.ts';
import { quantityOf } from '../quantity/by-name.ts';
import { parseAmount } from '../quantity/parse-amount.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';

export type Given =
  | { readonly kind: 'chosen'; readonly ids: readonly string[] }
  | { readonly kind: 'typed'; readonly text: string; readonly system: UnitSystem };

export interface Explained {
  readonly id: string;
  readonly words: Passage;
  readonly correct: boolean;
  /** What the person ticked, or the wrong rule their number came from. */
  readonly taken: boolean;
  readonly why: Passage;
}

export interface Outcome {
  readonly right: boolean;
  readonly certainty: Certainty;
  readonly marks: number;
  /** One sentence, never the whole of the feedback. */
  readonly verdict: string;
  readonly explained: readonly Explained[];
}

export type Graded =
  | { readonly ok: true; readonly outcome: Outcome }
  | { readonly ok: false; readonly sentence: string };

export function grade(asked: Asked, given: Given, certainty: Certainty): Graded {
  if (asked.kind === 'number') return gradeNumber(asked, given, certainty);
  return gradeChoice(asked, given, certainty);
}

function gradeChoice(asked: AskedChoice, given: Given, certainty: Certainty): Graded {
  if (given.kind !== 'chosen')
    throw new Error(`Question "${asked.id}" is answered by choosing, not by typing.`);
  const ids = new Set(given.ids);
  const stray = given.ids.find((id) => !asked.options.some((o) => o.id === id));
  if (stray !== undefined) throw new Error(`Question "${asked.id}" has no option "${stray}".`);
  if (asked.kind === 'single' && ids.size !== 1)
    return { ok: false, sentence: 'Choose one answer first.' };
  if (ids.size === 0) return { ok: false, sentence: 'Tick at least one answer first.' };

  const right = asked.options.every((o) => o.correct === ids.has(o.id));
  const explained = asked.options.map((o) => ({
    id: o.id,
    words: o.words,
    correct: o.correct,
    taken: ids.has(o.id),
    why: o.why,
  }));
  const verdict =
    asked.kind === 'single'
      ? right
        ? 'Right.'
        : 'Not that one.'
      : severalVerdict(explained, right);
  return {
    ok: true,
    outcome: { right, certainty, marks: marks(right, certainty), verdict, explained },
  };
}

function severalVerdict(explained: readonly Explained[], right: boolean): string {
  const key = explained.filter((o) => o.correct);
  if (right) return `Right, all ${key.length} of them.`;
  const found = key.filter((o) => o.taken).length;
  const extra = explained.filter((o) => o.taken && !o.correct).length;
  const foundWords = `You found ${found} of the ${key.length} that fit`;
  return extra === 0
    ? `${foundWords}.`
    : `${foundWords}, and ticked ${extra} that ${extra === 1 ? 'does' : 'do'} not.`;
}

function gradeNumber(asked: AskedNumber, given: Given, certainty: Certainty): Graded {
  if (given.kind !== 'typed')
    throw new Error(`Question "${asked.id}" is answered by typing a number.`);
  const reading = parseAmount(given.text, quantityOf(asked.quantity), given.system);
  if (!reading.ok) return reading;
  // A hair of slack, so that a value typed in the other unit exactly at the limit is not lost to rounding.
  const near = (target: number): boolean =>
    Math.abs(reading.value - target) <= asked.within * (1 + 1e-9);
  const right = near(asked.value);
  const rule = right
    ? undefined
    : [...asked.distractors]
        .filter((d) => near(d.value))
        .sort((a, b) => Math.abs(a.value - reading.value) - Math.abs(b.value - reading.value))[0];
  const verdict = right
    ? 'Right.'
    : rule === undefined
      ? `Not that. It is too ${reading.value > asked.value ? 'high' : 'low'}.`
      : `Not that. This is the number you get if you ${rule.mistake}.`;
  const explained: readonly Explained[] = [
    { id: 'right', words: asked.valueWords, correct: true, taken: right, why: asked.why },
    ...asked.distractors.map((d) => ({
      id: d.rule,
      words: d.valueWords,
      correct: false,
      taken: rule?.rule === d.rule,
      why: [`You get this if you ${d.mistake}. `, ...d.why],
    })),
  ];
  return {
    ok: true,
    outcome: { right, certainty, marks: marks(right, certainty), verdict, explained },
  };
}
