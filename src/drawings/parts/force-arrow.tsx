import type { JSX } from 'preact';
import { roundPlace } from '../scale.ts';

export interface ForceArrowProps {
  /** Tail. */
  x: number;
  y: number;
  /** Signed length along the axis; nothing is drawn for less than a head's length. */
  length: number;
  axis?: 'x' | 'y' | undefined;
  hollow?: boolean | undefined;
}

/** Force as a broad arrow, so that it cannot be taken for flow. Hollow for what pushes back. */
export function ForceArrow({
  x,
  y,
  length,
  axis = 'x',
  hollow = false,
}: ForceArrowProps): JSX.Element | null {
  const size = Math.abs(roundPlace(length));
  if (size < 3) return null;
  const head = Math.min(14, size);
  const s = size - head;
  const turn = axis === 'x' ? (length < 0 ? 180 : 0) : length < 0 ? -90 : 90;
  return (
    <path
      class={hollow ? 'dw-solid' : 'dw-line dw-ink'}
      transform={`translate(${roundPlace(x)} ${roundPlace(y)}) rotate(${turn})`}
      d={`M0 -4H${roundPlace(s)}V-10L${roundPlace(size)} 0L${roundPlace(s)} 10V4H0z`}
    />
  );
}
