/** One line of the table: what was timed, what we aim at, what came out. */
export interface Row {
  readonly what: string;
  readonly aim: string;
  readonly measured: string;
  /** Whether the aim was met; left out where there is none to meet. Nothing fails on it: a busy machine is no defect. */
  readonly met?: boolean;
}

/** The value that `share` of the samples do not exceed (nearest rank). */
export function percentile(samples: readonly number[], share: number): number {
  const sorted = [...samples].sort((a, b) => a - b);
  const rank = Math.max(1, Math.ceil(share * sorted.length));
  return sorted[rank - 1] ?? Number.NaN;
}

const digits = (value: number): string => value.toFixed(value < 10 ? 2 : 1);

/** A row out of samples that are all in one unit; the aim holds for p50 or for p95. */
export function timed(
  what: string,
  samples: readonly number[],
  unit: 'us' | 'ms',
  aim: { readonly at: 'p50' | 'p95'; readonly most: number },
): Row {
  const p50 = percentile(samples, 0.5);
  const p95 = percentile(samples, 0.95);
  return {
    what,
    aim: `${aim.at} ${aim.most} ${unit}`,
    measured: `p50 ${digits(p50)} ${unit}, p95 ${digits(p95)} ${unit}`,
    met: (aim.at === 'p50' ? p50 : p95) <= aim.most,
  };
}

export function printTable(rows: readonly Row[]): string {
  const cells = rows.map(({ what, aim, measured, met }) => [
    what,
    aim,
    measured,
    met === undefined ? '' : met ? 'met' : 'missed',
  ]);
  const all = [['what', 'aim', 'measured', ''], ...cells];
  const widths = [0, 1, 2, 3].map((column) =>
    Math.max(...all.map((line) => (line[column] ?? '').length)),
  );
  return all
    .map((line) =>
      line
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
