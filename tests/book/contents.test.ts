import { describe, expect, test } from 'vitest';
import { contentsOf, settled, type Heading } from '../../src/book/contents.ts';

const headings: readonly Heading[] = [
  { id: 'one', title: '1. One', level: 1 },
  { id: 'one--a', title: 'A part', level: 2 },
  { id: 'two', title: '2. Two', level: 1 },
];

describe('the list of contents', () => {
  test('each heading has the page of its place', () => {
    const pages = new Map([
      ['two', 9],
      ['one--a', 5],
      ['one', 5],
      ['elsewhere', 1],
    ]);
    expect(contentsOf(headings, pages).map(({ title, page }) => `${title} ${page}`)).toEqual([
      '1. One 5',
      'A part 5',
      '2. Two 9',
    ]);
  });

  test('a heading that was not printed stops the book', () => {
    expect(() => contentsOf(headings, new Map([['one', 5]]))).toThrow(/"A part".*on no page/u);
  });

  test('a heading before the one above it stops the book', () => {
    const pages = new Map([
      ['one', 5],
      ['one--a', 4],
      ['two', 9],
    ]);
    expect(() => contentsOf(headings, pages)).toThrow(/page 4, after a heading on page 5/u);
  });
});

describe('printing until the numbers are true', () => {
  test('it ends when nothing has moved, and not before', () => {
    const first = new Map([['one', 5]]);
    expect(settled(new Map(), first)).toBe(false);
    expect(settled(first, new Map([['one', 6]]))).toBe(false);
    expect(settled(first, new Map([['one', 5]]))).toBe(true);
    expect(settled(first, new Map([...first, ['two', 7]]))).toBe(false);
  });
});
