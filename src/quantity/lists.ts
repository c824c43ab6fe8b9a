/** Lists and plurals in the reader's language. */
import { HERE, kept, printNumber } from './language.ts';

const plurals = kept((language: string) => new Intl.PluralRules(language));
const lists = kept(
  (language: string, type: Intl.ListFormatType) => new Intl.ListFormat(language, { type }),
);

/** "forward, reverse, and high"; `disjunction` says "or". */
export const listOf = (
  items: readonly string[],
  type: Intl.ListFormatType = 'conjunction',
  language = HERE,
): string => lists(language, type).format(items);

/** The form that goes with a whole number, "#" standing for it: `plural(3, { one: 'a minute', other: '# minutes' })`. */
export function plural(
  value: number,
  forms: Readonly<Partial<Record<Intl.LDMLPluralRule, string>> & { other: string }>,
  language = HERE,
): string {
  const whole = Math.round(value);
  const form = forms[plurals(language).select(whole)] ?? forms.other;
  return form.replace('#', printNumber(whole, 0, 0, language));
}
