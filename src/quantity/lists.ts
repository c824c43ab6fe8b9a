/** Lists and plurals in the reader's language. */
import { printNumber } from './language.ts';
import { words } from './words.en.ts';

/** The makers of `Intl` are kept, because one costs a thousand times what a use of it does. */
function kept<Key extends string[], Maker>(make: (...key: Key) => Maker) {
  const made = new Map<string, Maker>();
  return (...key: Key): Maker => {
    const name = key.join();
    let maker = made.get(name);
    if (maker === undefined) made.set(name, (maker = make(...key)));
    return maker;
  };
}

const plurals = kept((language: string) => new Intl.PluralRules(language));
const lists = kept(
  (language: string, type: Intl.ListFormatType) => new Intl.ListFormat(language, { type }),
);

/** "forward, reverse, and high"; `disjunction` says "or". */
export const listOf = (
  items: readonly string[],
  type: Intl.ListFormatType = 'conjunction',
  language = words.locale,
): string => lists(language, type).format(items);

/** The form that goes with a whole number, "#" standing for it: `plural(3, { one: 'a minute', other: '# minutes' })`. */
export function plural(
  value: number,
  forms: Readonly<Partial<Record<Intl.LDMLPluralRule, string>> & { other: string }>,
  language = words.locale,
): string {
  const whole = Math.round(value);
  const form = forms[plurals(language).select(whole)] ?? forms.other;
  return form.replace('#', printNumber(whole, 0));
}
