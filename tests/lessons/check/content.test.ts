// Each break is one that a writer makes; the answer must be one sentence at the line where it was typed.
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkContent } from '../../../src/lessons/check/content.ts';
import { after, LESSON, lineOf, QUESTIONS, swap } from './broken-content.ts';

const TERM = 'glossary/line-pressure.yaml';
const SOURCE = 'sources/astm-d341.yaml';
const task =
  '<Task kind="finish" title="One more">\n\nTry.\n\n<Solution>\n\nIt is this one, because the other one is not it.\n\n</Solution>\n\n</Task>';
const solution =
  '<Solution>\n\nThe fluid did, as every fluid does, and thin fluid leaks more through the same crack.\n\n</Solution>\n\n';
const hook =
  'The car pulls away fine in the morning. After twenty minutes in traffic it flares, and by the time you have it on the lift it is fine again.';
const about =
  'Every equation behind the simulations, with its source, its limits and what is left out, and the invented training gearbox they run on.';
const caution = '<Caution>\n\nHot fluid burns';

test('the fixture has no fault, and neither has the content of the site', () => {
  expect(after(LESSON, (text) => text).faults).toEqual([]);
  expect(checkContent('content')).toEqual([]);
});

type Break = readonly [
  what: string,
  file: string,
  from: string,
  to: string,
  /** Words of the line that is named; the first such line. */
  line: string,
  ...says: readonly RegExp[],
];

