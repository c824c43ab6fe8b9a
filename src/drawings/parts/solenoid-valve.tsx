import type { JSX } from 'preact';
import { box, Cut, Oil } from './hatch.tsx';

export interface SolenoidValveProps {
  id: string;
  /** Where the outlet ends. */
  x: number;
  y: number;
  /** Pulled: the line is open to the outlet. Let go: the outlet is open to the vent. */
  on: boolean;
  /** Share of full scale in the line, and behind the valve. */
  supply: number;
  outlet: number;
  /** Outlet up instead of down. */
  up?: boolean | undefined;
}

/** Three-way valve on a coil, cut open: line from the left, outlet below, vent above. The coil is inked while current flows. */
export function SolenoidValve({
  id,
  x,
  y,
  on,
  supply,
  outlet,
  up = false,
}: SolenoidValveProps): JSX.Element {
  const plug = on ? 8 : -17;
  return (
    <g transform={`translate(${x} ${y})${up ? ' scale(1 -1)' : ''}`}>
      <Cut
        id={id}
        d={`${box(-26, -20, 56, 20)}${box(-26, -14, 46, 8)}${box(-4, -6, 8, 6)}${box(10, -20, 8, 6)}`}
      />
      <Oil id={id} d={`M${plug} -14H20V-6H4V0H-4V-6H${plug}z`} pressure={outlet} />
      <Oil id={id} d={box(-26, -14, on ? 34 : 9, 8)} pressure={supply} />
      <path class="dw-line" d="M-26 -14H10V-20M18 -20V-14H20V-6H4V0M-4 0V-6H-26" />
      <path class="dw-solid" d={`${box(plug, -14, 12, 8)}${box(plug + 12, -12, 36 - plug, 4)}`} />
      <path class="dw-solid" d={box(30, -22, 20, 24)} />
      <path
        class={on ? 'dw-ink' : 'dw-line'}
        d={
          on
            ? `${box(32, -20, 16, 7)}${box(32, -7, 16, 7)}`
            : 'M32 -20L48 -13M48 -20L32 -13M32 -7L48 0M48 -7L32 0'
        }
      />
    </g>
  );
}
