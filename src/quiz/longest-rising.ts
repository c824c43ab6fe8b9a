/**
 * The longest part of a list that is in order already, by its places: what stands right when one step was moved too far is
 * everything but that step. Equal neighbours are in order. Of parts of one length, the one that ends first.
 * @example longestRising([3, 0, 1, 2]) // [1, 2, 3]
 */
export function longestRising(values: readonly number[]): readonly number[] {
  const best: (readonly number[])[] = [];
  let longest: readonly number[] = [];
  for (const [at, value] of values.entries()) {
    let before: readonly number[] = [];
    for (let i = 0; i < at; i += 1) {
      const part = best[i] ?? [];
      if ((values[i] ?? 0) <= value && part.length > before.length) before = part;
    }
    const part = [...before, at];
    best.push(part);
    if (part.length > longest.length) longest = part;
  }
  return longest;
}
