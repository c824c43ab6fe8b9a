import { marks as here, words } from './words.en.ts';

/** A language is an argument everywhere and that of the build unless said; lists and plurals are in lists.ts. */
export const HERE = words.locale;

/** The makers of `Intl` are kept, because one costs a thousand times what a use of it does. */
export function kept<Key extends (string | number)[], Maker>(make: (...key: Key) => Maker) {
  const made = new Map<string, Maker>();
  return (...key: Key): Maker => {
    const name = key.join();
    let maker = made.get(name);
    if (maker === undefined) made.set(name, (maker = make(...key)));
    return maker;
  };
}

/**
 * How a language marks thousands and decimals. Those of the build stand with its words: the first `Intl` of a page takes
 * Chromium 30 ms, half of what a simulation needed to come alive.
 */
const marks = kept((language: string): typeof here => {
  if (language === HERE) return here;
  const parts = new Intl.NumberFormat(language).formatToParts(12345.6);
  const mark = (of: 'group' | 'decimal'): string =>
    parts.find(({ type }) => type === of)?.value ?? '';
  return { group: mark('group'), decimal: mark('decimal') };
});

/** A number as printed, as `Intl` does it: halves go up, and a real minus sign, but never "-0". */
export function printNumber(
  value: number,
  decimals: number,
  least = decimals,
  language = HERE,
): string {
  if (!Number.isFinite(value)) return words.noValue;
  const { group, decimal } = marks(language);
  const size = Math.abs(value);
  const scale = 10 ** decimals;
  // Fifteen digits are all that a number holds for sure: without this 1.005 would fall by its dust.
  const rounded = size < 1e15 ? Math.round(Number((size * scale).toPrecision(15))) / scale : size;
  const [whole = '', all = ''] = rounded.toFixed(decimals).split('.');
  const part = all.replace(/0+$/u, '').padEnd(least, '0');
  // Four figures stand together, as on a tester: 1500 rpm.
  const grouped = whole.length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/gu, group);
  return `${value < 0 && rounded > 0 ? '\u2212' : ''}${grouped}${part && decimal}${part}`;
}
