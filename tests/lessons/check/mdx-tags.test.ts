// Tags, props and ids that are not there, and texts that MDX cannot read.
import { LESSON, breaks } from './broken-content.ts';

const caution = '<Caution>\n\nHot fluid burns';

breaks(LESSON, 'tags', [
  [
    'an unknown prop',
    '<Caution>',
    '<Caution loud="yes">',
    'loud',
    /"loud" is not known/,
    /takes none/,
  ],
  ['a misspelt prop', '" at="eq. 1"', '" aat="eq. 1"', 'aat="eq', /"aat"/, /Did you mean "at"/],
  ['a missing prop', ' title="Finish the sentence"', '', 'kind="finish"', /"title" is missing/],
  [
    'a kind that is none',
    'kind="diagnose"',
    'kind="diagnosis"',
    'diagnosis',
    /Did you mean "diagnose"/,
  ],
  ['code in a prop', 'id="astm-d341"', 'id={"astm-d341"}', 'id={', /text in quotes/],
  [
    'an unknown tag',
    caution,
    `<Flud />\n\n${caution}`,
    '<Flud',
    /no tag <Flud>/,
    /Did you mean "Fluid"/,
  ],
  ['HTML', caution, `<div>\n\nText.\n\n</div>\n\n${caution}`, '<div>', /no HTML/],
  [
    'an unknown number',
    'temperature-low',
    'temperature-lo',
    'temperature-lo"',
    /no number "offered-temperature-lo"/,
    /mean "offered-temperature-low"/,
    /stand in src\/numbers\./,
  ],
  [
    'an unknown term',
    '"line-pressure"',
    '"line"',
    '"line"',
    /no glossary entry "line"/,
    /mean "line-pressure"/,
  ],
  ['an unknown source', '"astm-d341"', '"astm"', '"astm"', /no source "astm"/, /mean "astm-d341"/],
  [
    'an unknown drawing',
    caution,
    `<Drawing of="spool" />\n\n${caution}`,
    'spool',
    /"of" is "spool"/,
    /mean "spool-valve"/,
  ],
  [
    'a block tag that is left empty',
    '<Term id="line-pressure">line pressure</Term>',
    '<Term id="line-pressure" />',
    'line-pressure',
    /<Term> holds words/,
  ],
  [
    'a part inside a part',
    caution,
    `<Caution>\n\n<Section title="Inner part">\n\nText.\n\n</Section>\n\nHot fluid burns`,
    'Inner part',
    /<Section> stands in <Caution>/,
    /top level/,
  ],
  ['code', caution, `import x from 'y'\n\n${caution}`, 'import', /no import/],
  ['code in braces', 'falls, and', 'falls {1 + 1}, and', '{1 + 1}', /Braces hold code/],
  ['a tag that is never closed', '</Caution>', '', '<Caution>', /do not pair up/],
  ['a < that is no tag', 'it falls fast', 'it is <3', 'is <3', /Write \\< for the sign/],
]);
