import type { JSX } from 'preact';
import { roundPlace } from '../scale.ts';
import { circlePath } from './gear.ts';

/** Plate turn in degrees for each range; the notches are cut to match. */
export const PLATE_TURN = { P: -39, R: -13, N: 13, D: 39 } as const;
/** From the shaft to the pins: valve above it, park rod and cable below. */
export const PINS = { valve: 46, rod: 38, cable: 56 } as const;
const RIM = 48;

export interface Place {
  readonly x: number;
  readonly y: number;
}

export const onPlate = (cx: number, cy: number, radius: number, deg: number): Place => ({
  x: roundPlace(cx + radius * Math.cos((deg * Math.PI) / 180)),
  y: roundPlace(cy + radius * Math.sin((deg * Math.PI) / 180)),
});

const rim = (): string =>
  [-48, ...Object.values(PLATE_TURN).flatMap((at) => [at - 8, at - 3, at + 3, at + 8]), 48]
    .map((deg, i) => {
      const inNotch = i > 0 && i < 17 && (i % 4 === 2 || i % 4 === 3);
      const { x, y } = onPlate(0, 0, inNotch ? RIM - 7 : RIM, deg);
      return `${x} ${y}`;
    })
    .join('L');

/** Detent plate on its shaft, with four notches and a roller on a leaf spring. `miss` is how far off its notch it stands. */
export function DetentPlate({
  cx,
  cy,
  turn,
  miss,
}: Record<'cx' | 'cy' | 'turn' | 'miss', number>): JSX.Element {
  const out = RIM - 2 + Math.min(7, Math.abs(miss));
  return (
    <g transform={`translate(${cx} ${cy})`}>
      <path class="dw-line" d={`M${out + 4} 2Q${out + 26} 4 94 20M88 14h12v14h-12`} />
      <g transform={`rotate(${roundPlace(turn)})`}>
        <path
          class="dw-solid"
          d={`M-7 -46A7 7 0 0 1 7 -46L12 -18L${rim()}L12 18L8 56A8 8 0 0 1 -8 56L-13 0z`}
        />
        <path
          class="dw-ink"
          d={`${circlePath(0, -PINS.valve, 3.5)}${circlePath(0, PINS.rod, 3.5)}`}
        />
      </g>
      <path class="dw-solid" d={circlePath(0, 0, 9)} />
      <path class="dw-line" d="M-5 0H5M0 -5V5" />
      <path class="dw-solid" d={circlePath(out, 0, 5.5)} />
    </g>
  );
}
