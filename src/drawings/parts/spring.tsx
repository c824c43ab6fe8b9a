import type { JSX } from 'preact';
import { roundPlace } from '../scale.ts';

export interface SpringProps {
  /** Axis from one seat to the other; the coils close up as the two come nearer. */
  x1: number;
  y1: number;
  x2: number;
  y2: number;
  radius: number;
  coils?: number | undefined;
}

/** Coil spring, side view, as a zigzag of its wire between two seats. */
export function Spring({ x1, y1, x2, y2, radius, coils = 6 }: SpringProps): JSX.Element {
  const len = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [ux, uy] = [(x2 - x1) / len, (y2 - y1) / len];
  const at = (t: number, side: number): string =>
    `${roundPlace(x1 + ux * len * t - uy * radius * side)} ${roundPlace(y1 + uy * len * t + ux * radius * side)}`;
  const parts = [at(0, -1), at(0, 1)];
  for (let i = 0; i < coils; i += 1) parts.push(at((i + 0.5) / coils, -1), at((i + 1) / coils, 1));
  parts.push(at(1, -1));
  return <path class="dw-line" d={`M${parts.join('L')}`} />;
}
