import { expect, test } from 'vitest';
import { entry } from '../../src/numbers/entry.ts';
import { numbers } from '../../src/numbers/index.ts';
import { tableOf } from '../../src/numbers/table.ts';

const some = entry('pressure', 400, 'a pressure');
const other = entry('pressure', 250, 'another');

test('an id in two files is refused, and both files are named', () => {
  expect(() => tableOf({ 'a.ts': { 'had-hot': some }, 'b.ts': { 'had-hot': other } })).toThrow(
    'The number "had-hot" stands in src/numbers/a.ts and again in src/numbers/b.ts.',
  );
  expect([...tableOf({ 'a.ts': { one: some }, 'b.ts': { two: other } }).keys()]).toEqual([
    'one',
    'two',
  ]);
});

test('an id that two parts of one file give is refused', () => {
  expect(() => tableOf({ 'a.ts': [{ one: some }, { two: some, one: other }] })).toThrow(
    'The number "one" stands in src/numbers/a.ts and again in src/numbers/a.ts.',
  );
  expect([...tableOf({ 'a.ts': [{ one: some }, { two: other }] }).keys()]).toEqual(['one', 'two']);
});

test('every number and every wrong value is a number, and the wrong ones are wrong', () => {
  for (const [id, { value, wrong }] of numbers) {
    expect(Number.isFinite(value), id).toBe(true);
    for (const [rule, { value: led }] of Object.entries(wrong)) {
      expect(Number.isFinite(led), `${id}, ${rule}`).toBe(true);
      expect(led, `${id}, ${rule}`).not.toBe(value);
    }
  }
});
