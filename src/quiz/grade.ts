/**
 * Grading. Whatever was answered, what comes back explains EVERY option: right or wrong alone teaches almost nothing
 * (Van der Kleij 2015: .05 against .49 with an explanation).
 */
import type { Asked, AskedChoice, AskedNumber } from './asked.ts';
import type { Explained, Given, Outcome } from './outcome.ts';
import { gradeCase, gradeMatch, gradeOrder, gradeSpot, type Judged } from './grade-forms.ts';
import { marks, type Certainty } from './certainty.ts';
import { numberMet } from './number-met.ts';
import { whatCounts } from './what-counts.ts';
import { words } from './words.en.ts';

export type { Explained, Given, Outcome } from './outcome.ts';

export type Graded =
  | { readonly ok: true; readonly outcome: Outcome }
  | { readonly ok: false; readonly sentence: string };

export function grade(asked: Asked, given: Given, certainty: Certainty): Graded {
  switch (asked.kind) {
    case 'number':
      return gradeNumber(asked, given, certainty);
    case 'single':
    case 'several':
      return gradeChoice(asked, given, certainty);
    case 'order':
      return counted(gradeOrder(asked, chosen(asked, given)), certainty);
    case 'match':
      return counted(gradeMatch(asked, chosen(asked, given)), certainty);
    case 'case':
      return counted(gradeCase(asked, chosen(asked, given)), certainty);
    case 'spot':
      return counted(gradeSpot(asked, chosen(asked, given)), certainty);
  }
}

/** What was judged, with the marks it earns; a sentence says what is missing. */
function counted(judged: Judged | string, certainty: Certainty): Graded {
  if (typeof judged === 'string') return { ok: false, sentence: judged };
  return {
    ok: true,
    outcome: { ...judged, certainty, marks: marks(judged.right, certainty) },
  };
}

function chosen(asked: Asked, given: Given): readonly string[] {
  if (given.kind !== 'chosen')
    throw new Error(`Question "${asked.id}" is answered by choosing, not by typing.`);
  return given.ids;
}

function gradeChoice(asked: AskedChoice, answer: Given, certainty: Certainty): Graded {
  const given = chosen(asked, answer);
  const ids = new Set(given);
  const stray = given.find((id) => !asked.options.some((o) => o.id === id));
  if (stray !== undefined) throw new Error(`Question "${asked.id}" has no option "${stray}".`);
  if (asked.kind === 'single' && ids.size !== 1) return { ok: false, sentence: words.chooseOne };
  if (ids.size === 0) return { ok: false, sentence: words.tickOne };

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
        ? words.right
        : words.notThatOne
      : severalVerdict(explained, right);
  return {
    ok: true,
    outcome: { right, certainty, marks: marks(right, certainty), verdict, explained },
  };
}

function severalVerdict(explained: readonly Explained[], right: boolean): string {
  const key = explained.filter((o) => o.correct);
  const count = String(key.length);
  if (right) return words.allRight({ count });
  const found = String(key.filter((o) => o.taken).length);
  const extra = explained.filter((o) => o.taken && !o.correct).length;
  if (extra === 0) return words.found({ found, count });
  if (extra === 1) return words.foundAndOneMore({ found, count });
  return words.foundAndMore({ found, count, extra: String(extra) });
}

function gradeNumber(asked: AskedNumber, given: Given, certainty: Certainty): Graded {
  if (given.kind !== 'typed')
    throw new Error(`Question "${asked.id}" is answered by typing a number.`);
  const met = numberMet(asked, given);
  if (!met.ok) return met;
  const { value, right, rule } = met;
  const verdict = right
    ? words.right
    : rule !== undefined
      ? words.byMistake({ mistake: rule.mistake })
      : value > asked.value
        ? words.tooHigh
        : words.tooLow;
  const explained: readonly Explained[] = [
    {
      id: 'right',
      words: asked.valueWords,
      correct: true,
      taken: right,
      why: [...asked.why, ...whatCounts(asked)],
    },
    ...asked.distractors.map((d) => ({
      id: d.rule,
      words: d.valueWords,
      correct: false,
      taken: rule?.rule === d.rule,
      why: [words.ifYou({ mistake: d.mistake }), ...d.why],
    })),
  ];
  return {
    ok: true,
    outcome: { right, certainty, marks: marks(right, certainty), verdict, explained },
  };
}
