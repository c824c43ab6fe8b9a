import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printNumber, type Marks } from '../../src/quantity/language.ts';
import * as en from '../../src/quantity/words.en.ts';
import * as es from '../../src/quantity/words.es.ts';

/** What the standard library of the language prints (ECMA-402, with the tables of Unicode's CLDR). */
const standard = (value: number, decimals: number, least: number, locale: string): string =>
  new Intl.NumberFormat(locale, {
    maximumFractionDigits: decimals,
    minimumFractionDigits: least,
    useGrouping: 'min2',
    signDisplay: 'negative',
  })
    .format(value)
    .replace('-', '\u2212');

/** Thousands and decimals, by the same tables. */
function marksOf(locale: string): Marks {
  const parts = new Intl.NumberFormat(locale).formatToParts(12345.6);
  const mark = (of: string): string => parts.find(({ type }) => type === of)?.value ?? '';
  return (mark('group') + mark('decimal')) as Marks;
}

describe('numbers', () => {
  it('have a real minus, and are grouped from ten thousand on', () => {
    expect(printNumber(-1.25, 1)).toBe('\u22121.3');
    expect(printNumber(9999, 0)).toBe('9999');
    expect(printNumber(1234567.25, 1)).toBe('1,234,567.3');
    expect(printNumber(-0.001, 1)).toBe('0.0');
    expect(printNumber(2.5, 2, 0)).toBe('2.5');
    expect(printNumber(Number.NaN, 1)).toBe('no value');
  });

  it.each(['en-US', 'es-MX', 'de-DE'])(
    'read in %s as the standard library prints them',
    (locale) => {
      fc.assert(
        fc.property(
          // Twelve digits are what the printer hands over; halves of the last decimal are among them.
          fc.oneof(
            fc.double({ min: -1e9, max: 1e9, noNaN: true }).map((v) => Number(v.toPrecision(12))),
            fc.tuple(fc.integer({ min: -2e7, max: 2e7 }), fc.nat(5)).map(([n, d]) => n / 10 ** d),
          ),
          fc.nat(4),
          fc.nat(4),
          (value, decimals, fewest) => {
            const least = Math.min(decimals, fewest);
            expect(printNumber(value, decimals, least, marksOf(locale))).toBe(
              standard(value, decimals, least, locale),
            );
          },
        ),
        { numRuns: 3000 },
      );
    },
  );

  it.each([en, es])(
    'have the marks of the language, $words.locale',
    ({ words: { locale }, marks }) => {
      expect(marks).toBe(marksOf(locale));
    },
  );
});
