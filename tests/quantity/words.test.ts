import { describe, expect, it } from 'vitest';
import { languages } from '../../src/language/languages.ts';
import { words as en } from '../../src/quantity/words.en.ts';
import { words as es } from '../../src/quantity/words.es.ts';

describe('what the printer and the parser say in each language', () => {
  it.each([
    [en, languages.en.locale],
    [es, languages.es.locale],
  ])('takes numbers, lists and plurals from the locale of the language', (words, locale) => {
    expect(words.locale).toBe(locale);
  });

  it('has no English sentence in the Spanish words, and every value where the English has one', () => {
    const given = {
      text: 'TEXT',
      unit: 'UNIT',
      quantity: 'QUANTITY',
      min: 'MIN',
      max: 'MAX',
      value: 'VALUE',
      range: 'RANGE',
      example: 'EXAMPLE',
      units: 'UNITS',
    };
    for (const key of Object.keys(en) as (keyof typeof en)[]) {
      const [there, here] = [en[key], es[key]].map((said) =>
        typeof said === 'string' ? said : said(given),
      );
      expect(here, key).not.toBe(there);
      // Which quantity a unit is none of is left out in Spanish: a name would need its article.
      const printed = (text = '') =>
        (text.match(/[A-Z]{3,}/g) ?? []).filter((p) => p !== 'QUANTITY');
      expect(printed(here).toSorted(), key).toEqual(printed(there).toSorted());
    }
  });
});
