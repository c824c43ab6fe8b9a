// Front matter of lessons, and pages.
import { LESSON, PAGE, breaks } from './broken-content.ts';

const hook =
  'The car pulls away fine in the morning. After twenty minutes in traffic it flares, and by the time you have it on the lift it is fine again.';
const about =
  'Every equation behind the simulations, with its source, its limits and what is left out, and the invented training transmission they run on.';

breaks(LESSON, 'front matter', [
  [
    'an order that is no number',
    'order: 2',
    'order: two',
    'order',
    /"order" must be a number, and is "two"/,
  ],
  ['minutes, which are measured', 'order: 2', 'order: 2\nminutes: 10', 'minutes', /are measured/],
  [
    'an unknown key',
    'order: 2',
    'order: 2\nweather: good',
    'weather',
    /"weather" is not known/,
    /There are: id, title/,
  ],
  ['a missing key', 'needs: []\n', '', 'id:', /"needs" is missing. It is a list/],
  ['a short hook', hook, 'Short.', 'hook', /"hook" has 6 characters, and must have at least 40/],
  ['another place in the course', 'order: 2', 'order: 3', 'order', /at place 2/],
  [
    'another name than the file',
    'id: hot-fluid-thin-fluid',
    'id: hot-fluid',
    'id: hot-fluid',
    /named hot-fluid-thin-fluid.mdx/,
  ],
  ['front matter that is no YAML', 'title: Hot', 'title: "Hot', 'title', /not valid YAML/],
  ['no front matter', '---\nid', 'id', 'id:', /begin with its front matter/],
]);

breaks(PAGE, 'pages', [
  [
    'an unknown table',
    '$$\n\n</',
    '$$\n\n<EngineTable of="fluid" />\n\n</',
    'EngineTable',
    /mean "fluids"/,
  ],
  ['a short description of a page', about, 'Short.', 'description', /at least 40/],
]);
