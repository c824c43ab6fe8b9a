import type { JSX } from 'preact';
import type { Temp } from '../scale.ts';
import { roundPlace } from '../scale.ts';
import { box } from './hatch.tsx';

export interface TankProps {
  x: number;
  y: number;
  width: number;
  height: number;
  /** Drop from the rim to the fluid. */
  level: number;
  temp?: Temp | undefined;
}

/** Sump with its fluid, the only large area that shows temperature by hue; a word beside it says the same. */
export function Tank({ x, y, width, height, level, temp }: TankProps): JSX.Element {
  const wall = (from: number): string =>
    `M${x} ${y + from}v${height - 8 - from}q0 8 8 8h${width - 16}q8 0 8 -8v${8 - height + from}`;
  return (
    <g>
      <path
        class={temp ? `dw-fluid-${temp}` : 'dw-oil'}
        fill-opacity="0.16"
        d={`${wall(level)}z`}
      />
      <path class="dw-line" d={`M${x} ${y + level}h${width}${wall(0)}`} />
    </g>
  );
}

/** Filter: a box with a mesh across it. */
export function Filter({
  x,
  y,
  width,
  height,
}: {
  x: number;
  y: number;
  width: number;
  height: number;
}): JSX.Element {
  const mesh: string[] = [];
  for (let i = 1; i * 7 < width; i += 1)
    mesh.push(`M${roundPlace(x + i * 7)} ${roundPlace(y + height / 2 - 4)}v8`);
  return (
    <g>
      <path class="dw-solid" d={box(x, y, width, height)} />
      <path
        class="dw-line"
        d={`M${roundPlace(x)} ${roundPlace(y + height / 2 - 4)}h${roundPlace(width)}M${roundPlace(x)} ${roundPlace(y + height / 2 + 4)}h${roundPlace(width)}${mesh.join('')}`}
      />
    </g>
  );
}
