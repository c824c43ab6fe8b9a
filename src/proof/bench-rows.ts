import type { Row } from '../bench/row.ts';
import type { Figure } from './form.ts';

/** A line for each kind of figure that a bench has of each of some things: "name: kind". */
export function benchRows(things: string, command: string, rows: readonly Row[]): Figure[] {
  const kindOf = ({ what }: Row): string => what.replace(/^[^:]*: /, '');
  return [...new Set(rows.map(kindOf))].map((kind) => {
    const all = rows.filter((row) => kindOf(row) === kind);
    const over = all.filter(({ met }) => met === false);
    const worst = all.toSorted(
      (a, b) => Number.parseFloat(b.measured) - Number.parseFloat(a.measured),
    )[0];
    const named = (row: Row | undefined): string =>
      row === undefined ? '' : `${row.what.replace(/:.*/, '')} ${row.measured.replace(/,.*/, '')}`;
    return {
      what: `${things} on a phone slowed four times: ${kind}, over the bar`,
      value:
        over.length === 0
          ? `0 of ${all.length}: the most is ${named(worst)}`
          : `${over.length} of ${all.length}: ${over.map(named).join(', ')}`,
      bar: `0 over ${all[0]?.aim ?? ''}`,
      met: over.length === 0,
      command,
    };
  });
}

/** A line for each row of a bench. */
export const rowByRow = (command: string, rows: readonly Row[]): Figure[] =>
  rows.map(({ what, aim, measured, met = true }) => ({
    what: what.charAt(0).toUpperCase() + what.slice(1),
    value: measured,
    bar: aim,
    met,
    command,
  }));
