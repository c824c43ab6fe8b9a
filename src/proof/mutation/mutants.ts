/** Wrong changes to the code, one at a time, as Stryker makes them ("mutants"). Lines and columns count from 0, as it counts inside. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../run.ts';

interface Place {
  readonly line: number;
  readonly column: number;
}
export interface Mutant {
  readonly fileName: string;
  readonly mutatorName: string;
  readonly replacement: string;
  readonly location: { readonly start: Place; readonly end: Place };
}

/** A change told so that it is found again when lines move. */
export interface Told {
  readonly file: string;
  /** The line on which it begins. */
  readonly line: string;
  readonly from: string;
  readonly to: string;
  /** Counts those that are alike in all of this. */
  readonly nth: number;
}
export type ToldMutant = Mutant & { readonly told: Told };

const oneLine = (text: string): string => {
  const flat = text.replaceAll(/\s+/g, ' ').trim();
  return flat.length <= 70 ? flat : `${flat.slice(0, 45)} … ${flat.slice(-22)}`;
};

function textBetween(lines: readonly string[], { start, end }: Mutant['location']): string {
  const within = lines.slice(start.line, end.line + 1);
  return within
    .map((line, at) =>
      line.slice(at === 0 ? start.column : 0, at === within.length - 1 ? end.column : undefined),
    )
    .join('\n');
}

export const toldKey = ({ file, line, from, to, nth }: Told): string =>
  JSON.stringify([file, line, from, to, nth]);
/** As tests/mutation/drawn.mjs writes it. */
export const placeKey = ({ fileName, location, mutatorName, replacement }: Mutant): string => {
  const { start, end } = location;
  const span = [start.line, start.column, end.line, end.column];
  return JSON.stringify([fileName, span, mutatorName, replacement]);
};

export function tell(mutants: readonly Mutant[]): readonly ToldMutant[] {
  const sources = new Map<string, readonly string[]>();
  const alike = new Map<string, number>();
  return mutants.map((mutant) => {
    const file = mutant.fileName;
    const lines = sources.get(file) ?? readFileSync(join(root, file), 'utf8').split('\n');
    sources.set(file, lines);
    const told = {
      file,
      line: (lines[mutant.location.start.line] ?? '').trim(),
      from: oneLine(textBetween(lines, mutant.location)),
      to: oneLine(mutant.replacement),
      nth: 0,
    };
    const key = toldKey(told);
    const nth = alike.get(key) ?? 0;
    alike.set(key, nth + 1);
    return { ...mutant, told: { ...told, nth } };
  });
}

/** By lot, but the same lot for a change wherever it stands: so an edit elsewhere draws hardly any others. */
export function draw(
  mutants: readonly ToldMutant[],
  count: number,
  seed: string,
): readonly ToldMutant[] {
  const lot = ({ told }: ToldMutant): string =>
    createHash('sha256')
      .update(`${seed} ${toldKey(told)}`)
      .digest('hex');
  return mutants
    .map((mutant) => ({ mutant, lot: lot(mutant) }))
    .toSorted((a, b) => (a.lot < b.lot ? -1 : 1))
    .slice(0, count)
    .map(({ mutant }) => mutant);
}
