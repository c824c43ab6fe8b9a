/** A number of a text, the same for everybody. */
export function seedOf(text: string): number {
  let sum = 7;
  for (let i = 0; i < text.length; i += 1) sum = (sum * 31 + text.charCodeAt(i)) % 2_147_483_647;
  return sum;
}
