import { parseAmount } from '../../src/quantity/parse-amount.ts';
import type { UnitSystem } from '../../src/quantity/unit-system.ts';
import type { ControlSpec, Givens } from '../../src/simulation/sim-spec.ts';

type NumberControl = Extract<ControlSpec<Givens>, { kind: 'number' }>;
/** More stops than this in a row are no place that a task sends somebody to. */
export const FEW = 14;

/** The stops about a value, itself among them, that are taken as well; one more than `FEW` where there are many. */
export function neighbours(
  { min, max, step }: NumberControl,
  value: number,
  taken: (value: number) => boolean,
): readonly number[] {
  const all = [value];
  for (const way of [-step, step]) {
    for (let next = value + way; next >= min && next <= max && all.length <= FEW; next += way) {
      const stop = Number(next.toFixed(9));
      if (!taken(stop)) break;
      all.push(stop);
    }
  }
  return all;
}

/** "about 93 °C", "From 47 psi on", "42 % to 60 %": not the only one. */
const OPEN = /(?:about|near|from|between|to)\s$/iu;

/** Tasks whose words name a state of the same sort to compare with, and not the answer. */
const EXAMPLES: readonly string[] = [
  // What the rig of the lesson holds, beside what the wide hole held.
  'set-up-the-rig',
  // Two stop times, and the check looks between them.
  'friction',
  // What the crack takes on one morning.
  'wide-crack',
];

/** Amounts of a text that lie among the stops that are taken, or a stop beside them, and are named as if they were the only one. */
export function onlyOnes(
  { id, text }: { readonly id: string; readonly text: string },
  { quantity, step }: NumberControl,
  taken: readonly number[],
  system: UnitSystem,
): readonly string[] {
  const { symbol } = quantity[system];
  if (symbol === '' || EXAMPLES.includes(id)) return [];
  const amount = new RegExp(
    `−?\\d[\\d.,]*\\s${symbol.replace(/[.*+?^${}()|[\]\\/]/gu, '\\$&')}(?![\\p{L}·²³/])(?! to )`,
    'gu',
  );
  const [least, most] = [Math.min(...taken) - step, Math.max(...taken) + step];
  return Array.from(text.matchAll(amount)).flatMap(({ 0: said, index }) => {
    const read = parseAmount(said, quantity, system);
    const among = read.ok && read.value >= least && read.value <= most;
    return among && !OPEN.test(text.slice(0, index)) ? [said] : [];
  });
}
