import type { JSX } from 'preact';
import { flowStep, linePath, parsePoints, roundPlace } from '../scale.ts';
import type { Point, Temp } from '../scale.ts';

export interface FlowProps {
  /** Corner points in the direction of flow; the head sits on the last. */
  points: string;
  lmin: number;
  temp?: Temp | undefined;
  head?: boolean | undefined;
}

function headPath(from: Point, to: Point): string {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const len = Math.hypot(dx, dy) || 1;
  const [ux, uy] = [dx / len, dy / len];
  const [bx, by] = [to[0] - ux * 9, to[1] - uy * 9];
  return `M${roundPlace(to[0])} ${roundPlace(to[1])}L${roundPlace(bx - uy * 5)} ${roundPlace(by + ux * 5)}L${roundPlace(bx + uy * 5)} ${roundPlace(by - ux * 5)}z`;
}

/** Moving dashes. The arrow head says the direction when nothing moves: reduced motion, print, a screenshot. */
export function Flow({ points, lmin, temp, head = true }: FlowProps): JSX.Element | null {
  const corners = parsePoints(points);
  const last = corners.at(-1);
  const before = corners.at(-2);
  if (!last || !before) return null;
  const d = linePath(corners);
  return (
    <g class={`dw-stream${temp ? ` dw-${temp}` : ''}`} data-flow={flowStep(lmin)}>
      <path class="dw-flow dw-flow-case" d={d} />
      <path class="dw-flow dw-flow-ink" d={d} />
      {head && <path class="dw-head" d={headPath(before, last)} />}
    </g>
  );
}
