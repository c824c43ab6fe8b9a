/**
 * Words that a transmission shop does not use for these things, or that read like a translation. The list is the trade's
 * (common practice, no source): lash is not free play, a limit is not a trip, a tap is where a gauge goes.
 */
import { globSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const NOT_SAID: readonly (readonly [string, RegExp])[] = [
  ['lash is no stage', /\bfree play\b/iu],
  ['a limit is reached, not tripped', /\btrip(s|ped|ping)?\b/iu],
  ['a faucet runs, a tap takes a gauge', /\btap (?:brings|runs|drips)\b/iu],
  ['nobody is called that', /\bgauge man\b/iu],
  ['a crack takes fluid', /\bdrink(s|ing)?\b/iu],
  ['it runs short', /\b(?:goes|go|went) hungry\b|\bhunger\b/iu],
  ['the trade says a rebuild kit or frictions and steels', /\bclutch kit\b/iu],
  ['a transmission is healthy, a noise is a sound', /\bsound (?:car|box|transmission)\b/iu],
  ['a transmission', /\b(?:the|a|your|open a) box\b/iu],
  ['it depends on it', /\bhangs on (?:how|what)\b/iu],
  ['British spelling', /\b(?:colour|litre|metre|centre|neighbour|licence|grey|tyre)s?\b/iu],
  ['said once, as a joke', /\bdoes not care\b|\bplace your bet\b|\bdo not ask\b/iu],
];

/** Measure and address, which readers do not see as words. */
const shown = (text: string): string =>
  text
    .replace(/\{\/\*[^]*?\*\/\}/gu, '')
    .replace(/"(?:id|lesson|concept|source|key|rule)": "[^"]*"/gu, '')
    .replace(/\]\([\w-]+\)/gu, ']')
    .replace(/\b(?:id|of|href|class)="[^"]*"/gu, '')
    .replace(/\/\*[^]*?\*\/|\/\/ .*$/gmu, '');

const files = [
  ...globSync('content/en/{lessons,pages,glossary,questions,cases,meetings}/*.{mdx,yaml,json}'),
  ...globSync('src/**/*words.en.ts'),
];

test('there is something to read', () => expect(files.length).toBeGreaterThan(60));

test.each(NOT_SAID)('%s', (_why, words) => {
  const found = files.flatMap((file) =>
    shown(readFileSync(file, 'utf8'))
      .split('\n')
      .filter((line) => words.test(line))
      .map((line) => `${file}: ${line.trim().slice(0, 120)}`),
  );
  expect(found).toEqual([]);
});
