import type { JSX } from 'preact';
import { roundPlace } from '../scale.ts';

export interface ForceArrowProps {
  /** Tail. */
  x: number;
  y: number;
  /** Signed length, to the right; nothing is drawn for less than can be seen. */
  length: number;
  hollow?: boolean | undefined;
}

/**
 * Force as a broad arrow, so that it cannot be taken for flow, as long as the force is large. It stands on the face it pushes: with its
 * head where there is room before the face, with its tail where there is room behind it. Hollow for what pushes back.
 */
export function ForceArrow({ x, y, length, hollow = false }: ForceArrowProps): JSX.Element | null {
  const size = Math.abs(roundPlace(length));
  if (size < 2) return null;
  const head = Math.min(14, size);
  const shaft = roundPlace(size - head);
  return (
    <path
      class={hollow ? 'dw-solid' : 'dw-line dw-ink'}
      transform={`translate(${roundPlace(x)} ${roundPlace(y)})${length < 0 ? ' rotate(180)' : ''}`}
      d={`M0 -4H${shaft}V-10L${size} 0L${shaft} 10V4H0z`}
    />
  );
}
