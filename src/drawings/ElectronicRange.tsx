import type { JSX } from 'preact';
import {
  describeElectronic,
  fedRange,
  isParked,
  RANGE_NAMES,
  rangeExample,
} from './range-state.ts';
import type { Range, RangeState } from './range-state.ts';
import { Flow } from './parts/flow.tsx';
import { Frame } from './parts/frame.tsx';
import { box, Cut, Oil } from './parts/hatch.tsx';
import { Label } from './parts/label.tsx';
import { CONE_TRAVEL, ParkPawl, rodEnd } from './parts/park-pawl.tsx';
import { Solenoid } from './parts/solenoid.tsx';
import { Spring } from './parts/spring.tsx';
import { NamedBox, Wire } from './parts/wire.tsx';

const GEAR = { x: 316, y: 342 };
const RANGES: readonly Range[] = ['P', 'R', 'N', 'D'];

/**
 * Selector, controller, solenoids, park actuator, pawl. The actuator is drawn as the common kind: a spring engages
 * Park, oil through one solenoid holds it out. Others use a motor; what the controller can do is the same.
 */
export function ElectronicRangeDrawing({
  id,
  state = rangeExample,
}: {
  id: string;
  state?: RangeState | undefined;
}): JSX.Element {
  const parked = isParked(state, 'electronic');
  const dead = state.power === false;
  const fed = fedRange(state, 'electronic');
  // Without power and still rolling, the pawl rides over the teeth: drawn halfway.
  const engage = parked ? 1 : dead ? 0.5 : 0;
  const vented = parked || dead;
  const rod = rodEnd(engage);
  const selector = state.alive?.selector ?? !dead;
  const clutches = state.alive?.solenoids ?? !(state.failSafe || dead);
  const piston = 132 - CONE_TRAVEL * (1 - engage);
  const y = GEAR.y + rod.y;
  return (
    <Frame
      id={id}
      width={390}
      height={402}
      title={`Electronic range selection, ${RANGE_NAMES[state.range]} selected`}
      desc={describeElectronic(state)}
    >
      <text class="dw-text" x="4" y="18">
        Selector
      </text>
      <path class="dw-solid" d={box(12, 26, 36, 112)} />
      {RANGES.map((g, i) => (
        <NamedBox
          key={g}
          x={17}
          y={31 + i * 26}
          width={26}
          height={23}
          lines={[g]}
          strong={g === state.range}
        />
      ))}
      <Wire points="48,80 104,80" alive={selector} cross={[76, 80]} />
      <NamedBox
        x={104}
        y={56}
        width={96}
        height={48}
        lines={
          dead
            ? ['Controller', 'no power']
            : state.failSafe
              ? ['Controller', 'fail-safe']
              : ['Controller']
        }
        strong={state.failSafe === true && !dead}
      />

      <Wire points="200,72 238,72 238,40 262,40" alive={clutches} cross={[238, 55]} />
      <Wire points="200,88 238,88 238,112 262,112" alive={clutches} cross={[238, 101]} />
      {(['D', 'R'] as const).map((g, i) => {
        const on = clutches && fed === g;
        const top = 28 + i * 72;
        return (
          <g key={g}>
            <Cut id={id} d={`${box(262, top + 24, 72, 22)}${box(274, top + 30, 60, 10)}`} />
            <Oil id={id} d={box(274, top + 30, 60, 10)} pressure={on ? 0.6 : 0} />
            <path class="dw-line" d={`M334 ${top + 30}H274V${top + 40}H334`} />
            <Solenoid x={262} y={top} on={on} />
            <Flow points={`306,${top + 35} 352,${top + 35}`} lmin={on ? 3 : 0} />
            <Label x={304} y={top + 16} lines={[RANGE_NAMES[g]]} />
            {!on && <Label x={338} y={top + 40} lines={['vents']} />}
          </g>
        );
      })}
      <text class="dw-text" x="256" y="16">
        Clutch solenoids
      </text>

      {/* park actuator: spring one way, oil the other */}
      <Wire points="152,104 152,158" alive={!dead} cross={[152, 130]} />
      <Solenoid x={134} y={158} on={!vented} />
      <Cut id={id} d={`${box(128, 184, 48, 22)}${box(128, 190, 29, 10)}${box(147, 200, 10, 6)}`} />
      <Oil id={id} d={box(96, 190, vented ? 44 : 61, 10)} pressure={0.6} />
      {vented && <Oil id={id} d={box(146, 190, 11, 16)} pressure={0} />}
      <path class="dw-line" d="M96 190H157V206M96 200H147V206" />
      {vented && <path class="dw-line" d="M140 190V200M146 190V200" />}
      <Flow points="98,195 142,195" lmin={vented ? 0 : 0.5} />
      <Cut id={id} d={`M40 232H190V298H40z${box(50, 242, 130, 46)}${box(180, 259, 10, 12)}`} />
      <path class="dw-void" d={box(50, 242, 130, 46)} />
      <Oil
        id={id}
        d={`${box(piston + 12, 242, 180 - piston - 12, 46)}${box(147, 206, 10, 36)}`}
        pressure={vented ? 0 : 0.6}
      />
      <path
        class="dw-line"
        d="M147 206V242M157 206V242M50 242H147M157 242H180V259M180 271V288H50V242M180 259h10M180 271h10"
      />
      <Spring x1={52} y1={265} x2={piston} y2={265} radius={16} coils={5} />
      <Cut id={id} other d={box(piston, 243, 12, 44)} />
      <path class="dw-solid" d={box(piston + 12, y - 4, GEAR.x + rod.x - piston - 12, 8)} />
      <Flow points="152,210 152,238" lmin={vented ? 0 : 0.5} />
      <ParkPawl id={id} cx={GEAR.x} cy={GEAR.y} engage={engage} />

      <Label x={90} y={200} anchor="end" lines={['line']} />
      <Label
        x={182}
        y={184}
        lines={['Park solenoid', vented ? '~off: oil vents' : '~on: oil feeds']}
      />
      <Label x={4} y={222} lines={['Park actuator']} to="60,226 60,237" />
      <Label x={46} y={318} lines={['Spring pushes to Park']} to="70,304 74,280" />
      <Label
        x={296}
        y={226}
        lines={['Cone']}
        to={`310,230 ${GEAR.x - 36 - CONE_TRAVEL * (1 - engage)},${y}`}
      />
      <Label x={386} y={226} anchor="end" lines={['Pawl']} to="372,231 362,280" />
      <Label x={250} y={390} anchor="end" lines={['Park gear']} to="254,384 284,358" />
      <text class="dw-text">
        <tspan class="dw-strong" x="8" y="345">
          {parked ? 'Park holds' : 'Park is out'}
        </tspan>
        <tspan x="8" y="364">
          {dead
            ? parked
              ? 'The spring chose Park'
              : 'Pawl ratchets till slow'
            : state.failSafe
              ? parked
                ? 'Controller chose Park'
                : 'Neutral, Park when slow'
              : fed
                ? `Feeds ${RANGE_NAMES[fed]}`
                : 'Feeds no clutch'}
        </tspan>
      </text>
    </Frame>
  );
}
