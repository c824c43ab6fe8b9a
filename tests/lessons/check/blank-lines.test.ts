// Blank lines round blocks, and the levels of headings.
import { expect, test } from 'vitest';
import { after, breaks, LESSON, PAGE, swap } from './broken-content.ts';

breaks(LESSON, 'blank lines and headings', [
  [
    'no blank line after an opening tag',
    '<Caution>\n\n',
    '<Caution>\n',
    '<Caution>',
    /blank line after <Caution>/,
  ],
  [
    'no blank line before a closing tag',
    'information.\n\n</C',
    'information.\n</C',
    '</Caution>',
    /blank line before <\/Caution>/,
  ],
  [
    'no blank line before a picture',
    'every oil does it.',
    'every oil does it.\n<Fluid />',
    '<Fluid',
    /blank line before <Fluid>/,
  ],
  [
    'a picture in a paragraph',
    'every oil does it.',
    'every <Fluid /> oil.',
    '<Fluid',
    /middle of a line or paragraph/,
  ],
  [
    'no blank line after a heading',
    'behind it\n',
    'behind it',
    '### The eq',
    /blank line after a heading/,
  ],
  ['a heading of the wrong level', '### The', '## The', '## The', /Write ### here/],
  ['a heading that leaves out a level', '### The', '#### The', '#### The', /leaves out a level/],
]);

breaks(PAGE, 'headings of a page', [
  ['a second title', '<Section', '# Title\n\n<Section', '# Title', /for the title of the page/],
  ['a level left out', '<Section', '### Deep\n\n<Section', '### Deep', /an h1. Write ## here/],
]);

test('a page without parts may have headings of the second level', () => {
  expect(after(PAGE, swap('<Section', '## What for\n\nWords.\n\n<Section')).faults).toEqual([]);
});
