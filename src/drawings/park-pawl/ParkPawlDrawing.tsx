import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { box, Cut, Oil } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { CONE_TRAVEL, ParkPawl, rodEnd } from '../parts/park-pawl.tsx';
import { words as park } from '../parts/park-words.en.ts';
import { Spring } from '../parts/spring.tsx';
import { NamedBox, Wire } from '../parts/wire.tsx';
import { clamp01, roundPlace } from '../scale.ts';
import { describeParkPawl, parkPawlAt, type ParkPawlState } from './state.ts';
import { words } from './words.en.ts';

export function ParkPawlDrawing({ id, state }: { id: string; state: ParkPawlState }): JSX.Element {
  const e = clamp01(state.engage);
  const rod = rodEnd(e);
  const k = 1.15;
  const [cx, cy] = [304, 206];
  const x = Math.round(cx + rod.x * k);
  const y = Math.round(cy + rod.y * k);
  const piston = 104 - CONE_TRAVEL * k * (1 - e);
  const at = parkPawlAt(state.engage);
  const home = at === 'in';
  const plate = Math.round(74 + (x - (cx + rodEnd(1).x * k)));
  const mid = roundPlace((plate + 43) / 2);
  return (
    <Frame
      id={id}
      width={390}
      height={310}
      title={words.title[state.kind][at]}
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
            lines={[park.plate, words.onShaft]}
            to={`40,${y + 108} 44,${y + 66}`}
          />
          <Label x={4} y={y - 34} lines={[park.cable]} to={`16,${y - 28} 10,${y + 42}`} />
          <Label
            x={112}
            y={y + 44}
            lines={[words.rod]}
            to={`124,${y + 30} ${Math.max(plate + 20, 118)},${y + 1}`}
          />
        </g>
      ) : (
        <g>
          <NamedBox x={4} y={4} width={92} height={28} lines={[park.controller]} />
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
          <NamedBox
            x={78}
            y={y - 74}
            width={76}
            height={25}
            lines={[words.solenoid]}
            strong={!home}
          />
          <Spring x1={15} y1={y} x2={piston} y2={y} radius={16} coils={5} />
          <Cut id={id} other d={box(piston, y - 23, 8, 46)} />
          <path class="dw-solid" d={box(piston + 8, y - 4, Math.max(0, x - piston - 8), 8)} />
          <Label
            x={4}
            y={y + 56}
            lines={[park.actuator, `~${home ? words.pushes : words.holdsOut}`]}
            to={`20,${y + 42} 28,${y + 8}`}
          />
        </g>
      )}
      <Label x={178} y={36} lines={[words.guide]} to={`196,41 ${cx - 34 * k},${cy - 94 * k}`} />
      <Label
        x={236}
        y={20}
        lines={[park.cone]}
        to={`250,25 ${cx - (36 + CONE_TRAVEL * (1 - e)) * k},${cy - 77 * k}`}
      />
      <Label x={296} y={36} lines={[park.spring]} to={`336,41 ${cx + 35 * k},${cy - 88 * k}`} />
      <Label
        x={388}
        y={176}
        anchor="end"
        lines={[park.pawl]}
        to={`374,163 ${cx + 50 * k},${cy - 60 * k}`}
      />
      <Label x={148} y={290} lines={[park.gear]} to={`212,282 ${cx - 28},${cy + 32}`} />
      <text class="dw-text dw-strong" x="4" y="300">
        {{ in: park.holds, partly: words.notHome, out: park.out }[at]}
      </text>
    </Frame>
  );
}
