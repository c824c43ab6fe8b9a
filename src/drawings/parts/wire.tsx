import type { JSX } from 'preact';
import { linePath, parsePoints, roundPlace } from '../scale.ts';
import type { Point } from '../scale.ts';

/** Signal or power wire. A dead one is faint and carries a cross, so that print and screen readers' sighted peers see the same. */
export function Wire({
  points,
  alive,
  cross,
}: {
  points: string;
  alive: boolean;
  cross: Point;
}): JSX.Element {
  const [x, y] = cross;
  return (
    <g>
      <path class={`dw-line${alive ? ' dw-live' : ' dw-off'}`} d={linePath(parsePoints(points))} />
      {!alive && (
        <path
          class="dw-line dw-cross"
          d={`M${roundPlace(x - 6)} ${roundPlace(y - 6)}l12 12M${roundPlace(x + 6)} ${roundPlace(y - 6)}l-12 12`}
        />
      )}
    </g>
  );
}

export interface BoxProps {
  x: number;
  y: number;
  width: number;
  height: number;
  lines: readonly string[];
  /** Inked box: the state that matters now. */
  strong?: boolean | undefined;
}

/** Anything that is electronics: a plain box with its name in it, since what is inside cannot be seen at work. */
export function NamedBox({ x, y, width, height, lines, strong = false }: BoxProps): JSX.Element {
  const top = y + height / 2 - (lines.length - 1) * 8.5 + 5;
  return (
    <g>
      <rect class={strong ? 'dw-tag-yes' : 'dw-solid'} {...{ x, y, width, height }} rx="3" />
      <text class={strong ? 'dw-tag-yes-text' : 'dw-text'} text-anchor="middle">
        {lines.map((l, i) => (
          <tspan key={i} x={x + width / 2} y={top + i * 17}>
            {l}
          </tspan>
        ))}
      </text>
    </g>
  );
}
