/** The grid under a heat map: cells by category, [row of y][column of x]. */
export type Cells = readonly (readonly string[])[];

/** Edges of cells about their centres: halfway between neighbours, and the axis' own ends outside. */
export function cellEdges(centres: readonly number[], min: number, max: number): readonly number[] {
  const inner = centres.slice(1).map((value, i) => ((centres[i] ?? value) + value) / 2);
  return [min, ...inner, max];
}

export interface Run {
  readonly row: number;
  readonly from: number;
  /** One past the last column. */
  readonly to: number;
}

/** The cells of one category, neighbours in a row joined: forty rectangles instead of two thousand. */
export function runsOf(cells: Cells, category: string): readonly Run[] {
  const runs: Run[] = [];
  cells.forEach((line, row) => {
    let from = -1;
    for (let column = 0; column <= line.length; column += 1) {
      const inside = line[column] === category;
      if (inside && from === -1) from = column;
      if (!inside && from !== -1) {
        runs.push({ row, from, to: column });
        from = -1;
      }
    }
  });
  return runs;
}

export interface DeepCell {
  readonly row: number;
  readonly column: number;
  readonly depth: number;
}

/**
 * The cell deepest inside a category, where its name has most room; null when there is none.
 * Depth is counted in cells to the nearest other category or edge (two sweeps, the classic
 * chessboard distance). Among equals the one nearest their middle wins. In one flat array with a
 * rim of noughts: a map of 1400 cells is asked at every move of a slider.
 */
export function deepestCell(cells: Cells, category: string): DeepCell | null {
  const rows = cells.length;
  const columns = cells[0]?.length ?? 0;
  const wide = columns + 2;
  const depth = new Int32Array(wide * (rows + 2));
  const at = (i: number): number => depth[i] ?? 0;
  let most = 0;
  cells.forEach((line, r) => {
    for (let c = 0; c < columns; c += 1) {
      if (line[c] !== category) continue;
      const i = (r + 1) * wide + c + 1;
      depth[i] = 1 + Math.min(at(i - wide - 1), at(i - wide), at(i - wide + 1), at(i - 1));
    }
  });
  for (let i = (rows + 1) * wide - 2; i > wide; i -= 1) {
    if (at(i) === 0) continue;
    const after = Math.min(at(i + wide + 1), at(i + wide), at(i + wide - 1), at(i + 1));
    const here = Math.min(at(i), 1 + after);
    depth[i] = here;
    most = Math.max(most, here);
  }
  if (most === 0) return null;
  const deepest: { row: number; column: number }[] = [];
  depth.forEach((value, i) => {
    if (value === most) deepest.push({ row: Math.floor(i / wide) - 1, column: (i % wide) - 1 });
  });
  const meanRow = deepest.reduce((sum, cell) => sum + cell.row, 0) / deepest.length;
  const meanColumn = deepest.reduce((sum, cell) => sum + cell.column, 0) / deepest.length;
  const away = (cell: { row: number; column: number }): number =>
    (cell.row - meanRow) ** 2 + (cell.column - meanColumn) ** 2;
  const best = deepest.reduce((a, b) => (away(b) < away(a) ? b : a));
  return { ...best, depth: most };
}
