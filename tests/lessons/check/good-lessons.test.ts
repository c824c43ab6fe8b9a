// The other side of the breaks: whatever a writer builds from the parts that DEVELOPERS.md allows passes.
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tagForms } from '../../../src/lessons/tag-forms.ts';
import { checkLesson } from '../../../src/lessons/check/lesson.ts';
import { knownIn } from '../../../src/lessons/check/known.ts';
import { LESSON, lineOf, swap } from './broken-content.ts';

const words = fc.constantFrom(
  'Warm it up and look again.',
  'It reads <Num id="at-40" /> here, and **more** later: `P0731`.',
  'At 66 °C it burns in 2 seconds <Src id="astm-d341" at="table 1" />.',
  'Allow 5 seconds (common practice, no source).',
  'With $p = 3$ it holds.',
  'A note {/* for the next writer: 40 psi was wrong */} may stand.',
);
const pictures = Object.entries(tagForms).flatMap(([name, { stands, holds, props }]) =>
  stands === 'alone' && !holds && Object.keys(props.shape).length === 0 ? [`<${name} />`] : [],
);
const drawings = tagForms.Drawing.props.shape.of.options.map((of) => `<Drawing of="${of}" />`);
const leaf = fc.oneof(
  words,
  fc.constantFrom(...pictures, ...drawings, '<EngineTable of="faults" />'),
  fc.constantFrom(
    '- one\n- two',
    '1. one\n2. two',
    '> said',
    '| a | b |\n| --- | --- |\n| 1 | 2 |',
  ),
  fc.constantFrom('$$\nF = p A\n$$', '### A heading', '{/* a note */}'),
);
const block = fc.oneof(
  leaf,
  fc
    .tuple(fc.constantFrom('Caution', 'Wide', 'Solution'), leaf)
    .map(([tag, inner]) => `<${tag}>\n\n${inner}\n\n</${tag}>`),
);
const root = 'tests/fixtures/content/en';
const lesson = readFileSync(`${root}/${LESSON}`, 'utf8');
const known = knownIn(root);
const faultsOf = (text: string) =>
  checkLesson({ file: LESSON, id: 'hot-fluid-thin-fluid', text }, known);
const inSection = '### The equation behind it';

describe('a lesson of allowed parts', () => {
  test('passes, whatever stands in its sections', () => {
    fc.assert(
      fc.property(fc.array(block, { minLength: 1, maxLength: 6 }), (blocks) => {
        const text = `${blocks.join('\n\n')}\n\n${inSection}`;
        expect(faultsOf(swap(inSection, text)(lesson))).toEqual([]);
      }),
      { numRuns: 100 },
    );
  }, 30_000);

  test('and a fault below them is told at its own line', () => {
    fc.assert(
      fc.property(fc.array(block, { maxLength: 4 }), (blocks) => {
        const good = [...blocks, inSection].join('\n\n');
        const text = swap(
          'both times.',
          'both times. Look for 41 psi.',
        )(swap(inSection, good)(lesson));
        const faults = faultsOf(text);
        expect(faults).toHaveLength(1);
        expect(faults[0]?.line).toBe(lineOf(text, '41 psi'));
      }),
      { numRuns: 30 },
    );
  }, 30_000);
});
