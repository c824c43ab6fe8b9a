/**
 * Every sum that a built page prints, done again from its printed figures as somebody with a calculator does it. It reads the
 * page alone and shares nothing with what printed the sum.
 */
import { quantities } from '../../src/quantity/by-name.ts';
import type { Quantity } from '../../src/quantity/quantity.ts';
import type { UnitSystem } from '../../src/quantity/unit-system.ts';

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`);
const units = [
  ...new Set(Object.values<Quantity>(quantities).flatMap(({ si, us }) => [si.symbol, us.symbol])),
]
  .filter((symbol) => symbol !== '' && symbol !== '×')
  .toSorted((a, b) => b.length - a.length)
  .map(escaped)
  .join('|');
const AMOUNT = String.raw`−?\d[\d,]*(?:\.\d+)?(?:\u00a0(?:${units}))?`;
const SIDE = String.raw`(?:[(√]\s?)*(?:${AMOUNT}|π|\d?π)(?:\s?[)²])*`;
const written = new RegExp(
  String.raw`((?:${SIDE})(?:\s(?:[×÷+−]|times|over|divided by|less|plus)\s(?:${SIDE}))*)\s(?:=|is|makes|leaves)\s(${AMOUNT})`,
  'g',
);
const OPERATION = /[×÷+√²]|\s−|\s(?:times|over|divided by|less|plus)\s/;
const SPELLED: Readonly<Record<string, string>> = {
  times: '×',
  over: '÷',
  'divided by': '÷',
  less: '−',
  plus: '+',
};

/** What a page says in one unit system: one piece of text for each block, amounts with their spaces as printed. */
export function blocksOf(html: string, system: UnitSystem): readonly string[] {
  const other = system === 'si' ? 'us' : 'si';
  const main = /<main\b[^>]*>([^]*)<\/main>/.exec(html)?.[1] ?? '';
  return main
    .replace(new RegExp(`<span class="[^"]*\\bu-${other}\\b[^"]*">[^<]*</span>`, 'g'), '')
    .replace(/<(script|style|svg|math)\b[^]*?<\/\1>/g, ' ')
    .replace(/<\/?(?:p|li|td|th|h\d|div|section|details|summary|label|button)\b[^>]*>/g, '\n')
    .replace(/<[^>]+>/g, '')
    .replaceAll('&nbsp;', '\u00a0')
    .split(/\s*\n\s*/)
    .map((block) => block.replace(/[ \t]+/g, ' ').trim())
    .filter((block) => block !== '');
}

export interface PrintedSum {
  readonly words: string;
  readonly left: string;
  readonly right: string;
}

export const sumsIn = (text: string): readonly PrintedSum[] =>
  Array.from(text.matchAll(written), ([words, left = '', right = '']) => ({
    words,
    left,
    right,
  })).filter(({ left }) => OPERATION.test(left));

/** The result worked out from the left side's figures, by turning it into postfix order (Dijkstra's yard). */
export function workedOut(left: string): number {
  const plain = left
    .replace(
      /\s(times|over|divided by|less|plus)\s/g,
      (_, word: string) => ` ${SPELLED[word] ?? ''} `,
    )
    .replace(new RegExp(String.raw`\u00a0(?:${units})`, 'g'), '')
    .replaceAll(',', '')
    .replace(/(\d)π/g, '$1 × π');
  const tokens = plain.match(/(?:(?<![\d)²π]\s?)−)?\d+(?:\.\d+)?|[×÷+−()√²π]/g) ?? [];
  const rank: Readonly<Record<string, number>> = { '+': 1, '−': 1, '×': 2, '÷': 2, '√': 3 };
  const values: number[] = [];
  const waiting: string[] = [];
  const pop = (): number => {
    const value = values.pop();
    if (value === undefined) throw new Error(`"${left}" cannot be worked out.`);
    return value;
  };
  const apply = (sign: string): void => {
    const b = pop();
    if (sign === '√') return void values.push(Math.sqrt(b));
    const a = pop();
    values.push(sign === '+' ? a + b : sign === '−' ? a - b : sign === '×' ? a * b : a / b);
  };
  for (const token of tokens) {
    if (token === 'π') values.push(Math.PI);
    else if (token === '²') values.push(pop() ** 2);
    else if (token === '(' || token === '√') waiting.push(token);
    else if (token === ')') {
      for (let sign = waiting.pop(); sign !== '(' && sign !== undefined; sign = waiting.pop())
        apply(sign);
      if (waiting.at(-1) === '√') apply(waiting.pop() ?? '');
    } else if (token in rank) {
      while ((rank[waiting.at(-1) ?? ''] ?? 0) >= (rank[token] ?? 0)) apply(waiting.pop() ?? '');
      waiting.push(token);
    } else values.push(Number(token.replace('−', '-')));
  }
  while (waiting.length > 0) apply(waiting.pop() ?? '');
  const result = pop();
  if (values.length > 0) throw new Error(`"${left}" cannot be worked out.`);
  return result;
}

/** Null where it closes to the last printed digit; what it comes to where not. */
export function doesNotClose({ words, left, right }: PrintedSum): string | null {
  const [, digits = ''] = /^(−?[\d,]+(?:\.\d+)?)/.exec(right) ?? [];
  const told = digits.replace('−', '-').replaceAll(',', '');
  const decimals = told.split('.')[1]?.length ?? 0;
  const comesTo = workedOut(left);
  // Arithmetic in binary: a half that it misses by a hair is a half.
  const rounded = Number(Number(comesTo.toPrecision(12)).toFixed(decimals));
  return rounded === Number(told) ? null : `${words}: it comes to ${comesTo.toPrecision(6)}`;
}
