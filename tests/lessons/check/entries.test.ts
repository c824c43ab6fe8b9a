// Glossary entries and sources.
import { SOURCE, TERM, breaks } from './broken-content.ts';

breaks(TERM, 'glossary', [
  [
    'an entry that sees nothing',
    'also:',
    'see: [line-presure]\nalso:',
    'see:',
    /"line-presure"/,
    /mean "line-pressure"/,
  ],
  [
    'an entry of no lesson',
    'lesson: hot-fluid-thin-fluid',
    'lesson: hot-fluid',
    'lesson:',
    /mean "hot-fluid-thin-fluid"/,
  ],
  [
    'a long meaning',
    'The pressure',
    `${'so '.repeat(50)}the pressure`,
    'meaning',
    /words, and may have 60/,
  ],
]);

breaks(SOURCE, 'sources', [
  [
    'a kind of source that is none',
    'kind: standard',
    'kind: norm',
    'kind',
    /"kind" is "norm"/,
    /There are: standard, book/,
  ],
  [
    'an address without https',
    'kind:',
    'url: http://example.org\nkind:',
    'url',
    /begins with https/,
  ],
]);
