/**
 * The manifest against a schema, by libxml2. The schema of items is not held against anything here: 1EdTech's own file
 * comes with no package and may not be passed on. Whoever has it can unzip a package and run
 * `xmllint --noout --schema imsqti_asiv3p0_v1p0.xsd items/*.xml`. That items can be played is tried by tests/walks/qti.spec.ts.
 */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { validateXML } from 'xmllint-wasm';
import { qtiBank } from '../../src/lessons/qti-bank.ts';
import { qtiFiles } from '../../src/qti/write.ts';

const schema = readFileSync('tests/qti/schema/manifest.xsd', 'utf8');
const files = qtiFiles(qtiBank('us'));
const manifest = files.get('imsmanifest.xml') ?? '';

const faults = async (contents: string): Promise<readonly string[]> =>
  (
    await validateXML({ xml: [{ fileName: 'imsmanifest.xml', contents }], schema: [schema] })
  ).errors.map(({ rawMessage }) => rawMessage);

test('the manifest has the parts of the standard, in its order', async () => {
  expect(await faults(manifest)).toEqual([]);
});

test.each([
  ['a type that the standard has not', 'imsqti_test_xmlv3p0', 'imsqti_quiz_xmlv3p0'],
  ['no organizations', '<organizations />', ''],
  ['a version of its own', '3.0.0', '3.1'],
])('the schema finds %s', async (_, from, to) => {
  expect(manifest).toContain(from);
  expect(await faults(manifest.replace(from, to))).not.toEqual([]);
});

const named = (pattern: RegExp): readonly string[] =>
  Array.from(manifest.matchAll(pattern), ([, name = '']) => name).sort();

/** The schema says so too, by ID and IDREF; libxml2 does not follow those. */
test('every file is named in the manifest once, and every reference leads to a resource', () => {
  expect(named(/<file href="([^"]+)"/gu)).toEqual(
    [...files.keys()].filter((path) => path !== 'imsmanifest.xml').sort(),
  );
  const ids = named(/<resource identifier="([^"]+)"/gu);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids).toEqual(expect.arrayContaining([...named(/identifierref="([^"]+)"/gu)]));
});
