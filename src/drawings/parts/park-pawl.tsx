import type { JSX } from 'preact';
import { roundPlace } from '../scale.ts';
import { circlePath, gearPath } from './gear.ts';
import { box, Cut } from './hatch.tsx';
import { Spring } from './spring.tsx';

/** How far the cone travels between released and engaged. */
export const CONE_TRAVEL = 46;

/** Where the rod joins the cone's spring, from the middle of the park gear. */
export const rodEnd = (engage: number): { x: number; y: number } => ({
  x: -80 - CONE_TRAVEL * (1 - engage),
  y: -77,
});

export interface ParkPawlProps {
  id: string;
  cx: number;
  cy: number;
  /** 0 released, 1 engaged; between: the cone is part of the way in. */
  engage: number;
  /** Drawn smaller than it is in its own drawing. */
  scale?: number | undefined;
}

/** By now the cone has left the pawl, which its return spring lifts as the cone's taper lets it. */
const CLEAR = 0.2;

/**
 * Park gear on the output shaft, pawl with its return spring, and the cone that a rod drives between pawl and guide.
 * The small spring behind the cone lets the rod finish its stroke when tooth meets tooth.
 */
export function ParkPawl({ id, cx, cy, engage, scale = 1 }: ParkPawlProps): JSX.Element {
  const lift = 9.5 * Math.min(1, (1 - engage) / (1 - CLEAR));
  const shift = -CONE_TRAVEL * (1 - engage);
  const teeth = 12;
  const lifted = (lift * Math.PI) / 180;
  const springY = -70 - 28 * Math.sin(lifted);
  return (
    <g
      class={scale < 1 ? 'dw-reduced' : undefined}
      transform={`translate(${roundPlace(cx)} ${roundPlace(cy)})${scale === 1 ? '' : ` scale(${scale})`}`}
    >
      <Cut
        id={id}
        d={`${gearPath(0, 0, 37, 47, teeth, -Math.PI / 2 + Math.PI / teeth, 0.34)}${gearPath(0, 0, 15, 18, 18)}`}
      />
      <path class="dw-solid" d={gearPath(0, 0, 14, 17, 18)} />
      <path class="dw-line" d="M-6 0H6M0 -6V6" />
      <Spring x1={34} y1={-98} x2={34} y2={springY} radius={5} coils={4} />
      <path class="dw-line" d="M24 -98H44" />
      <g transform={`rotate(${roundPlace(lift)} 62 -60)`}>
        <path
          class="dw-solid"
          d="M62 -70H-28Q-35 -69 -35 -62Q-35 -56 -28 -56H-10L-6 -39H6L10 -56H40L62 -50A10 10 0 0 0 62 -70z"
        />
        <path class="dw-solid" d={circlePath(62, -60, 4.5)} />
      </g>
      <Cut id={id} d={box(-66, -99, 62, 13)} />
      <g transform={`translate(${roundPlace(shift)} 0)`}>
        <path class="dw-solid" d="M-42 -85H-14L4 -79V-75L-14 -70H-42z" />
        <Spring x1={-78} y1={-77} x2={-42} y2={-77} radius={6} coils={4} />
        <path class="dw-line" d="M-80 -85V-69" />
      </g>
    </g>
  );
}
