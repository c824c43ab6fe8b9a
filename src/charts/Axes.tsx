import type { PlacedAxis } from './axis.ts';
import { round } from './path.ts';

export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

interface AxesProps {
  readonly x: PlacedAxis;
  readonly y: PlacedAxis;
  readonly frame: Frame;
  readonly em: number;
  /** Where the x ticks stand; below the state strips where there are any. */
  readonly foot?: number;
  readonly grid?: boolean;
  /** Where the x title ends: the picture's right edge, beyond the plot, keeps it clear of the table's handle. */
  readonly titleEnd?: number;
}

/** Ticks, grid and the two titles. The y title lies flat above the axis: nobody turns their head. */
export function Axes({
  x,
  y,
  frame,
  em,
  foot = frame.bottom,
  grid = true,
  titleEnd = frame.right,
}: AxesProps) {
  return (
    <g class="axes">
      {y.ticks.map(({ place, text }) => (
        <g key={text}>
          {grid && (
            <path class="grid" d={`M${round(frame.left)} ${round(place)}H${round(frame.right)}`} />
          )}
          <text text-anchor="end" x={round(frame.left - em * 0.4)} y={round(place + em * 0.35)}>
            {text}
          </text>
        </g>
      ))}
      {x.ticks.map(({ place, text }) => (
        <g key={text}>
          <path class="tick" d={`M${round(place)} ${round(foot)}v${round(em * 0.35)}`} />
          <text text-anchor="middle" x={round(place)} y={round(foot + em * 1.35)}>
            {text}
          </text>
        </g>
      ))}
      <path
        class="axis"
        d={`M${round(frame.left)} ${round(frame.top)}V${round(frame.bottom)}H${round(frame.right)}`}
      />
      <text class="axis-title" x="0" y={round(em)}>
        {y.title}
      </text>
      <text class="axis-title" text-anchor="end" x={round(titleEnd)} y={round(foot + em * 2.6)}>
        {x.title}
      </text>
    </g>
  );
}
