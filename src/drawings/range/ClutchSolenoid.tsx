import type { JSX } from 'preact';
import { Flow } from '../parts/flow.tsx';
import { box, Oil } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { PORT } from '../parts/manual-valve.tsx';
import { SolenoidValve } from '../parts/solenoid-valve.tsx';
import type { RangeState } from './state.ts';

interface ClutchSolenoidProps {
  readonly id: string;
  readonly one: 'R' | 'D';
  /** Where the outlet begins; the passage to its inlet comes up at `port` from `foot`. */
  readonly x: number;
  readonly y: number;
  readonly port: number;
  readonly foot: number;
  readonly supply: number;
  readonly on: boolean;
  readonly oil: NonNullable<RangeState['oil']>;
}

/** The valve on a coil that feeds one clutch or lets it drain, with the passage up to it. */
export function ClutchSolenoid({
  id,
  one,
  x,
  y,
  port,
  foot,
  supply,
  on,
  oil,
}: ClutchSolenoidProps): JSX.Element {
  const outlet = on ? oil.clutch : 0;
  return (
    <g>
      <Oil
        id={id}
        d={`M${port} ${foot}V${y + 6}H${x - 26}V${y + 14}H${port + PORT}V${foot}z`}
        pressure={supply}
      />
      <path
        class="dw-line"
        d={`M${port} ${foot}V${y + 6}H${x - 26}M${x - 26} ${y + 14}H${port + PORT}V${foot}`}
      />
      <SolenoidValve id={id} x={x} y={y} up on={on} supply={supply} outlet={outlet} />
      <Oil id={id} d={box(x - 4, y - 10, 8, 10)} pressure={outlet} />
      <path class="dw-line" d={`M${x - 4} ${y - 10}v10m8 0v-10`} />
      <Flow points={`${x},${y + 2} ${x},${y - 18}`} lmin={on ? oil.feedLmin : 0} />
      <Label x={x - 9} y={y - 4} anchor="end" lines={[`${on ? '*' : ''}${one}`]} />
    </g>
  );
}
