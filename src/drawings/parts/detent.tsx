import type { JSX } from 'preact';
import { r } from '../scale.ts';
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
    edge.push(`${r(p.x)} ${r(p.y)}`);
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
        d={`M${r(cx - 62)} ${r(cy - 92)}h-8v16h8M${r(cx - 62)} ${r(cy - 84)}Q${r(cx - 26)} ${r(cy - 84 - lift)} ${r(cx)} ${r(ry - 2)}`}
      />
      <g transform={`rotate(${r(turn)} ${r(cx)} ${r(cy)})`}>
        <path
          class="dw-solid"
          d={`M${edge.join('L')}L${r(cx + 58)} ${r(cy - 9)}V${r(cy + 9)}L${r(cx + 28)} ${r(cy + 13)}L${r(cx + 26)} ${r(cy + 50)}L${r(cx + 10)} ${r(cy + 65)}H${r(cx - 9)}L${r(cx - 14)} ${r(cy + 12)}z`}
        />
        <rect class="dw-solid" x={r(cx + 37)} y={r(cy - 5)} width="18" height="10" rx="5" />
      </g>
      <path class="dw-solid" d={circlePath(cx, cy, 10)} />
      <path class="dw-line" d={`M${cx - 5} ${cy}h10M${cx} ${cy - 5}v10`} />
      <circle class="dw-solid" cx={r(cx)} cy={r(ry)} r="6" />
    </g>
  );
}
