// Meetings: form, and everything that a scene points at.
import { readFileSync } from 'node:fs';
import { breaks } from './broken-content.ts';

const aTry = readFileSync('tests/fixtures/content/en/meetings/a-try.yaml', 'utf8');

breaks('meetings/a-try.yaml', 'meetings', [
  ['a kind that is none', 'kind: picture', 'kind: film', 'kind: film', /"say", "picture", "sim/],
  [
    'a word that is not known',
    "    heading: 'Warm it'",
    "    heading: 'Warm it'\n    colour: red",
    'colour: red',
    /does not know "colour"/,
    /It may have: kind, heading, state, run, lines, notes/,
  ],
  ['no minutes', 'minutes: 5\n', '', 'title', /"minutes" is a whole number/],
  [
    'a line too long for the wall',
    'It held at',
    `${'very '.repeat(30)} hot at`,
    'very very',
    /at most 140 characters/,
  ],
  [
    'a chart that is not there',
    'three-taps-cracked-seal',
    'three-taps-cracked-sea',
    'chart:',
    /Scene 2: There is no chart/,
    /mean "three-taps-cracked-seal"/,
  ],
  [
    'a drawing that is not there',
    'complaint-card',
    'complaint-crd',
    'drawing:',
    /Scene 1: there is no drawing "complaint-crd"/,
    /mean "complaint-card"/,
  ],
  [
    'a number that is not there',
    'low-mu-20',
    'low-mu-2O',
    'low-mu-2O',
    /Scene 1: There is no number "low-mu-2O"/,
  ],
  [
    'an amount in one unit system',
    'The crack is the same, cold',
    'At 100 °C the crack is the same, cold',
    'At 100 °C',
    /"100 °C" is typed in one unit system/,
  ],
  [
    'a link to a page and to no state',
    '/lessons/hot-fluid-thin-fluid/?fluid=1~temp.20#fluid',
    '/lessons/hot-fluid-thin-fluid/',
    'state:',
    /no address of a simulation's state/,
  ],
  [
    'a run of another simulation',
    '?fluid=1~temp.100#fluid',
    '?engagement=1~temp.100#engagement',
    'run:',
    /"run" is a state of the same simulation/,
  ],
  [
    'two right answers',
    'correct: false',
    'correct: true',
    'options:',
    /one is correct, and only one/,
  ],
  [
    'an option that does not say why',
    "          why: 'The crack is the same, cold and hot.'\n",
    '',
    "text: 'The crack'",
    /explanation \("why"\) of an option is missing/,
  ],
  [
    'an explanation too long for the wall',
    'It is thinner, so',
    `It is ${'very '.repeat(60)}thin, so`,
    'very very',
    /of an option has at most 280 characters/,
  ],
  [
    'a lesson that is none',
    'lesson: hot-fluid-thin-fluid',
    'lesson: hot-fluid-thin-flui',
    'lesson: hot',
    /not in the course/,
    /mean "hot-fluid-thin-fluid"/,
  ],
  [
    'a question that is not there',
    /* the vote asks the bank */ / {4}ask:[^]*?(?= {4}notes)/u.exec(aTry)?.[0] ?? '-',
    '    question: { lesson: hot-fluid-thin-fluid, id: what-two-numbers-gave }\n',
    'question:',
    /Scene 4: the lesson "hot-fluid-thin-fluid" has no question "what-two-numbers-gave"/,
  ],
]);
