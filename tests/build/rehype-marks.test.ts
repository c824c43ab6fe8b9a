import { expect, test } from 'vitest';
import { rehypeMarks } from '../../src/build/rehype-marks.mjs';

interface Node {
  type: string;
  name?: string;
  tagName?: string;
  value?: string;
  properties?: Record<string, unknown>;
  children?: Node[];
}
const text = (value: string): Node => ({ type: 'text', value });
const src = (): Node => ({ type: 'mdxJsxTextElement', name: 'Src', children: [] });
const options = {
  words: 'common practice, no source',
  label: 'Common practice, no source',
  href: '/sources/#no-source',
};

/** The children of a paragraph as one line: marks as [src] and [none], joining characters as "+". */
function line(...children: Node[]): string {
  const tree: Node = { type: 'root', children: [{ type: 'element', tagName: 'p', children }] };
  (rehypeMarks(options) as (tree: Node) => void)(tree);
  const [paragraph] = tree.children ?? [];
  return (paragraph?.children ?? [])
    .map(({ type, name, tagName, value = '' }) =>
      type === 'text'
        ? value.replaceAll('\u2060', '+')
        : name === 'Src'
          ? '[src]'
          : `[${tagName === 'a' ? 'none' : (name ?? '')}]`,
    )
    .join('');
}

test('a mark follows the stop, with no space before it', () => {
  expect(line(text('It falls fast '), src(), text('. Then'))).toBe('It falls fast.+[src] Then');
  expect(line(text('It falls '), src(), text(' fast'))).toBe('It falls+[src] fast');
});

test('also behind a tag, where the stop is all that stands between', () => {
  const number: Node = { type: 'mdxJsxTextElement', name: 'Num', children: [] };
  expect(line(text('up to '), number, text(' '), src(), text('.'))).toBe('up to [Num].+[src]');
});

test('the words for no source become a mark, and nothing else in their brackets is lost', () => {
  expect(line(text('It whines (common practice, no source). Look'))).toBe('It whines.+[none] Look');
  expect(line(text('It is light (a hand’s push; common practice, no source). So'))).toBe(
    'It is light (a hand’s push).+[none] So',
  );
  expect(line(text('Warm it. (It is hot: common practice, no source.) So'))).toBe(
    'Warm it. (It is hot.)+[none] So',
  );
});

test('words that only look like it stay words', () => {
  expect(line(text('Both are common practice, no source; so'))).toBe(
    'Both are common practice, no source; so',
  );
});

test('the mark says what it is and leads to what it means', () => {
  const tree: Node = {
    type: 'root',
    children: [
      { type: 'element', tagName: 'p', children: [text('So (common practice, no source).')] },
    ],
  };
  (rehypeMarks(options) as (tree: Node) => void)(tree);
  const mark = tree.children?.[0]?.children?.find(({ tagName }) => tagName === 'a');
  expect(mark?.properties).toMatchObject({ href: '/sources/#no-source' });
  expect(JSON.stringify(mark)).toContain('Common practice, no source');
});
