// The guide for question writers: its examples work as they stand, and it leaves nothing out.
import { mkdtempSync, readFileSync, rmSync, writeFileSync, cpSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { checkContent } from '../../src/lessons/check/content.ts';
import { quantities } from '../../src/quantity/by-name.ts';
import { questionSchema } from '../../src/quiz/schema.ts';

const guide = readFileSync('content/en/questions/README.md', 'utf8');
const examples = Array.from(guide.matchAll(/```json\n([^]*?)```/g), ([, json = '']) =>
  questionSchema.parse(JSON.parse(json)),
);

test('there is an example of each kind and of each entry of a number', () => {
  expect(examples.map((q) => (q.kind === 'number' ? q.number.entry : q.kind)).sort()).toEqual([
    'choose',
    'match',
    'order',
    'several',
    'single',
    'spot',
    'type',
  ]);
});

test('the examples make a good question file', () => {
  const root = mkdtempSync(join(tmpdir(), 'guide-'));
  try {
    cpSync('tests/fixtures/content/en', root, { recursive: true });
    const file = join(root, 'questions', 'hot-fluid-thin-fluid.json');
    writeFileSync(file, JSON.stringify(examples));
    expect(checkContent(root)).toEqual([]);
  } finally {
    rmSync(root, { recursive: true });
  }
});

test('every field is explained', () => {
  const kinds = questionSchema.options.map(({ shape }) => shape);
  const inner = kinds.flatMap((shape) => [
    ...('number' in shape ? Object.keys(shape.number.shape) : []),
    ...('pairs' in shape ? Object.keys(shape.pairs.element.shape) : []),
    ...('steps' in shape ? Object.keys(shape.steps.element.shape) : []),
    ...('missing' in shape ? Object.keys(shape.missing.unwrap().shape) : []),
  ]);
  const fields = kinds.flatMap((shape) => Object.keys(shape));
  const missing = [...fields, ...inner].filter((name) => !guide.includes(`\`${name}\``));
  expect(missing).toEqual([]);
});

test('every quantity stands in the list, with the unit that a given is written in', () => {
  for (const [name, { si }] of Object.entries(quantities)) {
    expect(guide, name).toContain(si.symbol === '' ? `\`${name}\`` : `\`${name}\` ${si.symbol}`);
  }
});
