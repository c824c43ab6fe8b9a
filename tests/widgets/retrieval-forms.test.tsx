import { render } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { Form } from '../../src/widgets/retrieval/forms/Form.tsx';
import { moved } from '../../src/widgets/retrieval/forms/moved.ts';
import { isForm } from '../../src/widgets/retrieval/FormField.tsx';
import { retrievalModel } from '../../src/widgets/retrieval/model.ts';
import { chartOf } from '../../src/question-charts/index.ts';
import { ChartPicture } from '../../src/widgets/retrieval/ChartPicture.tsx';
import { ask, gap, match, order, shortCase, spot } from '../quiz/sample.ts';
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

test('a case shows what each reading would cost now, and what a paid one reads', () => {
  const html = shown(shortCase);
  expect(html.match(/Read it, (\d+) min/g)).toEqual([
    'Read it, 25 min',
    'Read it, 34 min',
    'Read it, 34 min',
  ]);
  expect(html).not.toContain('58 psi');
  const paid = shown(shortCase, 'tap');
  // The gauge is on and the fluid warm: the line costs its own two minutes, the log its tool besides.
  expect(paid.match(/Read it, (\d+) min/g)).toEqual(['Read it, 5 min', 'Read it, 2 min']);
  expect(paid).toContain('Spent so far: 34 min.');
  expect(paid).toContain('58 psi');
  expect(paid).not.toContain('Because');
});

test('a chart has its axes in both unit systems, and the same in a table', () => {
  const chart = chartOf('line-worn-bore');
  if (chart === undefined) throw new Error('no chart');
  const html = render(<ChartPicture chart={chart} asTable="In numbers" />);
  expect(html).toContain('Pressure, kPa');
  expect(html).toContain('Pressure, psi');
  expect(html).toContain('Fluid temperature, °F');
  expect(html.match(/question-chart-line/g)).toHaveLength(2);
  expect(html).toContain('<th scope="col">Line B</th>');
  expect(html).not.toMatch(/NaN|undefined/);
});
