import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { roundPlace } from '../scale.ts';
import { box } from './hatch.tsx';

/** Half of what a finger needs, in drawing units. */
const REACH = 25;

export interface KnobProps {
  x: number;
  y: number;
  /** Where a finger may take hold, as path data; about the knob by itself. */
  reach?: string | undefined;
  /** What the knob stands for; a pull is told where it started and how far down it has come since, in drawing units. */
  value: number;
  onPull: (start: number, down: number) => void;
}

/** Pulled up or down in a drawing. A slider is its twin for keys and for the ear. */
export function Knob({ x, y, reach, value, onPull }: KnobProps): JSX.Element {
  const held = useRef({ y: 0, value: 0 });
  const place = roundPlace(y);
  return (
    <g
      class="dw-grip"
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        held.current = { y: event.clientY, value };
      }}
      onPointerMove={({ currentTarget, pointerId, clientY }) => {
        if (!currentTarget.hasPointerCapture(pointerId)) return;
        const scale = currentTarget.getScreenCTM()?.d ?? 1;
        onPull(held.current.value, (clientY - held.current.y) / scale);
      }}
    >
      <path
        class="dw-void"
        fill-opacity="0"
        d={reach ?? box(x - REACH, place - REACH, 2 * REACH, 2 * REACH)}
      />
      <circle class="dw-solid" cx={x} cy={place} r="10" />
      <path class="dw-line" d={`M${x} ${place - 6}v12m-3 -3l3 3l3 -3m-6 -6l3 -3l3 3`} />
    </g>
  );
}
