import { format } from '../quantity/print.ts';
import { percent } from '../quantity/quantities.ts';
import type { JSX } from 'preact';
import { clamp01, roundPlace } from './scale.ts';
import { Frame } from './parts/frame.tsx';
import { box, Cut, Oil } from './parts/hatch.tsx';
import { Label } from './parts/label.tsx';
import { CONE_TRAVEL, ParkPawl, rodEnd } from './parts/park-pawl.tsx';
import { Spring } from './parts/spring.tsx';
import { NamedBox, Wire } from './parts/wire.tsx';

export interface ParkPawlState {
  /** What moves the rod. */
  kind: 'cable' | 'controller';
  /** 0 released, 1 engaged. */
  engage: number;
}

export const parkPawlExample: ParkPawlState = { kind: 'cable', engage: 1 };

export function describeParkPawl(s: ParkPawlState): string {
  const engage = clamp01(s.engage);
  const by =
    s.kind === 'cable'
      ? 'The hand, through the cable and the detent plate, moves the rod; the controller has no say in it.'
      : 'The controller moves the rod: a spring in the actuator pushes to Park, oil through a solenoid holds it out.';
  if (engage >= 0.99)
    return `Park pawl engaged. The cone sits between guide and pawl and holds the pawl's tooth in the park gear. ${by}`;
  if (engage <= 0.01)
    return `Park pawl released. The cone is drawn back and the return spring lifts the pawl clear of the park gear. ${by}`;
  return `Park pawl ${format(engage * 100, percent, 'si')} of its way in: the cone is not home and Park is not safe. ${by}`;
}

export function ParkPawlDrawing({
  id,
  state = parkPawlExample,
}: {
  id: string;
  state?: ParkPawlState | undefined;
}): JSX.Element {
  const e = clamp01(state.engage);
  const rod = rodEnd(e);
  const k = 1.15;
  const [cx, cy] = [304, 206];
  const x = Math.round(cx + rod.x * k);
  const y = Math.round(cy + rod.y * k);
  const piston = 104 - CONE_TRAVEL * k * (1 - e);
  const home = e >= 0.99;
  const plate = Math.round(74 + (x - (cx + rodEnd(1).x * k)));
  const mid = roundPlace((plate + 43) / 2);
  return (
    <Frame
      id={id}
      width={390}
      height={310}
      title={`Park pawl moved by ${state.kind === 'cable' ? 'a cable' : 'the controller'}, ${home ? 'engaged' : e > 0.01 ? 'part way in' : 'released'}`}
      desc={describeParkPawl(state)}
    >
      <g
        class="dw-enlarged"
        transform={`translate(${cx} ${cy}) scale(${k}) translate(${-cx} ${-cy})`}
      >
        <ParkPawl id={id} cx={cx} cy={cy} engage={e} />
      </g>
      {state.kind === 'cable' ? (
        <g>
          <path
            class="dw-solid"
            d={`M${plate - 8} ${y - 6}L34 ${y + 80}A9 9 0 0 0 52 ${y + 84}L${plate + 8} ${y + 6}A9 9 0 0 0 ${plate - 8} ${y - 6}z`}
          />
          <circle class="dw-solid" cx="43" cy={y + 80} r="6" />
          <path class="dw-line" d={`M${plate} ${y}H${x}`} />
          <circle class="dw-ink" cx={plate} cy={y} r="4" />
          <path class="dw-tube-out" d={`M0 ${y + 44}H14`} />
          <path class="dw-tube-in" d={`M0 ${y + 44}H14`} />
          <path class="dw-line" d={`M14 ${y + 44}H${mid}`} />
          <circle class="dw-solid" cx={mid} cy={y + 42} r="6" />
          <Label
            x={4}
            y={y + 122}
            lines={['Detent plate', 'on its shaft']}
            to={`40,${y + 108} 44,${y + 66}`}
          />
          <Label x={4} y={y - 34} lines={['Cable']} to={`16,${y - 28} 10,${y + 42}`} />
          <Label
            x={112}
            y={y + 44}
            lines={['Rod']}
            to={`124,${y + 30} ${Math.max(plate + 20, 118)},${y + 1}`}
          />
        </g>
      ) : (
        <g>
          <NamedBox x={4} y={4} width={92} height={28} lines={['Controller']} />
          <Wire points={`60,32 60,${y - 62} 78,${y - 62}`} alive cross={[60, 50]} />
          <Oil
            id={id}
            d={box(piston + 8, y - 24, 138 - piston - 8, 48)}
            pressure={home ? 0 : 0.6}
          />
          <Oil id={id} d={box(116, y - 50, 10, 26)} pressure={home ? 0 : 0.6} />
          <Cut
            id={id}
            d={`M4 ${y - 34}H148V${y + 34}H4z${box(14, y - 24, 124, 48)}${box(116, y - 34, 10, 10)}${box(138, y - 5, 10, 10)}`}
          />
          <path class="dw-line" d={`M116 ${y - 50}V${y - 24}M126 ${y - 50}V${y - 24}`} />
          <NamedBox x={78} y={y - 74} width={76} height={25} lines={['solenoid']} strong={!home} />
          <Spring x1={15} y1={y} x2={piston} y2={y} radius={16} coils={5} />
          <Cut id={id} other d={box(piston, y - 23, 8, 46)} />
          <path class="dw-solid" d={box(piston + 8, y - 4, Math.max(0, x - piston - 8), 8)} />
          <Label
            x={4}
            y={y + 56}
            lines={['Park actuator', home ? '~spring pushes to Park' : '~oil holds it out']}
            to={`20,${y + 42} 28,${y + 8}`}
          />
        </g>
      )}
      <Label x={178} y={36} lines={['Guide']} to={`196,41 ${cx - 34 * k},${cy - 94 * k}`} />
      <Label
        x={236}
        y={20}
        lines={['Cone']}
        to={`250,25 ${cx - (36 + CONE_TRAVEL * (1 - e)) * k},${cy - 77 * k}`}
      />
      <Label x={296} y={36} lines={['Return spring']} to={`336,41 ${cx + 35 * k},${cy - 88 * k}`} />
      <Label
        x={388}
        y={176}
        anchor="end"
        lines={['Pawl']}
        to={`374,163 ${cx + 50 * k},${cy - 60 * k}`}
      />
      <Label x={148} y={290} lines={['Park gear']} to={`212,282 ${cx - 28},${cy + 32}`} />
      <text class="dw-text dw-strong" x="4" y="300">
        {home ? 'Park holds' : e > 0.01 ? 'Not home' : 'Park is out'}
      </text>
    </Frame>
  );
}
