import { describe, expect, test } from 'vitest';
import { edition } from '../../src/book/edition.ts';
import { readOptions } from '../../src/book/options.ts';

const read = (line: string) => readOptions(line === '' ? [] : line.split(' '), 25);

describe('what may be asked for', () => {
  test('without a word it is the whole course on Letter in US units', () => {
    const { paper, units, lessons } = read('');
    expect([paper, units]).toEqual(['letter', 'us']);
    expect(lessons).toEqual(Array.from({ length: 25 }, (_, i) => i + 1));
  });

  test('paper, units, lessons and file are taken, lessons once each and in order', () => {
    expect(read('--paper a4 --units si --lessons 7,2-4,3 --out /tmp/b.pdf')).toEqual({
      paper: 'a4',
      units: 'si',
      lessons: [2, 3, 4, 7],
      out: '/tmp/b.pdf',
    });
  });

  test.each([
    ['--paper legal', /--paper is "legal".*"letter".*"a4"/u],
    ['--paper A4', /--paper is "A4"/u],
    ['--units metric', /--units is "metric".*"us".*"si"/u],
    ['--lessons 0', /--lessons is "0".*1 to 25/u],
    ['--lessons 3-26', /--lessons is "3-26"/u],
    ['--lessons 5-2', /--lessons is "5-2"/u],
    ['--lessons 1,,2', /--lessons is "1,,2"/u],
    ['--lessons pump', /--lessons is "pump"/u],
    ['--out book', /--out is "book".*\.pdf/u],
    ['--colour', /"--colour" is no option.*--paper/u],
    ['a4', /"a4" is no option/u],
  ])('%s is refused, with what is allowed', (line, sentence) => {
    expect(() => read(line)).toThrow(sentence);
  });

  test('an option without its value is refused by its name', () => {
    expect(() => read('--paper')).toThrow(/"--paper" is no option|--paper/u);
  });
});

test('the date is the one that a build which can be repeated hands in', () => {
  // 1 January 2030, 00:00 UTC, from GNU date: date -u -d 2030-01-01 +%s
  expect(edition('1893456000').date.toISOString()).toBe('2030-01-01T00:00:00.000Z');
  expect(() => edition('tomorrow')).toThrow(/SOURCE_DATE_EPOCH is "tomorrow"/u);
});
