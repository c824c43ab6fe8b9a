import { expect, test } from 'vitest';
import { caseFile } from '../../src/cases/case-file.ts';
import { writtenCases } from '../../src/cases/written.ts';
import { TESTS } from '../../src/diagnosis/index.ts';

const files = writtenCases().map(caseFile);

test('a case file holds a reading for every test, and survives being sent', () => {
  for (const file of files) {
    expect(Object.keys(file.readings)).toEqual(TESTS.map(({ id }) => id));
    expect(JSON.parse(JSON.stringify(file))).toEqual(file);
  }
});

test('it is small enough for a phone: under 9 kB before it is packed', () => {
  for (const file of files) expect(JSON.stringify(file).length).toBeLessThan(9000);
});
