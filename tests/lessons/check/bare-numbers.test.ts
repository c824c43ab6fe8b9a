import { expect, test } from 'vitest';
import { measuredNumbers } from '../../../src/lessons/check/bare-numbers.ts';

test.each([
  ['The line reads 600 kPa.', ['600 kPa']],
  ['It drops to 80 °C (176 °F) there.', ['80 °C', '176 °F']],
  ['At 1500 rpm it is fine.', ['1500 rpm']],
  ['It took 5 seconds.', ['5 seconds']],
  ['Allow 5 seconds (common practice, no source).', []],
  ['A rule (illustrative; common practice, no source): 5 seconds.', []],
  ['Espere 5 minutes (práctica común, sin fuente).', []],
  ['Water burns at 66 °C in 2 seconds <Src id="burn-times" />.', []],
  ['Code P0731 in 1975 after 3 tests, all in lesson 2.', []],
  ['It holds <Num id="holds" /> at idle.', []],
  ['A good one <Src id="x" />. The next reads 40 psi.', ['40 psi']],
  ['A row <Src id="x" />\n\nanother paragraph with 40 psi', ['40 psi']],
  ['$p = 3$ and $$ F = 4 \\text{ kPa} $$', []],
  ['{/* check 40 psi */} Fine.', []],
])('%s', (text, words) => {
  const found = measuredNumbers(text);
  expect(found.map((number) => number.words)).toEqual(words);
  for (const { offset, words: typed } of found)
    expect(text.slice(offset).trimStart().startsWith(typed)).toBe(true);
});
