/** Tags of a lesson's text that are not offered, each once. MDX would say only that one is undefined. */
export function unknownTags(body: string, known: Readonly<Record<string, unknown>>): string[] {
  const used = Array.from(body.matchAll(/<([A-Z]\w*)/g), ([, tag = '']) => tag);
  return [...new Set(used)].filter((tag) => !Object.hasOwn(known, tag));
}
