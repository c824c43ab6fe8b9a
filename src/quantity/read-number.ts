/**
 * The numbers that a piece of typing may begin with. "1,200" is twelve hundred to one reader and one and a fifth to the next,
 * so both come back, likelier first: the decimal where the mark is the one the reader's language has for it.
 */
export interface NumberRead {
  /** Empty where the marks fit no number, as in "3.0.0". */
  readonly values: readonly number[];
  /** The part that was taken for a number, and what stands after it. */
  readonly digits: string;
  readonly rest: string;
}

const FRACTION = /^(?:(\d+)[ -]+)?(\d+) ?[/⁄] ?(\d+) *(.*)$/u;
const DECIMAL = /^([\d.,](?:[\d.,']| (?=\d{3}(?!\d)))*)(e[+-]?\d{1,2})? *(.*)$/iu;

/** Undefined where the text does not begin with a number at all. */
export function readNumber(text: string, decimalMark = '.'): NumberRead | undefined {
  const [, sign = '', body = ''] = /^([+-]?) *(.*)$/u.exec(text) ?? [];
  const fraction = FRACTION.exec(body);
  if (fraction) {
    const [, whole = '0', over = '', under = '', rest = ''] = fraction;
    const value = Number(whole) + Number(over) / Number(under);
    return read([value], body.slice(0, body.length - rest.length), rest, sign);
  }
  const decimal = DECIMAL.exec(body);
  if (!decimal) return undefined;
  const [, digits = '', exponent = '', rest = ''] = decimal;
  const power = Number(`1${exponent}`);
  return read(
    meanings(digits, decimalMark).map((value) => value * power),
    digits + exponent,
    rest,
    sign,
  );
}

const read = (
  sizes: readonly number[],
  digits: string,
  rest: string,
  sign: string,
): NumberRead => ({
  values: sizes.every(Number.isFinite) ? sizes.map((size) => (sign === '-' ? -size : size)) : [],
  digits: digits.trim(),
  rest,
});

function meanings(digits: string, decimalMark: string): readonly number[] {
  const text = digits.replace(/[ ']/gu, '');
  const marks = text.replace(/\d/gu, '');
  if (marks.length === text.length) return [];
  if (marks === '') return [Number(text)];
  if (marks.length === 1) {
    const decimal = Number(text.replace(',', '.'));
    if (!/^[1-9]\d{0,2}[.,]\d{3}$/u.test(text)) return [decimal];
    const thousands = Number(text.replace(marks, ''));
    return marks === decimalMark ? [decimal, thousands] : [thousands, decimal];
  }
  if (/^\d{1,3}(,\d{3})+(\.\d*)?$/u.test(text)) return [Number(text.replaceAll(',', ''))];
  if (/^\d{1,3}(\.\d{3})+(,\d*)?$/u.test(text))
    return [Number(text.replaceAll('.', '').replace(',', '.'))];
  return [];
}
