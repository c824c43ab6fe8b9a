import type { JSX } from 'preact';
import { box } from './hatch.tsx';

/** Solenoid cut open: coil on both sides of the plunger; the plunger drops when current flows. Electric power is ink-filled coil. */
export function Solenoid({ x, y, on }: { x: number; y: number; on: boolean }): JSX.Element {
  const coil = on ? 'dw-ink' : 'dw-solid';
  const drop = on ? 6 : 0;
  return (
    <g>
      <path class="dw-solid" d={box(x, y, 36, 24)} />
      <path class={coil} d={`${box(x + 4, y + 4, 8, 16)}${box(x + 24, y + 4, 8, 16)}`} />
      {!on && (
        <path
          class="dw-line"
          d={`M${x + 4} ${y + 4}l8 16M${x + 12} ${y + 4}l-8 16M${x + 24} ${y + 4}l8 16M${x + 32} ${y + 4}l-8 16`}
        />
      )}
      <path class="dw-solid" d={box(x + 14, y + 2 + drop, 8, 26)} />
    </g>
  );
}
