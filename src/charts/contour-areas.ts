import type { Frame } from './Axes.tsx';

export type Point = readonly [x: number, y: number];

/** How far from the frame an end may lie and still count as on it [px]: rounding, no more. */
const REACH = 1;

/** Where a point on the frame lies along it, clockwise from the upper left; null off the frame. */
function along([x, y]: Point, { left, right, top, bottom }: Frame): number | null {
  const width = right - left;
  const height = bottom - top;
  if (Math.abs(y - top) <= REACH) return x - left;
  if (Math.abs(x - right) <= REACH) return width + (y - top);
  if (Math.abs(y - bottom) <= REACH) return width + height + (right - x);
  if (Math.abs(x - left) <= REACH) return 2 * width + height + (bottom - y);
  return null;
}

/**
 * The two parts into which a line from edge to edge divides the frame, so that what is filled ends
 * where the line runs; cells end up to half a cell away from it, which shows as steps on a wide
 * map. Null when the line does not run from edge to edge: then there is nothing to divide by.
 */
export function splitByContour(
  line: readonly Point[],
  frame: Frame,
): readonly [readonly Point[], readonly Point[]] | null {
  const first = line[0];
  const last = line.at(-1);
  if (line.length < 2 || !first || !last) return null;
  const start = along(first, frame);
  const end = along(last, frame);
  if (start === null || end === null) return null;
  const { left, right, top, bottom } = frame;
  const width = right - left;
  const height = bottom - top;
  const round = 2 * (width + height);
  const corners: readonly (readonly [number, Point])[] = [
    [0, [left, top]],
    [width, [right, top]],
    [width + height, [right, bottom]],
    [2 * width + height, [left, bottom]],
  ];
  // How far clockwise from the line's end each corner and the line's start lie.
  const ahead = (at: number): number => (((at - end) % round) + round) % round;
  const home = ahead(start);
  const met = corners
    .map(([at, corner]) => ({ at: ahead(at), corner }))
    .sort((a, b) => a.at - b.at);
  const clockwise = met.filter(({ at }) => at < home).map(({ corner }) => corner);
  const counter = met.filter(({ at }) => at > home).map(({ corner }) => corner);
  return [
    [...line, ...clockwise],
    [...line, ...counter.reverse()],
  ];
}

/** Whether a point lies inside a polygon: a ray to the right crosses its sides an odd number of times. */
export function isInside([x, y]: Point, polygon: readonly Point[]): boolean {
  let inside = false;
  polygon.forEach(([ax, ay], i) => {
    const [bx, by] = polygon[(i + 1) % polygon.length] ?? [ax, ay];
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
  });
  return inside;
}
