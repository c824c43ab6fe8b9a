export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const shared = (a: Box, b: Box): number => {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return across > 0 && down > 0 ? across * down : 0;
};

/**
 * The candidate that covers least. Anything outside the frame counts ten times, because text cut
 * off is worse than text on a line. The first of equals wins, so that labels do not hop about
 * while a slider moves.
 */
export function leastCovered(
  candidates: readonly Box[],
  obstacles: readonly Box[],
  frame: Box,
): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  candidates.forEach((candidate, i) => {
    const outside = candidate.width * candidate.height - shared(candidate, frame);
    let cost = outside * 10;
    for (const obstacle of obstacles) cost += shared(candidate, obstacle);
    if (cost < least - 0.5) {
      least = cost;
      best = i;
    }
  });
  return best;
}
