/** Whatever is no package of ours is refused in a sentence. */
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { QtiBank } from '../../src/qti/bank.ts';
import { readQti } from '../../src/qti/read.ts';
import { Refusal } from '../../src/qti/refusal.ts';
import { writeQti } from '../../src/qti/write.ts';
import { ask, asked, shortCase } from '../quiz/sample.ts';

const questions = [...asked, ask(shortCase)];
const bank: QtiBank = {
  system: 'us',
  version: '1.2.3',
  lessons: [
    {
      id: 'lesson-a',
      title: 'Lesson A',
      objectives: [{ id: 'a-1', text: 'Say what a gauge shows.' }],
      questions,
    },
  ],
};
const whole = writeQti(bank);

type Files = Record<string, string>;
const files = (): Files =>
  Object.fromEntries(Object.entries(unzipSync(whole)).map(([path, b]) => [path, strFromU8(b)]));
const zipped = (of: Files): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(of).map(([path, text]) => [path, strToU8(text)])));
const changed = (path: string, from: string | RegExp, to: string): Uint8Array => {
  const all = files();
  const text = all[path] ?? '';
  const now = text.replace(from, to);
  expect(now, 'the change changes something').not.toBe(text);
  return zipped({ ...all, [path]: now });
};
const without = (path: string): Uint8Array => {
  return zipped(Object.fromEntries(Object.entries(files()).filter(([one]) => one !== path)));
};
/** What the list at the end of a zip file says of the first file in it: its size unpacked stands 24 bytes on. */
const bomb = (): Uint8Array => {
  const bytes = whole.slice();
  const at = bytes.findIndex(
    (_, i) => bytes[i] === 0x50 && bytes[i + 1] === 0x4b && bytes[i + 2] === 1,
  );
  new DataView(bytes.buffer).setUint32(at + 24, 101_000_000, true);
  return bytes;
};
const deep = `${'<a>'.repeat(200_000)}${'</a>'.repeat(200_000)}`;

test.each<[string, () => Uint8Array, RegExp]>([
  ['no zip file', () => strToU8('<manifest/>'), /no zip file/],
  ['an empty file', () => new Uint8Array(), /no zip file/],
  ['half a zip file', () => whole.slice(0, whole.length / 2), /no zip file, or it is cut off/],
  ['a file of 21 MB', () => new Uint8Array(21_000_000), /larger than 20 MB/],
  ['a small zip file that unpacks to 101 MB', bomb, /larger than 100 MB/],
  ['no manifest', () => without('imsmanifest.xml'), /no imsmanifest.xml at its top/],
  [
    'a manifest of something else',
    () => changed('imsmanifest.xml', 'qtiv3p0', 'qtiv2p1'),
    /not that of a QTI 3.0/,
  ],
  [
    'a cut manifest',
    () => zipped({ ...files(), 'imsmanifest.xml': '<manifest>' }),
    /imsmanifest.xml is not XML/,
  ],
  [
    'XML without end',
    () => zipped({ ...files(), 'imsmanifest.xml': deep }),
    /cannot be read|not XML/,
  ],
  [
    'entities that grow',
    () => changed('lesson-a.xml', '<qti-test-part', '<!DOCTYPE a [<!ENTITY b "c">]><qti-test-part'),
    /lesson-a.xml is not XML/,
  ],
  ['an item that is not there', () => without('items/q-single.xml'), /names items\/q-single.xml/],
  [
    'another tool',
    () => changed('lesson-a.xml', 'slips-when-hot', 'other'),
    /was not written by this site/,
  ],
  [
    'unknown units',
    () => changed('lesson-a.xml', 'data-units="us"', 'data-units="cubits"'),
    /US or metric/,
  ],
  ['a file too many', () => zipped({ ...files(), 'extra.xml': '<a/>' }), /holds extra.xml/],
  [
    'a question without its level',
    () => changed('items/q-single.xml', / data-level="\w+"/, ''),
    /lacks data-level/,
  ],
  [
    'a level of its own',
    () => changed('items/q-single.xml', 'data-level="recall"', 'data-level="easy"'),
    /cannot be used/,
  ],
  [
    'an interaction that we do not ask',
    () => changed('items/q-single.xml', 'data-kind="single"', 'data-kind="drawing"'),
    /of the kind “drawing”\. Kinds that can be read are single/,
  ],
  [
    'a key changed in one place',
    () => changed('items/q-number.xml', 'data-value="400"', 'data-value="401"'),
    /not as version 1\.2\.3 of this site wrote it/,
  ],
  [
    'a score changed',
    () => changed('items/q-single.xml', '"float">1<', '"float">2<'),
    /items\/q-single.xml is not as/,
  ],
  [
    'minutes of a reading changed where they are kept',
    () => changed('items/q-case.xml', 'data-minutes="2"', 'data-minutes="3"'),
    /items\/q-case.xml is not as/,
  ],
  [
    'set-ups of a reading that are no list',
    () => changed('items/q-case.xml', /data-set-ups="[^"]+"/, 'data-set-ups="[{"'),
    /cannot be used/,
  ],
  [
    'a cheapest reading that is not there',
    () => changed('items/q-case.xml', /data-cheapest="[^"]+"/, 'data-cheapest="[&quot;pan&quot;]"'),
    /cannot be used/,
  ],
  [
    'an amount changed where it is shown',
    () => changed('items/q-single.xml', /(<span data-si="600[^>]*>)/, '$1more than '),
    /items\/q-single.xml is not as/,
  ],
])('%s', (_, bytes, sentence) => {
  expect(() => readQti(bytes())).toThrow(Refusal);
  expect(() => readQti(bytes())).toThrow(sentence);
});

test('damage anywhere is refused in a sentence, or leaves questions that are whole in themselves', () => {
  fc.assert(
    fc.property(fc.nat(whole.length - 1), fc.integer({ min: 1, max: 255 }), (at, by) => {
      const bytes = whole.slice();
      bytes[at] = (bytes[at] ?? 0) ^ by;
      try {
        expect(readQti(bytes).lessons[0]?.questions).toHaveLength(questions.length);
      } catch (error) {
        expect(error).toBeInstanceOf(Refusal);
        expect((error as Refusal).message).toMatch(/^[A-Z].*\.$/su);
      }
    }),
    { numRuns: 200 },
  );
});
