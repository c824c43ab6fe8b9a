import { render } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { Form } from '../../src/widgets/retrieval/forms/Form.tsx';
import { moved } from '../../src/widgets/retrieval/forms/moved.ts';
import { isForm } from '../../src/widgets/retrieval/FormField.tsx';
import { retrievalModel } from '../../src/widgets/retrieval/model.ts';
import { ask, gap, match, order, spot } from '../quiz/sample.ts';
import type { Question } from '../../src/quiz/schema.ts';

const shown = (question: Question, ...ids: readonly string[]): string => {
  const model = retrievalModel([ask(question)]);
  model.start(1);
  if (ids.length > 0) model.give(ids);
  const asked = model.question.value;
  if (asked === undefined || !isForm(asked)) throw new Error('no form');
  return render(<Form model={model} asked={asked} id="t" />);
};

test('steps have a place and two buttons each, of which those that lead nowhere say so', () => {
  const html = shown(order, 'drive', 'chock', 'level', 'codes');
  expect(html.match(/<li/g)).toHaveLength(4);
  expect(html.match(/aria-label="Move (up|down):"/g)).toHaveLength(8);
  expect(html.match(/aria-disabled="true"/g)).toHaveLength(2);
  expect(html.indexOf('Drive it hot')).toBeLessThan(html.indexOf('Chock the wheels'));
  expect(html).toContain('role="status"');
  expect(html).not.toContain('Because');
});

test('each line has all letters, each letter the words it stands for', () => {
  const html = shown(match, 'one:extra');
  expect(html.match(/type="radio"/g)).toHaveLength(3 * 4);
  expect(html.match(/<input[^>]* checked/g)).toHaveLength(1);
  for (const [, letter = '', partner = ''] of html.matchAll(
    /aria-labelledby="(t-letter-\d) (t-partner-\d)"/g,
  )) {
    expect(html).toContain(`id="${letter}"`);
    expect(html).toContain(`id="${partner}"`);
  }
  expect(html).not.toContain('slips nowhere');
});

test('a job has a point for each step, or one for each place between them', () => {
  expect(shown(spot).match(/type="radio"/g)).toHaveLength(3);
  const html = shown(gap, 'lift');
  expect(html.match(/type="radio"/g)).toHaveLength(4);
  expect(html).toContain('Missing here, before step 1');
  expect(html).not.toContain('Set the stands');
});

test('one thing moves and the others keep their order', () => {
  expect(moved(['a', 'b', 'c'], 'a', 2)).toEqual(['b', 'c', 'a']);
  expect(moved(['a', 'b', 'c'], 'c', 0)).toEqual(['c', 'a', 'b']);
  expect(moved(['a', 'b', 'c'], 'b', 1)).toEqual(['a', 'b', 'c']);
});
