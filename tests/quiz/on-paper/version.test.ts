import { describe, expect, test } from 'vitest';
import { readVersion, versionOf } from '../../../src/quiz/on-paper/version.ts';

describe('versionOf', () => {
  test('six signs that read back, also as people type them', () => {
    for (let i = 0; i < 500; i += 1) {
      const version = versionOf([String(i)]);
      expect(version).toMatch(/^[0-9a-hjkmnp-tv-z]{6}$/);
      expect(readVersion(version)).toBe(version);
      // Crockford's base 32: O is taken for 0, I and L for 1, capitals for small letters.
      const typed = version.replaceAll('0', 'O').replaceAll('1', 'l').toUpperCase();
      expect(readVersion(` ${typed} `)).toBe(version);
    }
  });

  test('one letter more or less, or two lessons the other way round, is another version', () => {
    const texts = ['{"lesson":"a"}', '{"lesson":"b"}'];
    const others = [
      [...texts].reverse(),
      [...texts, ''],
      texts.slice(0, 1),
      ['{"lesson":"a"} ', texts[1] ?? ''],
    ];
    for (const other of others) expect(versionOf(other)).not.toBe(versionOf(texts));
    expect(versionOf([...texts])).toBe(versionOf(texts));
  });
});

test.each(['12345', '1234567', '12345u', 'abc de', '-'])('%j is no version', (typed) => {
  expect(readVersion(typed)).toBeUndefined();
});
test('an empty field asks for none', () => {
  expect(readVersion('  ')).toBe('');
});

// By another program (Python): FNV-1a over the two bytes of each unit, then five bits a sign from the lowest on.
test.each([
  [['a'], 'nf9ha9'],
  [['{"lesson":"a"}', '{"lesson":"b"}'], '5vkrcj'],
  [['é €'], '1pth8x'],
])('%j is marked %s', (texts, version) => {
  expect(versionOf(texts)).toBe(version);
});
