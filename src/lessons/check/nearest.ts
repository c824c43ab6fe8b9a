import leven from 'leven';

/** More names than this are no help in a sentence. */
const LISTED = 30;

/** A third of the letters may be wrong. */
const near = (given: string): number => Math.ceil(given.length / 3);

/** Up to three allowed names that were probably meant: few letters apart, or the given one with more before or after. */
export function nearest(given: string, allowed: Iterable<string>): readonly string[] {
  const low = given.toLowerCase();
  return Array.from(allowed, (name) => ({ name, distance: leven(low, name.toLowerCase()) }))
    .filter(
      ({ name, distance }) =>
        distance <= near(given) || (low.length > 2 && name.toLowerCase().includes(low)),
    )
    .sort((a, b) => a.distance - b.distance)
    .slice(0, 3)
    .map(({ name }) => name);
}

/** "Did you mean …?", then all that is allowed, or where it stands when that is too long to read. */
export function allowedWords(given: string, allowed: Iterable<string>, listedIn?: string): string {
  const names = [...allowed];
  const meant = nearest(given, names);
  const parts = [
    meant.length > 0 ? `Did you mean ${meant.map((name) => `"${name}"`).join(' or ')}?` : '',
    names.length > 0 && names.length <= LISTED ? `There are: ${names.join(', ')}.` : '',
    names.length > LISTED && listedIn !== undefined ? `All of them stand in ${listedIn}.` : '',
    names.length === 0 ? 'There are none yet.' : '',
  ];
  return parts.filter((part) => part !== '').join(' ');
}
