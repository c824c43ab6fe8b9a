/**
 * A list with one of it at another place.
 * @example moved(['a', 'b', 'c'], 'a', 2) // ['b', 'c', 'a']
 */
export function moved<Thing>(list: readonly Thing[], thing: Thing, to: number): readonly Thing[] {
  const rest = list.filter((one) => one !== thing);
  return [...rest.slice(0, to), thing, ...rest.slice(to)];
}
