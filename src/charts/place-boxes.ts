export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What a label should not cover, and how much worse than a line it is to cover it. */
export interface Obstacle extends Box {
  readonly weight?: number;
  /** The line that it is a piece of. */
  readonly of?: string | undefined;
}

/** Text on text can be read neither way; text on a line still can. */
export const TEXT_WEIGHT = 100;
/** Of a mark: a name does not cover it, but the tie of another may pass. */
export const MARK_WEIGHT = 99;

const OUTSIDE_WEIGHT = 120;

const shared = (a: Box, b: Box): number => {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return across > 0 && down > 0 ? across * down : 0;
};

/** Small boxes along a line from one point to another, so close that nothing passes between them. */
export function along(
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  r: number,
  of?: string,
): Obstacle[] {
  const [across, down] = [x2 - x1, y2 - y1];
  const steps = Math.ceil(Math.hypot(across, down) / (2 * r)) || 1;
  return Array.from({ length: steps }, (_, i) => ({
    x: x1 + (across * (i + 0.5)) / steps - r,
    y: y1 + (down * (i + 0.5)) / steps - r,
    width: 2 * r,
    height: 2 * r,
    of,
  }));
}

/**
 * The candidate that covers least. Anything outside the frame counts most: there stand the axes, and
 * text cut off cannot be read at all. The first of equals wins, so that labels do not hop about
 * while a slider moves.
 */
export function leastCovered(
  candidates: readonly Box[],
  obstacles: readonly Obstacle[],
  frame: Box,
  /** What a line would take that ties a candidate to its mark. */
  tieOf?: (candidate: Box) => readonly Box[],
): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  candidates.forEach((candidate, i) => {
    // Nothing can be better.
    if (least < 0.5) return;
    const tie = tieOf?.(candidate) ?? [];
    const outside = candidate.width * candidate.height - shared(candidate, frame);
    let cost = outside * OUTSIDE_WEIGHT;
    for (const obstacle of obstacles) {
      // It can only grow: hundreds of points of a line need no look.
      if (cost >= least - 0.5) return;
      const { weight = 1 } = obstacle;
      cost += shared(candidate, obstacle) * weight;
      // A tie may cross a line, but no letters.
      if (weight === TEXT_WEIGHT) for (const box of tie) cost += shared(box, obstacle) * weight;
    }
    if (cost < least - 0.5) {
      least = cost;
      best = i;
    }
  });
  return best;
}
