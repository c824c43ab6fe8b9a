import type { PlacedAxis, Tick } from './axis.ts';
import { round } from './path.ts';
import { textWidth } from './wrap.ts';

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

/** Every tick that has room for its number, every second, or every third: each keeps its line. */
function numbered(ticks: readonly Tick[], room: (tick: Tick) => number): (i: number) => boolean {
  const apart = Math.min(
    ...ticks.slice(1).map(({ place }, i) => Math.abs(place - (ticks[i]?.place ?? 0))),
  );
  const every = Math.max(1, Math.ceil(Math.max(...ticks.map(room)) / apart));
  return (i) => i % every === 0;
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
  const onY = numbered(y.ticks, () => em * 1.05);
  const onX = numbered(x.ticks, ({ text }) => textWidth(text, em) + em * 0.3);
  return (
    <g class="axes">
      {y.ticks.map(({ place, text }, i) => (
        <g key={text}>
          {grid && (
            <path class="grid" d={`M${round(frame.left)} ${round(place)}H${round(frame.right)}`} />
          )}
          {onY(i) && (
            <text text-anchor="end" x={round(frame.left - em * 0.4)} y={round(place + em * 0.35)}>
              {text}
            </text>
          )}
        </g>
      ))}
      {x.ticks.map(({ place, text }, i) => (
        <g key={text}>
          <path class="tick" d={`M${round(place)} ${round(foot)}v${round(em * 0.35)}`} />
          {onX(i) && (
            <text text-anchor="middle" x={round(place)} y={round(foot + em * 1.35)}>
              {text}
            </text>
          )}
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
