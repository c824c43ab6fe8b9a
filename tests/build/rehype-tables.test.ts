import { expect, test } from 'vitest';
import { rehypeTables } from '../../src/build/rehype-tables.mjs';

interface Node {
  type: string;
  tagName?: string;
  value?: string;
  properties?: Record<string, unknown>;
  children?: Node[];
}
const element = (tagName: string, ...children: Node[]): Node => ({
  type: 'element',
  tagName,
  children,
});
const text = (value: string): Node => ({ type: 'text', value });
const tag: Node = { type: 'mdxJsxTextElement', children: [] };

test('a table is wrapped, named by its headings, and its empty corner is a cell', () => {
  const corner = element('th');
  const computed = element('th', tag);
  const head = element('tr', corner, element('th', text('cold')), computed);
  const tree = { type: 'root', children: [element('div', element('table', head))] };
  (rehypeTables({ label: 'Table' }) as (tree: Node) => void)(tree);
  const [wrapper] = tree.children[0]?.children ?? [];
  expect(wrapper?.properties).toMatchObject({ tabIndex: 0, ariaLabel: 'Table: cold' });
  expect(wrapper?.children?.[0]?.tagName).toBe('table');
  expect(corner.tagName).toBe('td');
  // A number that the engine computes is printed later; the cell is a heading all the same.
  expect(computed.tagName).toBe('th');
});
