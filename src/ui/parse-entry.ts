import {
  format,
  formatNumber,
  fromShown,
  unitKey,
  type Quantity,
  type UnitSystem,
} from './quantity.ts';

export type Entry =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly sentence: string };

export interface Range {
  readonly min: number;
  readonly max: number;
}

const NUMBER = /^([+-]?)(\d[\d\s.,']*|[.,]\d+)(e[+-]?\d{1,2})?\s*(.*)$/iu;
const SPACES = /[\s\u00a0\u2000-\u200b\u202f\ufeff]+/gu;

/**
 * The numbers a string of digits, dots and commas may mean. "1,200" is twelve hundred
 * to one reader and one-and-a-fifth to the next, so both come back, likelier first.
 */
function readings(digits: string): readonly number[] {
  const tight = digits.replace(/[\s']/gu, '');
  const commas = tight.split(',').length - 1;
  const dots = tight.split('.').length - 1;
  if (commas + dots === 0) return [Number(tight)];
  if (commas + dots === 1) {
    const decimal = Number(tight.replace(',', '.'));
    const thousands = commas === 1 && /^[1-9]\d{0,2},\d{3}$/u.test(tight);
    return thousands ? [decimal, Number(tight.replace(',', ''))] : [decimal];
  }
  if (/^\d{1,3}(,\d{3})+(\.\d*)?$/u.test(tight)) return [Number(tight.replaceAll(',', ''))];
  if (/^\d{1,3}(\.\d{3})+(,\d*)?$/u.test(tight)) {
    return [Number(tight.replaceAll('.', '').replace(',', '.'))];
  }
  return [];
}

function rangeWords({ min, max }: Range, q: Quantity, system: UnitSystem): string {
  return `${format(min, q, system)} to ${format(max, q, system)}`;
}

function otherUnits(q: Quantity): string {
  const units = [...new Set([q.si.unit, q.us.unit])].filter((unit) => unit !== '');
  return units.join(' or ');
}

/**
 * What a person typed, as a metric value, or one sentence that says what is wrong and
 * what is allowed. A unit in the text wins over the unit system in force, so "212 F"
 * means the same thing to everybody. Never throws.
 */
export function parseEntry(text: string, q: Quantity, system: UnitSystem, range: Range): Entry {
  const allowed = rangeWords(range, q, system);
  const example = formatNumber((range.min + range.max) / 2, q, system);
  const clean = text
    .replace(SPACES, ' ')
    .replace(/[\u2212\u2013]/gu, '-')
    .trim();
  if (clean === '') {
    return { ok: false, sentence: `Nothing typed. Give a ${q.name}: ${allowed}.` };
  }
  const match = NUMBER.exec(clean);
  const possible = match ? readings((match[2] ?? '').trim()) : [];
  if (!match || possible.length === 0 || possible.some((n) => !Number.isFinite(n))) {
    return {
      ok: false,
      sentence: `“${shorten(clean)}” is not a number. Give a ${q.name}: ${allowed}, such as ${example}.`,
    };
  }
  const [, sign, , exponent = '', unitText = ''] = match;
  const key = unitKey(unitText);
  const convert =
    key === ''
      ? (shown: number): number => fromShown(shown, q, system)
      : Object.hasOwn(q.typed, key)
        ? q.typed[key]
        : undefined;
  if (!convert) {
    const units = otherUnits(q);
    const fix = units === '' ? 'Leave the unit off' : `Use ${units}`;
    return {
      ok: false,
      sentence: `The unit “${shorten(unitText)}” is not known here. ${fix}: ${allowed}.`,
    };
  }
  const factor = (sign === '-' ? -1 : 1) * Number(`1${exponent}`);
  const values = possible.map((n) => settle(convert(n * factor), range));
  const inside = values.find((v) => v >= range.min && v <= range.max);
  if (inside !== undefined) return { ok: true, value: inside };
  const [value = Number.NaN] = values;
  const side = value > range.max ? 'above' : 'below';
  return {
    ok: false,
    sentence: `${format(value, q, system)} is ${side} what is allowed here: ${allowed}.`,
  };
}

/**
 * Conversions leave dust (212 °F = 100.00000000000001 °C). Six decimals is far finer
 * than any control and keeps links short; a value within that dust of a limit is the limit.
 */
function settle(value: number, { min, max }: Range): number {
  const rounded = Math.round(value * 1e6) / 1e6;
  if (Math.abs(rounded - min) <= 1e-6) return min;
  if (Math.abs(rounded - max) <= 1e-6) return max;
  return rounded === 0 ? 0 : rounded;
}

const shorten = (text: string): string => (text.length > 24 ? `${text.slice(0, 23)}…` : text);
