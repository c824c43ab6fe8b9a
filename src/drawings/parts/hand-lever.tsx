import type { JSX } from 'preact';
import { roundPlace } from '../scale.ts';
import { PLATE_TURN } from './detent.tsx';
import { circlePath } from './gear.ts';

export type RangeLetter = keyof typeof PLATE_TURN;
export const RANGE_LETTERS: readonly RangeLetter[] = ['P', 'R', 'N', 'D'];

/** The letters in a row or a column, the one that is picked inked. */
export function Letters({
  x,
  y,
  picked,
  column = false,
}: {
  x: number;
  y: number;
  picked: RangeLetter;
  column?: boolean | undefined;
}): JSX.Element {
  return (
    <g>
      {RANGE_LETTERS.map((letter, i) => {
        const [at, down] = column ? [x, y + i * 24] : [x + i * 22, y];
        const on = letter === picked;
        return (
          <g key={letter}>
            {(on || column) && (
              <rect
                class={on ? 'dw-tag-yes' : 'dw-solid'}
                x={at}
                y={down}
                width="22"
                height="22"
                rx="2"
              />
            )}
            <text
              class={on ? 'dw-tag-yes-text' : 'dw-text'}
              x={at + 11}
              y={down + 16}
              text-anchor="middle"
            >
              {letter}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** How far the foot of the lever moves to either side. */
const THROW = { hand: 44, foot: 26 } as const;

/** Hand lever in its gate. Pivot at (x + 44, y + 82), and what the foot pulls is given back by `leverFoot`. */
export function HandLever({
  x,
  y,
  range,
}: {
  x: number;
  y: number;
  range: RangeLetter;
}): JSX.Element {
  const foot = leverFoot(range);
  const turn = (PLATE_TURN[range] * 0.8 * Math.PI) / 180;
  const [hx, hy] = [
    roundPlace(44 + THROW.hand * Math.sin(turn)),
    roundPlace(82 - THROW.hand * Math.cos(turn)),
  ];
  return (
    <g transform={`translate(${x} ${y})`}>
      <Letters x={0} y={0} picked={range} />
      <path class="dw-line" d="M2 28H86" />
      <path
        class="dw-solid"
        d={`M${roundPlace(foot.x - 3)} ${foot.y}L40 82L${roundPlace(hx - 3)} ${hy}h6L48 82L${roundPlace(foot.x + 3)} ${foot.y}z`}
      />
      <path class="dw-soft" d={circlePath(hx, hy, 8)} />
      <path class="dw-solid" d={circlePath(44, 82, 5.5)} />
    </g>
  );
}

/** From the lever's own corner. */
export function leverFoot(range: RangeLetter): { readonly x: number; readonly y: number } {
  const turn = (PLATE_TURN[range] * 0.8 * Math.PI) / 180;
  return {
    x: roundPlace(44 - THROW.foot * Math.sin(turn)),
    y: roundPlace(82 + THROW.foot * Math.cos(turn)),
  };
}
