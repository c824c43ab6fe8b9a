import type { ComponentChildren, JSX } from 'preact';
import { circlePath } from './gear.ts';

export interface LensProps {
  id: string;
  x: number;
  y: number;
  radius: number;
  /** From the rim to what is enlarged. */
  to: string;
  children: ComponentChildren;
}

/** A round window on something too small to see in place. What is in it is drawn about its middle. */
export function Lens({ id, x, y, radius, to, children }: LensProps): JSX.Element {
  return (
    <g>
      <path class="dw-leader" d={to} />
      <g transform={`translate(${x} ${y})`}>
        <clipPath id={`${id}-lens`}>
          <circle r={radius} />
        </clipPath>
        <path class="dw-solid" d={circlePath(0, 0, radius)} />
        <g clip-path={`url(#${id}-lens)`}>{children}</g>
        <path class="dw-line" d={circlePath(0, 0, radius)} />
      </g>
    </g>
  );
}
