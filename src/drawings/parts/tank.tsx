import type { JSX } from 'preact';
import type { Temp } from '../scale.ts';
import { r } from '../scale.ts';
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
  const d = `M${r(x)} ${r(y)}v${r(height - 8)}q0 8 8 8h${r(width - 16)}q8 0 8 -8v${r(8 - height)}`;
  return (
    <g>
      <path
        class={temp ? `dw-fluid-${temp}` : 'dw-oil'}
        fill-opacity="0.16"
        d={`M${r(x)} ${r(y + level)}v${r(height - 8 - level)}q0 8 8 8h${r(width - 16)}q8 0 8 -8v${r(8 - height + level)}z`}
      />
      <path class="dw-line" d={`M${r(x)} ${r(y + level)}h${r(width)}`} />
      <path class="dw-line" d={d} />
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
  for (let i = 1; i * 7 < width; i += 1) mesh.push(`M${r(x + i * 7)} ${r(y + height / 2 - 4)}v8`);
  return (
    <g>
      <path class="dw-solid" d={box(x, y, width, height)} />
      <path
        class="dw-line"
        d={`M${r(x)} ${r(y + height / 2 - 4)}h${r(width)}M${r(x)} ${r(y + height / 2 + 4)}h${r(width)}${mesh.join('')}`}
      />
    </g>
  );
}
