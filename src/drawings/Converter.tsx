import { format } from '../quantity/print.ts';
import { speed } from '../quantity/quantities.ts';
import type { JSX } from 'preact';
import type { Point, Temp } from './scale.ts';
import { clamp01, roundPlace } from './scale.ts';
import { Flow } from './parts/flow.tsx';
import { Frame } from './parts/frame.tsx';
import { circlePath } from './parts/gear.ts';
import { box, Cut, Oil } from './parts/hatch.tsx';
import { Label } from './parts/label.tsx';

export interface ConverterState {
  engineRpm: number;
  turbineRpm: number;
  /** The one-way clutch holds the stator while the turbine is slow. */
  statorHolds: boolean;
  temp?: Temp | undefined;
}

export const converterExample: ConverterState = {
  engineRpm: 700,
  turbineRpm: 0,
  statorHolds: true,
  temp: 'hot',
};

export function describeConverter(s: ConverterState): string {
  const loop =
    s.engineRpm - s.turbineRpm > 20
      ? 'Oil is flung outward in the pump half, strikes the turbine, and comes back through the stator.'
      : 'Both halves turn nearly alike, so little oil goes round.';
  return `Torque converter, upper half cut open. The engine turns the cover and the pump half at ${format(s.engineRpm, speed, 'si')}; the turbine and the input shaft turn at ${format(s.turbineRpm, speed, 'si')}. ${loop} The stator ${s.statorHolds ? 'is held by its one-way clutch' : 'runs free on its one-way clutch'}.`;
}

const C = { x: 186, y: 136 };
const at = (radius: number, deg: number): Point => [
  C.x + radius * Math.cos((deg * Math.PI) / 180),
  C.y - radius * Math.sin((deg * Math.PI) / 180),
];
const p = (radius: number, deg: number): string => at(radius, deg).map(roundPlace).join(' ');
/** Ring sector from angle a to b, counter-clockwise on the page. */
const sector = (inner: number, outer: number, a: number, b: number): string => {
  const large = b - a > 180 ? 1 : 0;
  return `M${p(outer, a)}A${outer} ${outer} 0 ${large} 0 ${p(outer, b)}L${p(inner, b)}A${inner} ${inner} 0 ${large} 1 ${p(inner, a)}z`;
};
/** Blades as they show in the cut: thin lines that lean with the flow, from core to shell. */
const blades = (from: number, to: number): string =>
  Array.from({ length: 6 }, (_, i) => from + ((to - from) * (i + 0.5)) / 6)
    .map((deg) => `M${p(43, deg - 4)}L${p(86, deg + 4)}`)
    .join('');
const loop = Array.from({ length: 33 }, (_, i) =>
  at(65, -66 + i * 9.6)
    .map(roundPlace)
    .join(','),
).join(' ');

export function ConverterDrawing({
  id,
  state = converterExample,
}: {
  id: string;
  state?: ConverterState | undefined;
}): JSX.Element {
  const slip = clamp01((state.engineRpm - state.turbineRpm) / Math.max(state.engineRpm, 1));
  const lmin = state.engineRpm > 5 ? (slip * 12 * state.engineRpm) / 1500 : 0;
  return (
    <Frame
      id={id}
      width={390}
      height={386}
      title="Torque converter, cut open"
      desc={describeConverter(state)}
    >
      <Oil
        id={id}
        d={`M72 40H${C.x}${sector(0, 96, -90, 90).replace(/^M/, 'L')}M72 40H${C.x}V295H72z${box(150, 220, 86, 62)}`}
        pressure={0.2}
      />
      {/* pump half and its hub, welded to the cover */}
      <Cut
        id={id}
        d={`${sector(94, 104, -62, 90)}M${p(94, -62)}L${p(104, -62)}L${roundPlace(C.x + 62)} 262H346V272H${roundPlace(C.x + 50)}V${roundPlace(at(94, -62)[1])}z`}
      />
      <Cut id={id} d={`M${C.x} 32H62V306H40V296H30V320H72V42H${C.x}z`} />
      <path class="dw-line" d={blades(-56, 84)} />
      <path class="dw-solid" d={sector(36, 42, -54, 86)} />
      {/* turbine half and its hub, splined to the input shaft */}
      <Cut
        id={id}
        other
        d={`${sector(87, 94, 94, 240)}M${p(94, 240)}L${p(87, 240)}L${roundPlace(C.x - 34)} 296H${roundPlace(C.x - 34)}V306H104V296H132z`}
      />
      <path class="dw-line" d={blades(96, 236)} />
      <path class="dw-solid" d={sector(36, 42, 94, 234)} />
      {/* stator, one-way clutch, fixed support */}
      <path class="dw-void" d={sector(36, 94, 246, 294)} />
      <path class="dw-solid" d={sector(40, 90, 248, 292)} />
      <path
        class="dw-line"
        d={`M${p(44, 256)}Q${p(66, 262)} ${p(86, 256)}M${p(44, 268)}Q${p(66, 274)} ${p(86, 268)}M${p(44, 280)}Q${p(66, 286)} ${p(86, 280)}`}
      />
      <Cut id={id} d={`${box(C.x - 30, 226, 60, 12)}${box(C.x - 24, 252, 48, 8)}`} />
      {[-16, 0, 16].map((dx) => (
        <path
          key={dx}
          class={state.statorHolds ? 'dw-soft' : 'dw-solid'}
          d={circlePath(C.x + dx, 245, 7)}
        />
      ))}
      <Cut id={id} d={`M${C.x - 24} 260H${C.x + 24}V280H360V290H${C.x - 24}z`} />
      <Cut id={id} other d="M104 306H372V330H104z" />
      <path class="dw-centre" d="M14 338H388" />
      <Flow points={loop} lmin={lmin} temp={state.temp} />

      <Label
        x={4}
        y={18}
        lines={[`Cover, turned by the engine: ${format(state.engineRpm, speed, 'si')}`]}
        to="26,24 66,60"
      />
      <Label x={386} y={52} anchor="end" lines={['Pump half']} to="322,54 276,88" />
      <Label x={4} y={150} lines={['Turbine']} to="52,146 96,140" />
      <Label
        x={300}
        y={128}
        lines={[
          state.temp === undefined ? 'Oil' : state.temp === 'hot' ? 'Hot oil' : 'Cold oil',
          'goes round',
          'this way',
        ]}
      />
      <Label
        x={386}
        y={190}
        anchor="end"
        lines={['Stator', state.statorHolds ? '~held' : '~runs free']}
        to="338,188 202,204"
      />
      <Label x={386} y={234} anchor="end" lines={['One-way clutch']} to="286,231 206,243" />
      <Label x={236} y={372} lines={['Input shaft']} to="256,359 246,322" />
      <Label x={310} y={372} lines={[`*${format(state.turbineRpm, speed, 'si')}`]} />
      <Label x={86} y={372} lines={['Stator support']} to="146,359 172,285" />
      <text class="dw-text" x="386" y="257" text-anchor="end">
        hub drives oil pump
      </text>
    </Frame>
  );
}
