import type { Row } from '../bench/row.ts';
import type { Figure } from './form.ts';

/** So many that miss a bar are named, the worst first: all of them would be a screen of a phone. */
const MOST_NAMED = 5;

/** A line for each kind of figure that a bench has of each of some things: "name: kind". */
export function benchRows(things: string, command: string, rows: readonly Row[]): Figure[] {
  const kindOf = ({ what }: Row): string => what.replace(/^[^:]*: /, '');
  return [...new Set(rows.map(kindOf))].map((kind) => {
    const all = rows.filter((row) => kindOf(row) === kind);
    const falling = all.toSorted(
      (a, b) => Number.parseFloat(b.measured) - Number.parseFloat(a.measured),
    );
    const over = falling.filter(({ met }) => met === false);
    const more = over.length - MOST_NAMED;
    const named = (row: Row | undefined): string =>
      row === undefined ? '' : `${row.what.replace(/:.*/, '')} ${row.measured.replace(/,.*/, '')}`;
    return {
      what: `${things} on a phone slowed four times: ${kind}, over the bar`,
      value:
        over.length === 0
          ? `0 of ${all.length}: the most is ${named(falling[0])}`
          : `${over.length} of ${all.length}: ${over.slice(0, MOST_NAMED).map(named).join(', ')}${more > 0 ? ` and ${more} more` : ''}`,
      bar: `0 over ${all[0]?.aim ?? ''}`,
      met: over.length === 0,
      command,
    };
  });
}

const inWords = (text: string): string =>
  text.replace('p50', 'the middle one in').replace('p95', '95 of 100 in');

/** A line for each row of a bench. */
export const rowByRow = (command: string, rows: readonly Row[]): Figure[] =>
  rows.map(({ what, aim, measured, met = true }) => ({
    what: what.charAt(0).toUpperCase() + what.slice(1),
    value: inWords(measured),
    bar: `${inWords(aim)} or less`,
    met,
    command,
  }));
