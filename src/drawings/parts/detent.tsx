import type { JSX } from 'preact';
import { roundPlace } from '../scale.ts';
import { circlePath } from './gear.ts';

/** Plate turn in degrees for each range; the notches are cut to match. */
export const PLATE_TURN = { P: -27, R: -9, N: 9, D: 27 } as const;

export const onPlate = (
  cx: number,
  cy: number,
  radius: number,
  deg: number,
): { x: number; y: number } => ({
  x: cx + radius * Math.cos((deg * Math.PI) / 180),
  y: cy + radius * Math.sin((deg * Math.PI) / 180),
});

/** Detent plate with four notches, sprung roller, and the arm the cable pulls. The plate turns with its shaft. */
export function DetentPlate({
  cx,
  cy,
  turn,
  miss,
}: {
  cx: number;
  cy: number;
  turn: number;
  miss: number;
}): JSX.Element {
  const edge: string[] = [];
  const at = (radius: number, deg: number): void => {
    const p = onPlate(cx, cy, radius, deg);
    edge.push(`${roundPlace(p.x)} ${roundPlace(p.y)}`);
  };
  at(62, -90 - 40);
  for (const notch of [-27, -9, 9, 27]) {
    at(62, -90 + notch - 7);
    at(54, -90 + notch - 2.5);
    at(54, -90 + notch + 2.5);
    at(62, -90 + notch + 7);
  }
  at(62, -90 + 40);
  const lift = Math.min(7, Math.abs(miss) * 1.1);
  const ry = cy - 60.5 - lift;
  return (
    <g>
      <path
        class="dw-line"
        d={`M${roundPlace(cx - 62)} ${roundPlace(cy - 92)}h-8v16h8M${roundPlace(cx - 62)} ${roundPlace(cy - 84)}Q${roundPlace(cx - 26)} ${roundPlace(cy - 84 - lift)} ${roundPlace(cx)} ${roundPlace(ry - 2)}`}
      />
      <g transform={`rotate(${roundPlace(turn)} ${roundPlace(cx)} ${roundPlace(cy)})`}>
        <path
          class="dw-solid"
          d={`M${edge.join('L')}L${roundPlace(cx + 58)} ${roundPlace(cy - 9)}V${roundPlace(cy + 9)}L${roundPlace(cx + 28)} ${roundPlace(cy + 13)}L${roundPlace(cx + 26)} ${roundPlace(cy + 50)}L${roundPlace(cx + 10)} ${roundPlace(cy + 65)}H${roundPlace(cx - 9)}L${roundPlace(cx - 14)} ${roundPlace(cy + 12)}z`}
        />
        <rect
          class="dw-solid"
          x={roundPlace(cx + 37)}
          y={roundPlace(cy - 5)}
          width="18"
          height="10"
          rx="5"
        />
      </g>
      <path class="dw-solid" d={circlePath(cx, cy, 10)} />
      <path class="dw-line" d={`M${cx - 5} ${cy}h10M${cx} ${cy - 5}v10`} />
      <circle class="dw-solid" cx={roundPlace(cx)} cy={roundPlace(ry)} r="6" />
    </g>
  );
}
