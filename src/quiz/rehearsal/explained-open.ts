import { passageText, type Asked } from '../asked.ts';
import { grade, type Explained, type Given } from '../grade.ts';

/** Some answer that can be graded; which one does not matter. */
function anyAnswer(asked: Asked): Given {
  switch (asked.kind) {
    case 'single':
    case 'several':
      return { kind: 'chosen', ids: asked.options.slice(0, 1).map(({ id }) => id) };
    case 'number':
      return { kind: 'typed', text: passageText(asked.valueWords, 'si'), system: 'si' };
  }
}

/** The explanations of a question that was left open: all of them, and none was taken. */
export function explainedOpen(asked: Asked): readonly Explained[] {
  const graded = grade(asked, anyAnswer(asked), 1);
  return graded.ok ? graded.outcome.explained.map((one) => ({ ...one, taken: false })) : [];
}
