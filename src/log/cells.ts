/** One cell of a log: a number, a clock time, a word, or nothing. */

export type DecimalMark = '.' | ',';

const CLOCK =
  /^(?:\d{4}-\d\d-\d\d[T ]|\d{1,2}[./]\d{1,2}[./]\d{2,4} )?(\d{1,2}):(\d\d):(\d\d)(?:[.,](\d+))?Z?$/u;
const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/iu;

/** Minus signs as word processors write them. */
const tidy = (cell: string): string => cell.trim().replace(/^[\u2212\u2013]/u, '-');

/** Whether a cell says that there was no reading. */
export const isBlank = (cell: string): boolean =>
  /^(?:|[-–—_.*?]+|n\/?a|nan|null|none|nodata|no data|err(?:or)?|invalid|inf|-inf)$/iu.test(
    cell.trim(),
  );

/**
 * A number as written with this decimal mark; the other mark parts thousands. NaN for anything else.
 *
 * @example
 * numberIn('1.712,5', ',') // 1712.5
 */
export function numberIn(cell: string, mark: DecimalMark): number {
  let text = cell;
  // The plain case first: it is nearly every cell of two hundred thousand rows.
  const plain = mark === '.' ? Number(text) : Number.NaN;
  const written = plain === plain ? text.trim() : '';
  if (written !== '') {
    // Infinity and 0x10 have a letter in the second place, and so has 1e5, which is a number.
    const letter = written.charCodeAt(1) >= 65;
    return letter && !NUMBER.test(written) ? Number.NaN : plain;
  }
  text = tidy(text);
  const thousands = mark === '.' ? ',' : '.';
  if (text.includes(thousands)) {
    if (!/^[+-]?\d{1,3}([.,]\d{3})+(?![\d])/u.test(text)) return Number.NaN;
    text = text.replaceAll(thousands, '');
  }
  if (mark === ',') {
    if (text.indexOf(',') !== text.lastIndexOf(',')) return Number.NaN;
    text = text.replace(',', '.');
  }
  return NUMBER.test(text) ? Number(text) : Number.NaN;
}

/**
 * Seconds since midnight of "12:03:07.25", a date before it or not. NaN for anything else.
 *
 * @example
 * clockIn('00:01:02,5') // 62.5
 */
export function clockIn(cell: string): number {
  const found = CLOCK.exec(cell.trim());
  if (found === null) return Number.NaN;
  const [, hours = '0', minutes = '0', whole = '0', part = '0'] = found;
  return Number(hours) * 3600 + Number(minutes) * 60 + Number(whole) + Number(`0.${part}`);
}

/** The decimal mark of these cells. "1,200" beside "0.5" parts thousands; alone, three digits or not, it is a decimal. */
export function decimalMarkOf(cells: readonly string[]): DecimalMark {
  let dots = 0;
  let commas = 0;
  for (const cell of cells) {
    const text = tidy(cell);
    if (/^[+-]?\d*\.\d+$/u.test(text) || /^[+-]?\d{1,3}(,\d{3})+\.\d+$/u.test(text)) dots += 1;
    else if (/^[+-]?\d*,\d+$/u.test(text) || /^[+-]?\d{1,3}(\.\d{3})+,\d+$/u.test(text))
      commas += 1;
  }
  return commas > dots ? ',' : '.';
}
