import { format } from '../quantity/print.ts';
import { force as pushes } from '../quantity/part-quantities.ts';
import type { JSX } from 'preact';
import { clamp01, roundPlace } from './scale.ts';
import { ForceArrow } from './parts/force-arrow.tsx';
import { Frame } from './parts/frame.tsx';
import { box, Cut, Oil } from './parts/hatch.tsx';
import { Label } from './parts/label.tsx';
import { Spring } from './parts/spring.tsx';

export interface PistonSpringState {
  /** Share of 1000 kPa. */
  pressure: number;
  /** Newtons: pressure times area, what the spring takes, what is left for the plates. */
  force: { oil: number; spring: number; net: number };
  /** Newtons at which an arrow has its full length; what 1200 kPa gives on the training clutch where left out. */
  fullForce?: number | undefined;
  /** `short` is how much the oil lacks to beat the spring, in the reader's units. */
  labels: {
    pressure: string;
    area: string;
    oil: string;
    spring: string;
    net: string;
    short?: string | undefined;
  };
}

export const pistonSpringExample: PistonSpringState = {
  pressure: 0.4,
  force: { oil: 3400, spring: 900, net: 2500 },
  labels: { pressure: '400 kPa', area: '85 cm²', oil: '3400 N', spring: '900 N', net: '2500 N' },
};

/** All three arrows share one scale, full length at 10.2 kN unless the state says otherwise. */
const FULL_FORCE = 10200;
const FULL_LENGTH = 200;

export const describePistonSpring = (s: PistonSpringState): string =>
  s.force.net > 0
    ? `${s.labels.pressure} on a piston of ${s.labels.area} pushes with ${s.labels.oil}. The return spring takes ${s.labels.spring}; ${s.labels.net} is left to squeeze the plates.`
    : `${s.labels.pressure} on a piston of ${s.labels.area} pushes with ${s.labels.oil}. That does not beat the return spring's ${s.labels.spring}, so nothing squeezes the plates.`;

export function PistonSpringDrawing({
  id,
  state = pistonSpringExample,
}: {
  id: string;
  state?: PistonSpringState | undefined;
}): JSX.Element {
  const { force, labels } = state;
  const full = state.fullForce ?? FULL_FORCE;
  const arrow = (n: number): number => Math.min(FULL_LENGTH, (Math.max(0, n) * FULL_LENGTH) / full);
  const travel = force.spring > 0 ? clamp01(force.oil / force.spring) : 1;
  const px = 116 + 24 * travel;
  const small = [36, 60, 84, 108];
  const push = 8 + 26 * clamp01(state.pressure);
  return (
    <Frame
      id={id}
      width={390}
      height={340}
      title="Piston and return spring"
      desc={describePistonSpring(state)}
    >
      <Oil
        id={id}
        d={`${box(34, 44, px - 34, 120)}${box(10, 94, 24, 20)}`}
        pressure={state.pressure}
      />
      <Cut id={id} d={`M20 30H330V44H34V94H20zM20 114H34V164H330V178H20z`} />
      <path class="dw-line" d="M8 94H20M8 114H20" />
      <Cut id={id} other d={`M${roundPlace(px)} 46h18v46h28v24h-28v46h-18z`} />
      <path
        class="dw-soft"
        d={`M${roundPlace(px + 3)} 44h10l3 9h-16zM${roundPlace(px + 3)} 164h10l3 -9h-16z`}
      />
      <Spring x1={px + 18} y1={66} x2={262} y2={66} radius={16} coils={6} />
      <Spring x1={px + 18} y1={142} x2={262} y2={142} radius={16} coils={6} />
      <path class="dw-solid" d={`${box(262, 44, 10, 42)}${box(262, 122, 10, 42)}`} />
      {state.pressure > 0.005 &&
        small.map((dy) => <ForceArrow key={dy} x={px - push - 4} y={dy + 32} length={push} />)}
      <path class="dw-solid" d={box(px + 46, 97, 200 - travel * 24, 14)} />
      <ForceArrow
        x={px + 52}
        y={104}
        length={force.net > 0 ? Math.min(60, 14 + arrow(force.net)) : 0}
      />

      {/* the three forces to one scale */}
      <path class="dw-line" d="M120 214V300" />
      <ForceArrow x={120} y={228} length={arrow(force.oil)} />
      <ForceArrow x={120 + arrow(force.oil)} y={257} length={-arrow(force.spring)} hollow />
      <ForceArrow x={120} y={286} length={arrow(force.net)} />
      <path class="dw-leader" d={`M${roundPlace(120 + arrow(force.oil))} 220V262`} />
      <Label x={112} y={233} anchor="end" lines={['Oil pushes']} />
      <Label x={112} y={262} anchor="end" lines={['Spring takes']} />
      <Label x={112} y={291} anchor="end" lines={['Plates get']} />
      <Label x={386} y={233} anchor="end" lines={[`*${labels.oil}`]} />
      <Label x={386} y={262} anchor="end" lines={[`*${labels.spring}`]} />
      <Label x={386} y={291} anchor="end" lines={[force.net > 0 ? `*${labels.net}` : '*nothing']} />
      <text
        class="dw-text"
        x="195"
        y="326"
        text-anchor="middle"
      >{`${labels.pressure} on ${labels.area}`}</text>

      <Label x={8} y={18} lines={['Oil']} to="20,23 44,64" />
      <Label x={40} y={18} lines={[`*${labels.pressure}`]} />
      <Label x={130} y={18} lines={['Piston']} to={`150,23 ${px + 9},64`} />
      <Label x={200} y={18} lines={['Return spring']} to="236,23 228,58" />
      <Label x={338} y={64} lines={['Seat']} to="336,60 268,60" />
      <Label x={386} y={134} anchor="end" lines={['to the', 'plates']} />
      <Label x={140} y={204} lines={['Piston seal']} to={`150,190 ${px + 9},161`} />
      <Label x={8} y={204} lines={['Cylinder']} to="36,190 54,171" />
      {force.net <= 0 && (
        <Label
          x={210}
          y={204}
          lines={[`short by ${labels.short ?? format(force.spring - force.oil, pushes, 'si')}`]}
        />
      )}
    </Frame>
  );
}
