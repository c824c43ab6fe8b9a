import { execFileSync } from 'node:child_process';

/** What poppler's pdftotext reads in a file; without it no test of paper can say anything, so it says that. */
export function pdfText(file: string, ...options: readonly string[]): string {
  try {
    return execFileSync('pdftotext', [...options, file, '-'], {
      encoding: 'utf8',
      maxBuffer: 64e6,
    });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    throw new Error(
      'NOTHING ON PAPER WAS CHECKED: there is no pdftotext. Install poppler-utils and run this again.',
      { cause: error },
    );
  }
}

/** The pages of a file, each with its text. */
export const pagesOf = (file: string): readonly string[] =>
  pdfText(file, '-layout').split('\f').slice(0, -1);

export interface Word {
  readonly page: number;
  readonly text: string;
  /** Points from the left and the top of the sheet. */
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Every word where it is printed, with the size of its sheet. */
export function wordsOn(file: string): {
  readonly sheets: readonly { readonly width: number; readonly height: number }[];
  readonly words: readonly Word[];
} {
  const sheets: { width: number; height: number }[] = [];
  const words: Word[] = [];
  const pattern =
    /<page width="([\d.]+)" height="([\d.]+)">|<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">([^<]*)</gu;
  for (const [, width, height, left, top, right, bottom, text = ''] of pdfText(
    file,
    '-bbox',
  ).matchAll(pattern)) {
    if (width !== undefined) sheets.push({ width: Number(width), height: Number(height) });
    else {
      const [l, t, r, b] = [left, top, right, bottom].map(Number) as [
        number,
        number,
        number,
        number,
      ];
      words.push({ page: sheets.length, text, left: l, top: t, right: r, bottom: b });
    }
  }
  return { sheets, words };
}
