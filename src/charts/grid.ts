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

/** Neighbours already seen by a sweep from the top left, and by one from the bottom right. */
const BEFORE = [
  [-1, -1],
  [-1, 0],
  [-1, 1],
  [0, -1],
] as const;
const AFTER = [
  [1, 1],
  [1, 0],
  [1, -1],
  [0, 1],
] as const;

/**
 * The cell deepest inside a category, where its name has most room; null when there is none.
 * Depth is counted in cells to the nearest other category or edge (two sweeps, the classic
 * chessboard distance). Among equals the one nearest their middle wins.
 */
export function deepestCell(
  cells: Cells,
  category: string,
): { row: number; column: number; depth: number } | null {
  const rows = cells.length;
  const columns = cells[0]?.length ?? 0;
  const depth = cells.map((line) => line.map((cell) => (cell === category ? rows + columns : 0)));
  const at = (r: number, c: number): number => depth[r]?.[c] ?? 0;
  const sweep = (
    r: number,
    c: number,
    neighbours: readonly (readonly [number, number])[],
  ): void => {
    const line = depth[r];
    if (!line || line[c] === 0) return;
    let nearest = rows + columns;
    for (const [dr, dc] of neighbours) nearest = Math.min(nearest, at(r + dr, c + dc));
    line[c] = Math.min(line[c] ?? 0, 1 + nearest);
  };
  for (let r = 0; r < rows; r += 1) {
    for (let c = 0; c < columns; c += 1) sweep(r, c, BEFORE);
  }
  for (let r = rows - 1; r >= 0; r -= 1) {
    for (let c = columns - 1; c >= 0; c -= 1) sweep(r, c, AFTER);
  }
  const most = Math.max(0, ...depth.flat());
  if (most === 0) return null;
  const deepest: { row: number; column: number }[] = [];
  depth.forEach((line, row) =>
    line.forEach((value, column) => {
      if (value === most) deepest.push({ row, column });
    }),
  );
  const meanRow = deepest.reduce((sum, cell) => sum + cell.row, 0) / deepest.length;
  const meanColumn = deepest.reduce((sum, cell) => sum + cell.column, 0) / deepest.length;
  const away = (cell: { row: number; column: number }): number =>
    (cell.row - meanRow) ** 2 + (cell.column - meanColumn) ** 2;
  const best = deepest.reduce((a, b) => (away(b) < away(a) ? b : a));
  return { ...best, depth: most };
}