const breaks: readonly Break[] = [
  // Tags
  ['an unknown prop', LESSON, '<Caution>', '<Caution loud="yes">', 'loud', /"loud" is not known/, /takes none/],
  ['a misspelt prop', LESSON, '" at="eq. 1"', '" aat="eq. 1"', 'aat="eq', /"aat"/, /Did you mean "at"/],
  ['a missing prop', LESSON, ' title="Finish the sentence"', '', 'kind="finish"', /"title" is missing/],
  ['a kind that is none', LESSON, 'kind="diagnose"', 'kind="diagnosis"', 'diagnosis', /Did you mean "diagnose"/],
  ['code in a prop', LESSON, 'id="astm-d341"', 'id={"astm-d341"}', 'id={', /text in quotes/],
  ['an unknown tag', LESSON, caution, `<Flud />\n\n${caution}`, '<Flud', /no tag <Flud>/, /Did you mean "Fluid"/],
  ['HTML', LESSON, caution, `<div>\n\nText.\n\n</div>\n\n${caution}`, '<div>', /no HTML/],
  ['an unknown number', LESSON, 'temperature-low', 'temperature-lo', 'temperature-lo"', /no number "offered-temperature-lo"/, /mean "offered-temperature-low"/, /src\/lessons\/numbers\.ts/],
  ['an unknown term', LESSON, '"line-pressure"', '"line"', '"line"', /no glossary entry "line"/, /mean "line-pressure"/],
  ['an unknown source', LESSON, '"astm-d341"', '"astm"', '"astm"', /no source "astm"/, /mean "astm-d341"/],
  ['an unknown drawing', LESSON, caution, `<Drawing of="spool" />\n\n${caution}`, 'spool', /"of" is "spool"/, /mean "spool-valve"/],
  ['an unknown table', 'pages/model.mdx', '$$\n\n</', '$$\n\n<EngineTable of="fluid" />\n\n</', 'EngineTable', /mean "fluids"/],
  ['a block tag that is left empty', LESSON, '<Term id="line-pressure">line pressure</Term>', '<Term id="line-pressure" />', 'line-pressure', /<Term> holds words/],
  ['a part inside a part', LESSON, caution, `<Caution>\n\n<Section title="Inner part">\n\nText.\n\n</Section>\n\nHot fluid burns`, 'Inner part', /<Section> stands in <Caution>/, /top level/],
  ['code', LESSON, caution, `import x from 'y'\n\n${caution}`, 'import', /no import/],
  ['code in braces', LESSON, 'falls, and', 'falls {1 + 1}, and', '{1 + 1}', /Braces hold code/],
  ['a tag that is never closed', LESSON, '</Caution>', '', '<Caution>', /do not pair up/],
  ['a < that is no tag', LESSON, 'it falls fast', 'it is <3', 'is <3', /Write \\< for the sign/],
  // Blank lines and headings
  ['no blank line after an opening tag', LESSON, '<Caution>\n\n', '<Caution>\n', '<Caution>', /blank line after <Caution>/],
  ['no blank line before a closing tag', LESSON, 'information.\n\n</C', 'information.\n</C', '</Caution>', /blank line before <\/Caution>/],
  ['no blank line before a picture', LESSON, 'every oil does it.', 'every oil does it.\n<Fluid />', '<Fluid', /blank line before <Fluid>/],
  ['a picture in a paragraph', LESSON, 'every oil does it.', 'every <Fluid /> oil.', '<Fluid', /middle of a line or paragraph/],
  ['no blank line after a heading', LESSON, 'behind it\n', 'behind it', '### The eq', /blank line after a heading/],
  ['a heading of the wrong level', LESSON, '### The', '## The', '## The', /Write ### here/],
  ['a heading that leaves out a level', LESSON, '### The', '#### The', '#### The', /leaves out a level/],
  // The parts of a lesson
  ['parts out of order', LESSON, '<Recap>', '<Section title="Late part">\n\nText.\n\n</Section>\n\n<Recap>', 'Late part', /<Section> stands after <Mistake>/, /The order is/],
  ['a part twice', LESSON, '<Retrieval lesson="hot-fluid-thin-fluid" />', '<Retrieval lesson="hot-fluid-thin-fluid" />\n\n<Retrieval  lesson="hot-fluid-thin-fluid" />', '<Retrieval  ', /second time/],
  ['words outside any part', LESSON, '<Mistake>', 'Left over.\n\n<Mistake>', 'Left over', /Put them inside a <Section>/],
  ['a short recap', LESSON, '- Fluid gets thinner as it warms.\n', '', '<Recap>', /has 2 lines/, /three to seven/],
  ['questions of another lesson', LESSON, '<Retrieval lesson="hot', '<Retrieval lesson="cold', '<Retrieval', /"cold-fluid-thin-fluid"/],
  ['tasks out of order', LESSON, '<Task kind="decide"', `${task}\n\n<Task kind="decide"`, 'One more', /to finish stands after one to diagnose/],
  ['no task to finish', LESSON, 'kind="finish"', 'kind="diagnose"', '<Tasks>', /no task of kind "finish"/],
  ['a task without its answer', LESSON, solution, '', 'kind="diagnose"', /no <Solution>/],
  ['a term explained twice', LESSON, 'both times.', 'both times: <Term id="line-pressure">it</Term>.', 'both times', /explained before/],
  ['two titles with one address', LESSON, 'title="Cold and hot"', 'title="Finish the sentence"', 'kind="diagnose"', /#finish-the-sentence/],
  // Numbers
  ['a number without a source', LESSON, 'both times.', 'both times. Look for 40 psi.', '40 psi', /"40 psi" is a typed number/, /<Num id/, /common practice, no source/],
  ['a given that is nowhere', LESSON, 'needs: []', 'needs: []\ngivens:\n  7 mm: nobody measured it', '7 mm', /"7 mm" is nowhere/],
  // Front matter
  ['minutes that are no number', LESSON, 'minutes: 10', 'minutes: ten', 'minutes', /"minutes" must be a number, and is "ten"/],
  ['too many minutes', LESSON, 'minutes: 10', 'minutes: 40', 'minutes', /"minutes" is 40/, /at most 15/],
  ['too few minutes', LESSON, 'minutes: 10', 'minutes: 1', 'minutes', /"minutes" is 1, and must be at least 4/],
  ['an unknown key', LESSON, 'minutes: 10', 'minutes: 10\nweather: good', 'weather', /"weather" is not known/, /There are: id, title/],
  ['a missing key', LESSON, 'needs: []\n', '', 'id:', /"needs" is missing. It is a list/],
  ['a short hook', LESSON, hook, 'Short.', 'hook', /"hook" has 6 characters, and must have at least 40/],
  ['another place in the course', LESSON, 'order: 2', 'order: 3', 'order', /at place 2/],
  ['another name than the file', LESSON, 'id: hot-fluid-thin-fluid', 'id: hot-fluid', 'id: hot-fluid', /named hot-fluid-thin-fluid.mdx/],
  ['front matter that is no YAML', LESSON, 'title: Hot', 'title: "Hot', 'title', /not valid YAML/],
  ['no front matter', LESSON, '---\nid', 'id', 'id:', /begin with its front matter/],
  ['a short description of a page', 'pages/model.mdx', about, 'Short.', 'description', /at least 40/],
  // Glossary and sources
  ['an entry that sees nothing', TERM, 'also:', 'see: [line-presure]\nalso:', 'see:', /"line-presure"/, /mean "line-pressure"/],
  ['an entry of no lesson', TERM, 'lesson: hot-fluid-thin-fluid', 'lesson: hot-fluid', 'lesson:', /mean "hot-fluid-thin-fluid"/],
  ['a long meaning', TERM, 'The pressure', `${'so '.repeat(50)}the pressure`, 'meaning', /words, and may have 60/],
  ['a kind of source that is none', SOURCE, 'kind: standard', 'kind: norm', 'kind', /"kind" is "norm"/, /There are: standard, book/],
  ['an address without https', SOURCE, 'kind:', 'url: http://example.org\nkind:', 'url', /begins with https/],
  // Questions
  ['a comma too few', QUESTIONS, '"recall",', '"recall"', '"unseen"', /not valid JSON: a comma is missing/],
  ['a comment', QUESTIONS, '"level"', '// why\n"level"', '// why', /JSON has no comments/],
  ['a key twice', QUESTIONS, '"kind": "single",', '"kind": "single",\n"kind" : "single",', '"kind" :', /"kind" stands here twice/],
  ['an unknown field', QUESTIONS, '"concept": "kin', '"hint": "x", "concept": "kin', '"hint"', /does not know "hint"/],
  ['an option whose reason is misspelt', QUESTIONS, '"why": "Right', '"wy": "Right', '"wy"', /does not know "wy"/, /It may have: id, text, correct, why/],
  ['two right options', QUESTIONS, '"correct": false', '"correct": true', '"options"', /exactly one option is best, but 2/],
  ['a question in the negative', QUESTIONS, 'What was measured?', 'What was not measured?', 'not measured', /in the negative/],
  ['an objective that is not there', QUESTIONS, '"hot-fluid-1"', '"hot-fluid-9"', 'hot-fluid-9', /"hot-fluid-9" does not exist/],
  ['an id twice', QUESTIONS, '"id": "dynamic-from-kinematic"', '"id":  "cst-on-a-data-sheet"', '"id":  ', /is taken/],
  ['a source that is not there', QUESTIONS, '"source": "astm-d341"', '"source": "astm"', '"astm"', /no source "astm"/, /mean "astm-d341"/],
  ['a number that is not there', QUESTIONS, '"dynamic-90"', '"dynamic-91"', 'dynamic-91', /no question number "dynamic-91"/, /mean "dynamic-90"/],
  ['a quantity of another kind', QUESTIONS, '"dynamicViscosity"', '"pressure"', '"pressure"', /asks for a pressure/],
  ['a rule that is not there', QUESTIONS, '"divided"', '"multiplied"', 'multiplied', /no wrong rule "multiplied"/, /There are: forgot-density/],
  ['an unknown number in a text', QUESTIONS, '{= fluid-cst-90}', '{= fluid-cst-9}', 'fluid-cst-9}', /no question number "fluid-cst-9"/],
  ['an amount in one system', QUESTIONS, 'in cSt.', 'in cSt at 40 °C.', '40 °C', /"40 °C" is typed in one unit system/],
  ['a question of another lesson', QUESTIONS, '"lesson": "hot-fluid-thin-fluid"', '"lesson": "thin-gap-open-hole"', '"lesson"', /belongs to the lesson "thin-gap-open-hole"/],
];

describe('one fault, one sentence, at its line', () => {
  test.each(breaks)('%s', (_, file, from, to, line, ...says) => {
    const { faults, text } = after(file, swap(from, to));
    const here = faults.map(({ sentence }) => sentence).join('\n');
    for (const words of says) expect(here).toMatch(words);
    expect(faults, here).toHaveLength(1);
    expect(faults[0]).toMatchObject({ file, line: lineOf(text, line) });
  });
});
