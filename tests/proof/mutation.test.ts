/** How changes are drawn and counted; Stryker itself runs in `npm run quality -- mutation`. */
import { describe, expect, it, test } from 'vitest';
import { scoreRow } from '../../src/proof/mutation/index.ts';
import { interval } from '../../src/proof/mutation/interval.ts';
import { draw, tell, toldKey, type Mutant, type Told } from '../../src/proof/mutation/mutants.ts';
import { explainedSurvivors, unlisted } from '../../src/proof/mutation/survivors.ts';

// R. G. Newcombe, Statistics in Medicine 17 (1998) 857-872, table I, the score method.
test.each([
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
  [1, 29, 0.0061, 0.1718],
])('%d of %d is at home between %d and %d', (hits, of, low, high) => {
  const [below, above] = interval(hits, of);
  expect(below).toBeCloseTo(low, 4);
  expect(above).toBeCloseTo(high, 4);
});

const file = 'src/engine/units.ts';
const change = (line: number, column: number, replacement: string): Mutant => ({
  fileName: file,
  mutatorName: 'ArithmeticOperator',
  replacement,
  location: { start: { line, column }, end: { line, column: column + 4 } },
});
const many = tell(Array.from({ length: 90 }, (_, at) => change(at, at % 7, String(at))));

describe('a draw', () => {
  const names = (count: number, seed: string, from = many): readonly string[] =>
    draw(from, count, seed).map(({ told }) => told.to);
  it('is the same again, another one with another seed, and each change once', () => {
    expect(names(30, 'a')).toEqual(names(30, 'a'));
    expect(names(30, 'a')).not.toEqual(names(30, 'b'));
    expect(new Set(names(90, 'a')).size).toBe(90);
  });
  it('draws hardly any others when one change is gone', () => {
    const [gone] = names(30, 'a');
    const after = names(
      30,
      'a',
      many.filter(({ told }) => told.to !== gone),
    );
    expect(after.slice(0, 29)).toEqual(names(30, 'a').slice(1));
  });
});

test('changes that read alike are told apart', () => {
  const alike = tell([change(0, 0, '1'), change(0, 0, '1'), change(0, 0, '2')]);
  expect(alike.map(({ told }) => told.nth)).toEqual([0, 1, 0]);
});

const told = (to: string): Told => ({ file, line: 'a + b', from: 'a + b', to, nth: 0 });
const explained = (to: string) => ({ ...told(to), why: 'Both give the same number here.' });

test('a survivor without a reason is named, and a reason that has had its day', () => {
  expect(unlisted([told('1')], [], [told('1')], [explained('1')])).toEqual([]);
  expect(unlisted([told('1')], [], [told('1')], [])).toEqual([
    'src/engine/units.ts: in "a + b", a + b became 1: no test noticed, and survivors.json does not say why.',
  ]);
  expect(unlisted([], [told('1')], [told('1')], [explained('1'), explained('2')])).toEqual([
    'src/engine/units.ts: in "a + b", a + b became 1: has a reason in survivors.json, but a test notices it.',
    'src/engine/units.ts: in "a + b", a + b became 2: has a reason in survivors.json, but cannot be made any more.',
  ]);
});

test('a score says how many were drawn, and what that means for all of them', () => {
  expect(scoreRow('engine', { noticed: 182, missed: 81, all: 2450 })).toMatchObject({
    value: '69.2 % of 263 drawn from 2,450 (of all: 63.4 % to 74.5 %)',
    met: false,
  });
  // The first try of a draw is the share that says something of all; tests written for it come behind it, and meet no bar.
  const first = { noticed: 182, missed: 81 };
  expect(scoreRow('engine', { noticed: 260, missed: 3, all: 2450, first })).toMatchObject({
    value:
      '69.2 % of 263 drawn from 2,450 (of all: 63.4 % to 74.5 %); 98.9 % with the tests written since',
    met: false,
  });
  expect(scoreRow('engine', { noticed: 17, missed: 3, all: 20 })).toMatchObject({
    value: '85.0 % of all 20',
    met: true,
  });
});

test('no reason is given twice', () => {
  const all = explainedSurvivors().map(toldKey);
  expect(new Set(all).size).toBe(all.length);
});
