import type { BuiltPage } from './pages.ts';

/** One sentence for each break of the outline: one h1, first in the main part; no level skipped. */
export function brokenOutline({ address, html }: BuiltPage): string[] {
  const main = html.match(/<main\b[^]*<\/main>/)?.[0] ?? '';
  const headings = Array.from(main.matchAll(/<h([1-6])\b[^>]*>([^]*?)<\/h\1>/g), (match) => ({
    level: Number(match[1]),
    text: (match[2] ?? '')
      .replace(/<[^>]+>/g, '')
      .replace(/\s+/g, ' ')
      .trim(),
  }));
  const wrong: string[] = [];
  const firsts = headings.filter(({ level }) => level === 1).length;
  if (firsts !== 1) wrong.push(`${address} has ${firsts} headings of level 1; it needs one.`);
  let before = 0;
  for (const { level, text } of headings) {
    if (text === '') wrong.push(`${address} has an empty heading of level ${level}.`);
    if (level > before + 1) {
      wrong.push(`${address}: "${text}" is of level ${level}, right after level ${before}.`);
    }
    before = level;
  }
  return wrong;
}
