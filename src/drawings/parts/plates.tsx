import type { JSX } from 'preact';
import { roundPlace } from '../scale.ts';
import { box, Cut } from './hatch.tsx';

export interface PlatesProps {
  id: string;
  /** Left end of the pack, inner and outer radius lines (y grows away from the shaft). */
  x: number;
  hubY: number;
  drumY: number;
  pairs: number;
  thickness: number;
  /** Free gap between neighbours: the pack's clearance shared out. 0 when applied. */
  gap: number;
}

/** Steel plates reach the drum, friction plates reach the hub; the linings are solid grey on a steel core. */
export function Plates({ id, x, hubY, drumY, pairs, thickness: t, gap }: PlatesProps): JSX.Element {
  const overlap = Math.abs(drumY - hubY) * 0.2;
  const dir = Math.sign(drumY - hubY) || 1;
  const inner = hubY + dir * overlap;
  const outer = drumY - dir * overlap;
  const span = (y1: number, y2: number): readonly [number, number] => [
    Math.min(y1, y2),
    Math.abs(y2 - y1),
  ];
  const [sy, sh] = span(inner, drumY);
  const [fy, fh] = span(hubY, outer);
  const [ly, lh] = span(inner, outer);
  return (
    <g>
      {Array.from({ length: pairs }, (_, i) => {
        const px = x + i * 2 * (t + gap);
        const fx = px + t + gap;
        return (
          <g key={i}>
            <Cut id={id} d={box(px, sy, t, sh)} />
            <path class="dw-solid" d={box(fx, fy, t, fh)} />
            <path
              class="dw-soft"
              d={`${box(fx, ly, roundPlace(t * 0.33), lh)}${box(fx + t * 0.67, ly, roundPlace(t * 0.33), lh)}`}
            />
          </g>
        );
      })}
    </g>
  );
}
