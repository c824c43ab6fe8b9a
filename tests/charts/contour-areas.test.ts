import { describe, expect, it } from 'vitest';
import { isInside, splitByContour, type Point } from '../../src/charts/contour-areas.ts';

const frame = { left: 10, right: 110, top: 20, bottom: 70 };
/** Shoelace: the area by another way than the code under test. */
const area = (polygon: readonly Point[]): number =>
  Math.abs(
    polygon.reduce((sum, [x, y], i) => {
      const [nx, ny] = polygon[(i + 1) % polygon.length] ?? [x, y];
      return sum + x * ny - nx * y;
    }, 0),
  ) / 2;

describe('the areas on either side of a contour', () => {
  it.each([
    // From the upper edge to the right edge: a triangle of 60 by 30 is cut off.
    {
      line: [
        [50, 20],
        [110, 50],
      ],
      cut: 900,
    },
    // Straight across: two halves.
    {
      line: [
        [60, 20],
        [60, 70],
      ],
      cut: 2500,
    },
    // Right to left, given backwards, with a kink: below it 30 x 100 / 2 + 10 x 100 by hand.
    {
      line: [
        [110, 30],
        [10, 60],
      ],
      cut: 2500,
    },
    {
      line: [
        [10, 45],
        [60, 45],
        [110, 45],
      ],
      cut: 2500,
    },
    // Both ends on one edge: a bay of 40 by 25, a triangle.
    {
      line: [
        [30, 70],
        [50, 45],
        [70, 70],
      ],
      cut: 500,
    },
    // An end half a pixel off the edge is on it.
    {
      line: [
        [10.5, 45],
        [110, 45],
      ],
      cut: 2500,
    },
  ] as { line: Point[]; cut: number }[])('$line parts the frame', ({ line, cut }) => {
    const sides = splitByContour(line, frame);
    const areas = (sides ?? []).map(area).sort((a, b) => a - b);
    // 15: the end half a pixel off shifts an edge by half a pixel over 50, and no more.
    expect(Math.abs((areas[0] ?? 0) - cut)).toBeLessThanOrEqual(15);
    // Together they are the frame, 100 by 50.
    expect(Math.abs((areas[0] ?? 0) + (areas[1] ?? 0) - 5000)).toBeLessThanOrEqual(15);
  });

  it('is not had from a line that ends inside the frame, or from no line', () => {
    expect(
      splitByContour(
        [
          [50, 20],
          [60, 40],
        ],
        frame,
      ),
    ).toBeNull();
    expect(splitByContour([[50, 20]], frame)).toBeNull();
    expect(splitByContour([], frame)).toBeNull();
  });

  it('knows which side a point lies on', () => {
    const square: Point[] = [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ];
    expect(isInside([5, 5], square)).toBe(true);
    expect(isInside([15, 5], square)).toBe(false);
    expect(isInside([-1, 5], square)).toBe(false);
  });
});
