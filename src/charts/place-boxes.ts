export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What a label should not cover, and how much worse than a line it is to cover it. */
export interface Obstacle extends Box {
  readonly weight?: number;
}

/** Text on text can be read neither way; text on a line still can. */
export const TEXT_WEIGHT = 100;

const OUTSIDE_WEIGHT = 120;

const shared = (a: Box, b: Box): number => {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return across > 0 && down > 0 ? across * down : 0;
};

/**
 * The candidate that covers least. Anything outside the frame counts most: there stand the axes, and
 * text cut off cannot be read at all. The first of equals wins, so that labels do not hop about
 * while a slider moves.
 */
export function leastCovered(
  candidates: readonly Box[],
  obstacles: readonly Obstacle[],
  frame: Box,
): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  candidates.forEach((candidate, i) => {
    const outside = candidate.width * candidate.height - shared(candidate, frame);
    let cost = outside * OUTSIDE_WEIGHT;
    for (const obstacle of obstacles) {
      // It can only grow: hundreds of points of a line need no look.
      if (cost >= least - 0.5) return;
      cost += shared(candidate, obstacle) * (obstacle.weight ?? 1);
    }
    if (cost < least - 0.5) {
      least = cost;
      best = i;
    }
  });
  return best;
}
