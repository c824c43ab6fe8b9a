import { expect, test } from 'vitest';
import { rehypeTerms } from '../../src/build/rehype-terms.mjs';

interface Node {
  type: string;
  name?: string;
  tagName?: string;
  value?: string;
  children?: Node[];
}
const text = (value: string): Node => ({ type: 'text', value });
const term: Node = { type: 'mdxJsxTextElement', name: 'Term', children: [text('slip')] };
const paragraph = (...children: Node[]): Node => {
  const tree = { type: 'root', children: [{ type: 'element', tagName: 'p', children }] };
  (rehypeTerms() as (tree: Node) => void)(tree);
  return tree.children[0] ?? text('');
};
const kept = (mark: string) =>
  expect.objectContaining({ tagName: 'span', children: [term, text(mark)] }) as Node;

test('the mark after a term stays with it, and no word is lost', () => {
  expect(paragraph(text('a '), term, text(', then')).children).toEqual([
    text('a '),
    kept(','),
    text(' then'),
  ]);
  expect(paragraph(term, text('.)')).children).toEqual([kept('.)')]);
});
test('a term before a space, before another tag or at the end is left alone', () => {
  for (const after of [[text(' is')], [{ ...term, name: 'Num' }, text('.')], []]) {
    expect(paragraph(term, ...after).children).toEqual([term, ...after]);
  }
});
