/**
 * Reads an amount the way people type it: "383", "5,7 kPa", "83psi", "1 200 kPa", "1,200.5", "−10 °C", "180F".
 * Returns the value in the quantity's SI display unit, or a sentence that says what was wrong and what is allowed.
 */
import { infoOf, type Quantity, type System, type Unit } from './quantities.ts';

export type Reading =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly sentence: string };

/** The first number and whatever follows it; digit groups may be split by a comma or any kind of space. */
const shape = /^([+-]?)([\d.,][\d.,\s]*(?:e[+-]?\d+)?)(.*)$/i;

export function readAmount(text: string, quantity: Quantity, system: System): Reading {
  const info = infoOf(quantity);
  const example = `Write a number${info.si.symbol === '' ? '' : ` with ${unitsOf(quantity)}`}, for example ${sample(info[system])}.`;
  const no = (problem: string): Reading => ({ ok: false, sentence: `${problem} ${example}` });

  // Unicode minus signs and non-breaking spaces come from copied text and phone keyboards.
  const clean = text
    .replace(/[\u2212\u2013\u2010]/g, '-')
    .replace(/[\u00a0\u202f\u2009]/g, ' ')
    .trim();
  if (clean === '') return no('There is no number yet.');
  const match = shape.exec(clean);
  if (match === null) return no(`"${shorten(text)}" does not start with a number.`);
  const [, sign = '', digits = '', rest = ''] = match;
  const size = readDigits(digits);
  if (size === undefined) return no(`"${shorten(digits)}" cannot be read as one number.`);

  const typed = rest.toLowerCase().replace(/\s+/g, '').replace(/[.⋅∙]/g, '·').replace(/·$/, '');
  const all: readonly Unit[] = [info[system], info.si, info.us, ...info.also];
  const unit =
    typed === ''
      ? info[system]
      : all.find((u) => u.symbol.toLowerCase() === typed || u.spellings.includes(typed));
  if (unit === undefined) return no(`"${shorten(rest.trim())}" is no unit of ${info.name} here.`);
  return { ok: true, value: ((sign === '-' ? -size : size) - unit.offset) / unit.factor };
}

function unitsOf(quantity: Quantity): string {
  const { si, us } = infoOf(quantity);
  return si.symbol === us.symbol ? si.symbol : `${si.symbol} or ${us.symbol}`;
}

function sample(unit: Unit): string {
  return unit.symbol === '' ? '2.5' : `"250 ${unit.symbol}"`;
}

function shorten(text: string): string {
  return text.length > 24 ? `${text.slice(0, 24)}…` : text;
}

/**
 * One separator followed by exactly three digits ("1,200") is the ambiguous case. A comma there is read as thousands, the
 * habit of the shops this is written for; a point there is a decimal point ("0.125"). Any other single mark is decimal.
 */
function readDigits(raw: string): number | undefined {
  const text = raw.trim().replace(/(\d)\s+(?=\d{3}(\D|$))/g, '$1');
  if (/\s/.test(text)) return undefined;
  const commas = text.split(',').length - 1;
  const points = text.split('.').length - 1;
  let normal = text;
  if (commas > 0 && points > 0) {
    const decimal = text.lastIndexOf(',') > text.lastIndexOf('.') ? ',' : '.';
    const group = decimal === ',' ? '.' : ',';
    const [whole = '', fraction = '', more] = text.split(decimal);
    if (more !== undefined || fraction.includes(group) || !grouped(whole, group)) return undefined;
    normal = `${whole.split(group).join('')}.${fraction}`;
  } else if (commas > 1) {
    if (!grouped(text, ',')) return undefined;
    normal = text.split(',').join('');
  } else if (commas === 1) {
    normal = /^[1-9]\d{0,2},\d{3}$/.test(text) ? text.replace(',', '') : text.replace(',', '.');
  } else if (points > 1) {
    if (!grouped(text, '.')) return undefined;
    normal = text.split('.').join('');
  }
  if (!/^(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(normal)) return undefined;
  const value = Number(normal);
  return Number.isFinite(value) ? value : undefined;
}

function grouped(text: string, mark: string): boolean {
  const [first = '', ...groups] = text.split(mark);
  return /^\d{1,3}$/.test(first) && groups.length > 0 && groups.every((g) => /^\d{3}$/.test(g));
}
