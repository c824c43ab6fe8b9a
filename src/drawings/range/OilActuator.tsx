import type { JSX } from 'preact';
import { roundPlace } from '../scale.ts';
import { box, Cut, Oil } from '../parts/hatch.tsx';
import { Spring } from '../parts/spring.tsx';

/** Where the oil comes in, from the right end of the cylinder. */
export const INLET = -18;

/** One common park actuator: a spring pushes the rod to Park, and oil behind the piston holds it out. */
export function OilActuator({
  id,
  x,
  y,
  back,
  pressure,
  half = 24,
}: {
  id: string;
  /** The right end of the cylinder, on the axis of the rod. */
  x: number;
  y: number;
  /** How far the oil has pushed the piston back. */
  back: number;
  pressure: number;
  half?: number | undefined;
}): JSX.Element {
  const bore = half - 8;
  const piston = roundPlace(-40 - back);
  return (
    <g transform={`translate(${x} ${y})`}>
      <Cut
        id={id}
        d={`${box(-130, -half, 130, 2 * half)}${box(-122, -bore, 114, 2 * bore)}${box(-8, -4, 8, 8)}${box(INLET - 4, -half, 8, 8)}`}
      />
      <Oil
        id={id}
        d={`M${piston + 12} ${-bore}H${INLET - 4}V${-half}h8v8H-8V${bore}H${piston + 12}z`}
        pressure={pressure}
      />
      <path
        class="dw-line"
        d={`M${INLET - 4} ${-half}v8H-122V${bore}H-8V4H0M0 -4H-8V${-bore}H${INLET + 4}V${-half}`}
      />
      <Spring x1={-121} y1={0} x2={piston} y2={0} radius={bore - 4} coils={5} />
      <Cut id={id} other d={box(piston, 1 - bore, 12, 2 * bore - 2)} />
    </g>
  );
}
