/** One thing wrong in a file of words, at the place where somebody typed it. */
export interface Fault {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** What was wrong and what is allowed. */
  readonly sentence: string;
}

/** The same before its file is known: where in the text, and what is wrong. */
export interface Placed {
  readonly offset: number;
  readonly sentence: string;
}

/** As many as fit on a screen and can be mended in one go. */
const SHOWN = 20;

/** Line and column, both from 1, of an offset from 0. */
export function placeOf(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset);
  return { line: before.split('\n').length, column: offset - before.lastIndexOf('\n') };
}

export const inFile = (file: string, text: string, placed: readonly Placed[]): readonly Fault[] =>
  placed.map(({ offset, sentence }) => ({ file, ...placeOf(text, offset), sentence }));

/** Lines to print, in the order of the files. An empty list is no report. */
export function report(faults: readonly Fault[]): readonly string[] {
  if (faults.length === 0) return [];
  const sorted = faults.toSorted(
    (a, b) => a.file.localeCompare(b.file) || a.line - b.line || a.column - b.column,
  );
  const lines = sorted
    .slice(0, SHOWN)
    .map(({ file, line, column, sentence }) => `${file}:${line}:${column} ${sentence}`);
  const left = sorted.length - lines.length;
  const files = new Set(faults.map(({ file }) => file)).size;
  return [
    ...lines,
    ...(left > 0 ? [`and ${left} more, shown once these are mended.`] : []),
    `The content has ${faults.length} ${faults.length === 1 ? 'fault' : 'faults'} in ${files} ${files === 1 ? 'file' : 'files'}. Nothing is built until they are mended.`,
  ];
}
