/** Every amount that a built page prints with its value before rounding, and what in them contradicts itself. */
import type { BuiltPage } from '../../src/build/pages.ts';
import { quantities } from '../../src/quantity/by-name.ts';
import type { Quantity } from '../../src/quantity/quantity.ts';
import type { UnitSystem } from '../../src/quantity/unit-system.ts';

export interface Print {
  readonly page: string;
  /** What it is of: "pressure". */
  readonly quantity: string;
  /** Metric, before rounding. */
  readonly value: number;
  readonly si: string;
  readonly us: string;
  /** In a question, and not in what the lesson tells. */
  readonly asked: boolean;
}

const printed =
  /data-amount="([^"]*) (\S+)"[^>]*>\s*(?:<span class="[^"]*u-si">([^<]*)<\/span>\s*<span class="[^"]*u-us">([^<]*)<\/span>|([^<]*)<\/span>)/g;

/** All of a page. Throws where an amount is marked and cannot be read, so that none escapes. */
export function printsOn({ address, html }: BuiltPage): readonly Print[] {
  const questions = html.indexOf('class="retrieval-plain"');
  const prints = Array.from(html.matchAll(printed), (found) => {
    const [, quantity = '', value, si, us, both = ''] = found;
    return {
      page: address,
      quantity,
      value: Number(value),
      si: (si ?? both).trim(),
      us: (us ?? both).trim(),
      asked: questions >= 0 && found.index > questions,
    };
  });
  const marked = html.split('data-amount=').length - 1;
  if (prints.length !== marked)
    throw new Error(`${address} marks ${marked} amounts, and ${prints.length} can be read.`);
  return prints;
}

interface Shown {
  readonly size: number;
  readonly decimals: number;
  readonly unit: string;
}
/** "−24.8 psi" as a number with its decimals; a minus sign of print counts, commas between thousands do not. */
function shown(text: string): Shown {
  const [, sign, digits = '', unit = ''] =
    /^([-−]?)([\d.,\u202f]+)\s*(.*)$/.exec(text.replaceAll('&nbsp;', '\u00a0')) ?? [];
  const plain = digits.replace(/[,\u202f]/g, '');
  return {
    size: (sign === '' ? 1 : -1) * Number(plain),
    decimals: plain.split('.')[1]?.length ?? 0,
    unit,
  };
}

/** Whether one is the other with fewer digits: 25 psi and 24.8 psi. */
export function differByRounding(one: string, other: string): boolean {
  const [coarse, fine] = [shown(one), shown(other)].toSorted((a, b) => a.decimals - b.decimals);
  if (coarse === undefined || fine === undefined || coarse.unit !== fine.unit) return false;
  return (
    coarse.decimals !== fine.decimals && Number(fine.size.toFixed(coarse.decimals)) === coarse.size
  );
}

/** Amounts are marked to nine digits: nearer than this, two are one value. */
const ONE_VALUE = 1e-7;
const systems = ['si', 'us'] as const;

/** Pairs on one page that are two facts, and why. */
const TWO_FACTS: Readonly<Record<string, string>> = {
  '/model/ length 0.025 0.03':
    'the clearance of sound sealing rings, and what a hard lip leaves open when warm',
};
/**
 * Questions have cars and jobs of their own, whose amounts now and then read like the rounding of another one: 0.36 h and 0.4 h. A
 * number and its own rounding to fewer digits lie nearer to each other than this.
 */
const ONE_FACT = 0.015;
const farApart = (one: number, other: number): boolean =>
  Math.abs(one - other) > ONE_FACT * Math.max(Math.abs(one), Math.abs(other));

/** Nothing at all is no rounding of something. */
const twoFacts = (a: Print, b: Print): boolean => {
  const [low = 0, high = 0] = [a.value, b.value].toSorted((one, other) => one - other);
  return (
    a.value === 0 ||
    b.value === 0 ||
    ((a.asked || b.asked) && farApart(a.value, b.value)) ||
    `${a.page} ${a.quantity} ${low} ${high}` in TWO_FACTS
  );
};

/** A sentence for each pair of prints that a reader could hold against each other. */
export function contradictions(prints: readonly Print[]): readonly string[] {
  const said = new Set<string>();
  for (const [i, a] of prints.entries()) {
    for (const b of prints.slice(i + 1)) {
      if (a.quantity !== b.quantity) continue;
      const oneValue = Math.abs(a.value - b.value) <= ONE_VALUE * Math.abs(a.value);
      for (const system of systems) {
        const [here, there] = [a[system], b[system]];
        if (oneValue && here !== there)
          said.add(
            `The ${a.quantity} ${a.value} reads "${here}" on ${a.page} and "${there}" on ${b.page}.`,
          );
        else if (a.page === b.page && differByRounding(here, there) && !twoFacts(a, b))
          said.add(
            `${a.page} prints the ${a.quantity} "${here}" and "${there}": take one number, or say why there are two.`,
          );
      }
    }
  }
  return [...said];
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`);
/** Numbers with a unit that a quantity has in the system. */
function amountIn(system: UnitSystem): RegExp {
  const units = Object.values<Quantity>(quantities)
    .map((quantity) => quantity[system].symbol)
    .filter((symbol) => symbol !== '')
    .toSorted((a, b) => b.length - a.length)
    .map(escaped)
    .join('|');
  return new RegExp(String.raw`(?<![\w.,])[-−]?\d[\d.,]*[ \u00a0](?:${units})(?![\wµ·/²³])`, 'g');
}

/** The same for what stands on a page without a mark: typed, in a drawing, or in a simulation at rest. */
export function contradictedByText(page: BuiltPage): readonly string[] {
  const main = /<main\b[^>]*>([^]*)<\/main>/.exec(page.html)?.[1] ?? '';
  // Amounts in questions are all marked: the check of the content lets none be typed.
  const [told = ''] = main.split('class="retrieval-plain"');
  const text = told
    .replace(/<(script|style)\b[^]*?<\/\1>/g, ' ')
    // What a simulation says for paper comes printed from its model.
    .replace(/<div class="sim-ran"[^]*?<noscript>/g, '|')
    // A part of a sum has more digits where the sum would not close without.
    .replace(/<span class="sum[^"]*">[^<]*<\/span>/g, '|')
    .replace(/<[^>]*>/g, '|');
  const said = new Set<string>();
  for (const system of systems) {
    const inText = new Set(Array.from(text.matchAll(amountIn(system)), ([words]) => words));
    for (const print of printsOn(page)) {
      for (const words of inText) {
        const far = farApart(shown(print[system]).size, shown(words).size);
        if (differByRounding(print[system], words) && !(print.asked && far))
          said.add(
            `${page.address} has "${words}" in its text, and prints "${print[system]}" from the numbers: write it as a number too.`,
          );
      }
    }
  }
  return [...said];
}
