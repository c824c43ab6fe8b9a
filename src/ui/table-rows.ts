/**
 * Which rows a table shows when a chart has more points than anybody reads. First and last
 * always stay, so that the table spans what the chart spans.
 */
export function pickRows(total: number, most: number): readonly number[] {
  if (total <= most) return Array.from({ length: total }, (_, i) => i);
  const stride = Math.ceil((total - 1) / (most - 1));
  const rows: number[] = [];
  for (let i = 0; i < total - 1; i += stride) rows.push(i);
  rows.push(total - 1);
  return rows;
}
