import { expect, test } from 'vitest';
import { rehypeMathWords } from '../../src/build/rehype-math-words.mjs';

const set = (value: string, className: string): string => {
  const words = { type: 'text', value };
  const tree = {
    type: 'root',
    children: [{ type: 'element', tagName: 'code', properties: { className }, children: [words] }],
  };
  (rehypeMathWords() as (tree: unknown) => void)(tree);
  return words.value;
};

test('a word in a formula is set as a word, a variable as a variable', () => {
  const of = (tex: string) => set(tex, 'math-inline');
  expect(of('p A - F_{spring}')).toBe('p A - F_{\\text{spring}}');
  expect(of('Q_{in}')).toBe('Q_{\\text{in}}');
  expect(of('\\frac{p_{cmd} - p_c}{band}')).toBe('\\frac{p_{\\text{cmd}} - p_c}{\\text{band}}');
  // Products of variables, names of functions, and words that are text already.
  for (const same of ['\\frac{dT}{dt}', '\\frac{1}{w h}', '\\mathrm{clamp}(x)', 'x_{\\text{in}}'])
    expect(of(same)).toBe(same);
});

test('leaves what is no formula alone', () => {
  expect(set('F_{spring}', 'language-tex')).toBe('F_{spring}');
});
