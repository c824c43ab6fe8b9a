/**
 * Text in a picture has to be broken by hand, on the server too, where nothing can be measured.
 * 0.54 em is the mean advance of the site's face over English prose, a little generous; labels
 * that come out shorter than reckoned only leave a little air.
 */
export const EM_PER_CHARACTER = 0.54;

export const textWidth = (text: string, em: number): number => text.length * EM_PER_CHARACTER * em;

/** Breaks at spaces (never at no-break ones) so that lines stay within `width` where words allow. */
export function wrap(text: string, width: number, em: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidth(longer, em) > width) {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  if (line !== '') lines.push(line);
  return lines;
}
