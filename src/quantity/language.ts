import { words } from './words.en.ts';

/**
 * Numbers in the reader's language, by the browser's own tables; lists and plurals are in lists.ts. A language is an argument everywhere
 * and that of the build unless said; the makers are kept, because one costs a thousand times what a use of it does.
 */
export const HERE = words.locale;

export function kept<Key extends (string | number)[], Maker>(make: (...key: Key) => Maker) {
  const made = new Map<string, Maker>();
  return (...key: Key): Maker => {
    const name = key.join();
    let maker = made.get(name);
    if (maker === undefined) made.set(name, (maker = make(...key)));
    return maker;
  };
}

const numbers = kept(
  (language: string, decimals: number, least: number) =>
    new Intl.NumberFormat(language, {
      maximumFractionDigits: decimals,
      minimumFractionDigits: least,
      // Four figures stand together, as on a tester: 1500 rpm.
      useGrouping: 'min2',
      signDisplay: 'negative',
    }),
);
/** A number as printed: with a real minus sign, and never "-0". */
export function printNumber(
  value: number,
  decimals: number,
  least = decimals,
  language = HERE,
): string {
  if (!Number.isFinite(value)) return words.noValue;
  return numbers(language, decimals, least).format(value).replace('-', '\u2212');
}
