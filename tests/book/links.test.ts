import { describe, expect, test } from 'vitest';
import { linked, placeOf, type Book } from '../../src/book/links.ts';

const book: Book = {
  chapters: [
    { id: 'pump', address: '/lessons/pump/', number: 1 },
    { id: 'glossary', address: '/glossary/' },
  ],
  ids: new Set(['pump', 'pump--who', 'glossary', 'glossary--bore']),
  pages: new Map([
    ['pump', 12],
    ['pump--who', 14],
    ['glossary', 90],
  ]),
};

describe('where a link of the site leads in the book', () => {
  test('to the section, or to the chapter where the section is not printed', () => {
    expect(placeOf('/lessons/pump/#who', book)).toBe('pump--who');
    expect(placeOf('/lessons/pump/#sim?temp=90', book)).toBe('pump');
    expect(placeOf('/measure/', book)).toBeUndefined();
  });

  test('with its page; an entry that is looked up by its name needs none', () => {
    expect(linked('see <a class="x" href="/lessons/pump/#who">who</a>.', book)).toBe(
      'see <a class="x" href="#pump--who">who</a> <span class="book-at">(page 14)</span>.',
    );
    expect(linked('a <a href="/glossary/#bore">bore</a>', book)).toBe(
      'a <a href="#glossary--bore">bore</a>',
    );
  });

  test('a page that the book has not got is named by its path, if somebody could type it', () => {
    expect(linked('<a href="/measure/jobs/">Job sheets</a>', book)).toBe(
      'Job sheets (/measure/jobs/)',
    );
    expect(linked('<a href="/whole-car/#whole-car?temp=90&amp;crack=2">so</a>', book)).toBe('so');
    expect(linked('<a href="/lessons/other/">Other</a>', book)).toBe('Other');
  });

  test('an address elsewhere stays a link', () => {
    const away = '<a href="https://doi.org/10.1287/mnsc.12.5.391">paper</a>';
    expect(linked(away, book)).toBe(away);
  });
});
