export interface LinkedPart {
  readonly text: string;
  /** Name of the place it leads to, where it is a link. */
  readonly to?: string;
}

/**
 * "[The course page](course) lists every lesson." in parts. A language puts its links where its
 * sentences want them; where they lead is the page's business, so the words only name the place.
 */
export function linkedParts(sentence: string): readonly LinkedPart[] {
  const parts: LinkedPart[] = [];
  let from = 0;
  for (const match of sentence.matchAll(/\[([^\]]+)\]\((\w+)\)/g)) {
    const [whole, text = '', to = ''] = match;
    if (match.index > from) parts.push({ text: sentence.slice(from, match.index) });
    parts.push({ text, to });
    from = match.index + whole.length;
  }
  if (from < sentence.length) parts.push({ text: sentence.slice(from) });
  return parts;
}
