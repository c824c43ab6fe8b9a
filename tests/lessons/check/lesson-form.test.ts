// The parts of a lesson, and its typed numbers.
import { LESSON, breaks } from './broken-content.ts';

const task =
  '<Task kind="finish" title="One more">\n\nTry.\n\n<Solution>\n\nIt is this one, because the other one is not it.\n\n</Solution>\n\n</Task>';
const solution =
  '<Solution>\n\nThe fluid did, as every fluid does, and thin fluid leaks more through the same crack.\n\n</Solution>\n\n';

breaks(LESSON, 'parts', [
  [
    'parts out of order',
    '<Recap>',
    '<Section title="Late part">\n\nText.\n\n</Section>\n\n<Recap>',
    'Late part',
    /<Section> stands after <Mistake>/,
    /The order is/,
  ],
  [
    'a part twice',
    '<Retrieval lesson="hot-fluid-thin-fluid" />',
    '<Retrieval lesson="hot-fluid-thin-fluid" />\n\n<Retrieval  lesson="hot-fluid-thin-fluid" />',
    '<Retrieval  ',
    /second time/,
  ],
  [
    'words outside any part',
    '<Mistake>',
    'Left over.\n\n<Mistake>',
    'Left over',
    /Put them inside a <Section>/,
  ],
  [
    'a short recap',
    '- Fluid gets thinner as it warms.\n',
    '',
    '<Recap>',
    /has 2 lines/,
    /three to seven/,
  ],
  [
    'questions of another lesson',
    '<Retrieval lesson="hot',
    '<Retrieval lesson="cold',
    '<Retrieval',
    /"cold-fluid-thin-fluid"/,
  ],
  [
    'tasks out of order',
    '<Task kind="decide"',
    `${task}\n\n<Task kind="decide"`,
    'One more',
    /to finish stands after one to diagnose/,
  ],
  ['no task to finish', 'kind="finish"', 'kind="diagnose"', '<Tasks>', /no task of kind "finish"/],
  ['a task without its answer', solution, '', 'kind="diagnose"', /no <Solution>/],
  [
    'a term explained twice',
    'both times.',
    'both times: <Term id="line-pressure">it</Term>.',
    'both times',
    /explained before/,
  ],
  [
    'two titles with one address',
    'title="Cold and hot"',
    'title="Finish the sentence"',
    'kind="diagnose"',
    /#finish-the-sentence/,
  ],
]);

breaks(LESSON, 'numbers', [
  [
    'a number without a source',
    'both times.',
    'both times. Look for 40 psi.',
    '40 psi',
    /"40 psi" is a typed number/,
    /<Num id/,
    /common practice, no source/,
  ],
  [
    'a given that is nowhere',
    'needs: []',
    'needs: []\ngivens:\n  7 mm: nobody measured it',
    '7 mm',
    /"7 mm" is nowhere/,
  ],
]);
