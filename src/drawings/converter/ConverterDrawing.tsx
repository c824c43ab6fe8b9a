import type { JSX } from 'preact';
import { format } from '../../quantity/print.ts';
import { speed } from '../../quantity/quantities.ts';
import { Flow } from '../parts/flow.tsx';
import { Frame } from '../parts/frame.tsx';
import { circlePath } from '../parts/gear.ts';
import { box, Cut, Oil } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { roundPlace, type Point } from '../scale.ts';
import { ALIKE_RPM, describeConverter, type ConverterState } from './state.ts';
import { words } from './words.en.ts';

/** The ring of oil: its middle, its core, and the shell that the blades reach. */
const C = { x: 190, y: 134 };
const CORE = 40;
const SHELL = 84;

const at = (radius: number, deg: number): Point => [
  C.x + radius * Math.cos((deg * Math.PI) / 180),
  C.y - radius * Math.sin((deg * Math.PI) / 180),
];
const p = (radius: number, deg: number): string => at(radius, deg).map(roundPlace).join(' ');
/** Ring sector from angle a to b, counter-clockwise on the page. */
const sector = (inner: number, outer: number, a: number, b: number): string =>
  `M${p(outer, a)}A${outer} ${outer} 0 0 0 ${p(outer, b)}L${p(inner, b)}A${inner} ${inner} 0 0 1 ${p(inner, a)}z`;
/** Blades as they show in the cut, each from core to shell and bent with the flow. */
const blades = (from: number, to: number, count = 6): string =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * (i + 0.5)) / count)
    .map((deg) => `M${p(CORE, deg - 5)}Q${p(62, deg - 5)} ${p(SHELL, deg + 3)}`)
    .join('');
const ROUND = Array.from({ length: 35 }, (_, i) => at(62, -82 + i * 10))
  .map((point) => point.map(roundPlace).join(','))
  .join(' ');

/**
 * Upper half, cut along the shaft. Cover and impeller are one closed shell, full of oil to the shaft; turbine, stator and their blades
 * stand in it. The model has no flow round the ring: the dashes go by how much faster the impeller turns, which is what drives it.
 */
export function ConverterDrawing({
  id,
  state,
}: {
  id: string;
  state: ConverterState;
}): JSX.Element {
  const print = (rpm: number) => format(rpm, speed, 'si');
  const faster = Math.max(0, state.engineRpm - state.turbineRpm);
  return (
    <Frame id={id} width={390} height={392} title={words.title} desc={describeConverter(state)}>
      <Oil
        id={id}
        d={`M192 ${C.y - 98}A98 98 0 0 0 ${C.x - 98} ${C.y}V342H${C.x + 196}V276H260V200L${p(SHELL, -40)}A${SHELL} ${SHELL} 0 0 0 ${p(SHELL, 88)}z`}
        pressure={0.2}
      />
      {/* cover, with the pilot that centers it in the crankshaft */}
      <Cut
        id={id}
        d={`M194 ${C.y - 110}A110 110 0 0 0 ${C.x - 110} ${C.y}V318H56V342H${C.x - 98}V${C.y}A98 98 0 0 1 194 ${C.y - 98}z`}
      />
      {/* impeller: shell, flange welded to the cover, hub */}
      <Cut
        id={id}
        other
        d={`M194 ${C.y - 110}H206V${C.y - 95}L${p(96, 80)}A96 96 0 0 1 ${p(96, -44)}L272 262H386V276H258V204L${p(SHELL, -44)}A${SHELL} ${SHELL} 0 0 0 ${p(SHELL, 84)}L194 ${roundPlace(C.y - 84)}z`}
      />
      <path class="dw-line" d={blades(-42, 84)} />
      <path class="dw-solid" d={sector(34, CORE, -42, 84)} />
      {/* turbine: shell, and a hub splined to the input shaft */}
      <Cut
        id={id}
        d={`M${p(SHELL, 96)}A${SHELL} ${SHELL} 0 0 0 ${p(SHELL, 224)}L140 296H166V312H118V296H128L${p(90, 224)}A90 90 0 0 1 ${p(90, 96)}z`}
      />
      <path class="dw-line" d={blades(96, 222)} />
      <path class="dw-solid" d={sector(34, CORE, 96, 222)} />
      {/* stator on its one-way clutch, on a support that never turns */}
      <path class="dw-solid" d={sector(CORE, SHELL, 238, 302)} />
      <path class="dw-line" d={blades(240, 300, 3)} />
      <Cut id={id} other d={box(C.x - 36, 216, 72, 12)} />
      {[-24, -8, 8, 24].map((dx) => (
        <path
          key={dx}
          class={state.statorHolds ? 'dw-soft' : 'dw-solid'}
          d={circlePath(C.x + dx, 235, 7)}
        />
      ))}
      <Cut
        id={id}
        d={`M${C.x - 36} 242H${C.x + 36}V254H${C.x + 18}V288H386V300H${C.x - 4}V254H${C.x - 36}z`}
      />
      <Cut id={id} other d="M104 312H386V342H104z" />
      <path class="dw-centre" d="M40 342H390" />
      <Flow points={ROUND} lmin={faster > ALIKE_RPM ? faster / 100 : 0} temp={state.temp} />

      <Label
        x={4}
        y={15}
        lines={[words.cover({ speed: print(state.engineRpm) })]}
        to="40,20 86,100"
      />
      <Label x={386} y={52} anchor="end" lines={[words.impeller]} to="328,54 272,88" />
      <Label x={4} y={154} lines={[words.turbine]} to="54,150 103,146" />
      <Label x={300} y={112} lines={words.round[state.temp ?? 'none']} />
      <Label
        x={386}
        y={184}
        anchor="end"
        lines={[words.stator, `~${state.statorHolds ? words.held : words.free}`]}
        to="340,182 206,198"
      />
      <Label x={386} y={218} anchor="end" lines={[words.oneWay]} to="284,216 216,234" />
      <Label x={386} y={240} anchor="end" lines={words.hub} />
      <Label
        x={386}
        y={372}
        anchor="end"
        lines={[words.shaft({ speed: print(state.turbineRpm) })]}
        to="270,360 250,328"
      />
      <Label x={80} y={372} lines={[words.support]} to="160,358 196,276" />
    </Frame>
  );
}
