// Whether an entry of the glossary goes by what is typed. No screen here, so that Node tests it.
import { squeezed } from '../../language/squeezed.ts';

/** Signs between words: "lock-up clutch" is three of them. */
const between = /[^\p{L}\p{N}\p{M}]+/u;

/** A name from each of its words on: what is typed may begin with any of them. */
function beginnings(name: string): string[] {
  const parts = name.split(between).map(squeezed);
  return parts.map((_, index) => parts.slice(index).join('')).filter((rest) => rest !== '');
}

/** An entry by all of its names, ready to be asked. */
export const namesOf = (names: readonly string[]): readonly string[] => names.flatMap(beginnings);

/** More than one of a thing is looked for under the one. */
const single = (part: string): readonly string[] =>
  part.length > 3 ? [part, part.replace(/s$/, ''), part.replace(/es$/, '')] : [part];

/** Whether the whole of what is typed, or each of its words, begins a word of some name. Nothing typed lets all through. */
export function goesBy(names: readonly string[], typed: string): boolean {
  const begins = (part: string) =>
    single(part).some((one) => names.some((name) => name.startsWith(one)));
  const parts = typed.split(between).map(squeezed);
  return begins(parts.join('')) || parts.every(begins);
}
