import type { JSX } from 'preact';
import { roundPlace } from '../scale.ts';
import { circlePath, gearPath } from './gear.ts';
import { Cut, Oil } from './hatch.tsx';

const polar = (cx: number, cy: number, radius: number, deg: number): string => {
  const a = (deg * Math.PI) / 180;
  return `${roundPlace(cx + radius * Math.cos(a))} ${roundPlace(cy + radius * Math.sin(a))}`;
};

/**
 * Crescent pump seen from the front: inner gear driven by the converter hub, ring gear round it, crescent in the
 * wide gap. They mesh at the top; suction opens on the left, delivery on the right.
 */
export interface PumpGearsProps {
  id: string;
  cx: number;
  cy: number;
  radius: number;
  /** Delivery pressure as a share of full scale: fills the tooth spaces of the right half. */
  delivery?: number | undefined;
}

export function PumpGears({ id, cx, cy, radius, delivery }: PumpGearsProps): JSX.Element {
  const space = radius * 0.86;
  const half = (sweep: 0 | 1): string =>
    `M${roundPlace(cx)} ${roundPlace(cy - space)}A${roundPlace(space)} ${roundPlace(space)} 0 0 ${sweep} ${roundPlace(cx)} ${roundPlace(cy + space)}z`;
  const ringTip = radius * 0.7;
  const ringRoot = radius * 0.84;
  const innerTip = radius * 0.56;
  const innerRoot = radius * 0.42;
  const ecc = ringRoot - innerTip - radius * 0.02;
  const iy = cy - ecc;
  const a = radius * 0.66;
  const b = radius * 0.6;
  return (
    <g>
      <circle
        class="dw-solid"
        cx={roundPlace(cx)}
        cy={roundPlace(cy)}
        r={roundPlace(radius * 1.06)}
      />
      {delivery !== undefined && <Oil id={id} d={half(0)} pressure={0} />}
      {delivery !== undefined && <Oil id={id} d={half(1)} pressure={delivery} />}
      <Cut
        id={id}
        d={`${circlePath(cx, cy, radius)}${gearPath(cx, cy, ringTip, ringRoot, 17, -Math.PI / 2, 0.34)}`}
      />
      <path
        class="dw-soft"
        d={`M${polar(cx, cy, a, 20)}A${roundPlace(a)} ${roundPlace(a)} 0 0 1 ${polar(cx, cy, a, 160)}L${polar(cx, iy, b, 141)}A${roundPlace(b)} ${roundPlace(b)} 0 0 0 ${polar(cx, iy, b, 39)}z`}
      />
      <circle
        class="dw-void"
        cx={roundPlace(cx)}
        cy={roundPlace(iy)}
        r={roundPlace(radius * 0.25)}
      />
      <Cut
        id={id}
        other
        d={`${gearPath(cx, iy, innerRoot, innerTip, 12, -Math.PI / 2)}${circlePath(cx, iy, radius * 0.24)}`}
      />
    </g>
  );
}
