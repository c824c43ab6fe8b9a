import { languages, type LanguageId } from './languages.ts';

/** The forms of a word by number, under the names that `Intl.PluralRules` gives them. */
export type Forms = Partial<Record<Intl.LDMLPluralRule, string>> & { readonly other: string };

/**
 * What a language does with numbers of things and with lists. Named by language and not taken from
 * the current one, so that a file of words speaks alike wherever it is read.
 */
export function grammar(id: LanguageId) {
  const { locale } = languages[id];
  return {
    /** The form that goes with a count: "lesson" with 1, "lessons" with 2. */
    plural: (count: number, forms: Forms): string =>
      forms[new Intl.PluralRules(locale).select(count)] ?? forms.other,
    /** "a, b and c", as the language joins them. */
    list: (items: readonly string[]): string =>
      new Intl.ListFormat(locale, { type: 'conjunction' }).format(items),
  };
}
