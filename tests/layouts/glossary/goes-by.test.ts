import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { glossarySchema } from '../../../src/lessons/lesson-schema.ts';
import { goesBy, namesOf } from '../../../src/layouts/glossary/goes-by.ts';

const folder = 'content/en/glossary';
const terms = readdirSync(folder).map((file) => {
  const { term, also } = glossarySchema.parse(parse(readFileSync(`${folder}/${file}`, 'utf8')));
  return { term, also, names: namesOf([term, ...also]) };
});
const found = (typed: string) =>
  terms.flatMap(({ term, names }) => (goesBy(names, typed) ? [term] : []));

test('every name of every term leads to it, whole and half typed, in capitals and without its signs', () => {
  const lost = terms.flatMap(({ term, also }) =>
    [term, ...also].filter((name) =>
      [
        name,
        name.toUpperCase(),
        name.replaceAll('-', ''),
        name.replaceAll('-', ' '),
        name.slice(0, 3),
      ].some((typed) => !found(typed).includes(term)),
    ),
  );
  expect(lost).toEqual([]);
});

test.each([
  ['tcc', 'Converter clutch'],
  ['lock up', 'Converter clutch'],
  ['lockup clutch', 'Converter clutch'],
  ['clutch, converter', 'Converter clutch'],
  ['solenoids', 'Pressure control solenoid'],
  ['EPC', 'Pressure control solenoid'],
  ['clutches', 'Converter clutch'],
])('“%s” leads to %s', (typed, term) => {
  expect(found(typed)).toContain(term);
});

test('what begins no word leads nowhere, and nothing typed leaves all', () => {
  expect(found('lutch')).toEqual([]);
  expect(found('zzq')).toEqual([]);
  expect(found('')).toHaveLength(terms.length);
  expect(found(' - ')).toHaveLength(terms.length);
});

test('accents do not matter', () => {
  expect(goesBy(namesOf(['Ángulo de torsión']), 'angulo')).toBe(true);
  expect(goesBy(namesOf(['Angulo']), 'Ángulo')).toBe(true);
});
