export interface PathLesson {
  readonly id: string;
  readonly title: string;
  readonly order: number;
  /** Places in the course. One that is not in this list stands left of the picture. */
  readonly needs: readonly number[];
  readonly written: boolean;
}

/** In units of the drawing, which is 340 wide: about one to a pixel on a phone of 390. */
export const nodeSize = 32;
const width = 340;
const lane = 46;
const stub = 10;

/** Squares in columns by how many lessons deep they stand, and the lines between them. */
export function coursePath(lessons: readonly PathLesson[]) {
  const byOrder = new Map(lessons.map((lesson) => [lesson.order, lesson]));
  const depth = (lesson: PathLesson): number =>
    Math.max(
      0,
      ...lesson.needs.flatMap((order) => {
        const before = byOrder.get(order);
        return before === undefined ? [] : [depth(before) + 1];
      }),
    );
  const columns: PathLesson[][] = [];
  for (const lesson of lessons) (columns[depth(lesson)] ??= []).push(lesson);
  const lanes = Math.max(1, ...columns.map((column) => column.length));
  const height = lanes * lane;
  const left = stub + 2;
  const step = columns.length > 1 ? (width - left - nodeSize - 2) / (columns.length - 1) : 0;

  const nodes = columns.flatMap((column, index) =>
    column.map((lesson, row) => ({
      ...lesson,
      x: round(left + index * step),
      // A column of one stands in the middle, between the lanes of a column of two.
      y: round(height / 2 + (row - (column.length - 1) / 2) * lane - nodeSize / 2),
    })),
  );
  const at = new Map(nodes.map((node) => [node.order, node]));
  const lines = nodes.flatMap((node) =>
    node.needs.map((order) => {
      const before = at.get(order);
      const end = `${node.x} ${round(node.y + nodeSize / 2)}`;
      const start =
        before === undefined
          ? `${node.x - stub} ${round(node.y + nodeSize / 2)}`
          : `${before.x + nodeSize} ${round(before.y + nodeSize / 2)}`;
      return `M${start}L${end}`;
    }),
  );
  return { width, height, nodes, lines };
}

const round = (value: number): number => Math.round(value * 10) / 10;
