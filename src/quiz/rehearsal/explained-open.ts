import { passageText, type Asked } from '../asked.ts';
import { grade, type Explained, type Given } from '../grade.ts';

const chosen = (ids: readonly string[]): Given => ({ kind: 'chosen', ids });

/** The right answer, so that all that is explained stands in its right place. */
function rightAnswer(asked: Asked): Given {
  switch (asked.kind) {
    case 'single':
    case 'several':
    case 'case':
      return chosen(asked.options.filter(({ correct }) => correct).map(({ id }) => id));
    case 'number':
      return { kind: 'typed', text: passageText(asked.valueWords, 'si'), system: 'si' };
    case 'order':
      return chosen(asked.steps.toSorted((a, b) => a.rank - b.rank).map(({ id }) => id));
    case 'match':
      return chosen(asked.pairs.map(({ id }) => `${id}:${id}`));
    case 'spot':
      return chosen(asked.answers.slice(0, 1));
  }
}

/** The explanations of a question that was left open: all of them, and none was taken. */
export function explainedOpen(asked: Asked): readonly Explained[] {
  const graded = grade(asked, rightAnswer(asked), 1);
  if (!graded.ok) return [];
  return graded.outcome.explained.map(({ id, words, correct, why }) => ({
    ...{ id, words, correct, why },
    taken: false,
  }));
}
