import type { JSX } from 'preact';
import {
  describeMechanical,
  fedRange,
  isParked,
  RANGE_NAMES,
  rangeExample,
} from './range-state.ts';
import type { Range, RangeState } from './range-state.ts';
import { roundPlace } from './scale.ts';
import { DetentPlate, onPlate, PLATE_TURN } from './parts/detent.tsx';
import { Flow } from './parts/flow.tsx';
import { Frame } from './parts/frame.tsx';
import { circlePath } from './parts/gear.ts';
import { box, Cut, Oil } from './parts/hatch.tsx';
import { Label } from './parts/label.tsx';
import { ParkPawl, rodEnd } from './parts/park-pawl.tsx';
import { Solenoid } from './parts/solenoid.tsx';
import { Spool } from './parts/spool.tsx';
import { NamedBox, Wire } from './parts/wire.tsx';

const SHAFT = { x: 150, y: 205 };
const GEAR = { x: 316, y: 372 };
const RANGES: readonly Range[] = ['P', 'R', 'N', 'D'];
/** Degrees the plate stands short when the cable is set wrong: enough to half close a port, as in the trade's complaint. */
const MIS_SET = -6;

/** Hand lever, cable, detent plate, manual valve, rod, pawl: what the hand moves, and how little is left to the controller. */
export function MechanicalRangeDrawing({
  id,
  state = rangeExample,
}: {
  id: string;
  state?: RangeState | undefined;
}): JSX.Element {
  const miss = state.misSet ? (state.range === 'P' ? -MIS_SET : MIS_SET) : 0;
  const turn = PLATE_TURN[state.range] + miss;
  const p = 45 * Math.sin((turn * Math.PI) / 180);
  const lever = PLATE_TURN[state.range] * 0.9;
  const rad = (lever * Math.PI) / 180;
  const hand = { x: 48 + 72 * Math.sin(rad), y: 116 - 72 * Math.cos(rad) };
  const foot = { x: 48 - 30 * Math.sin(rad), y: 116 + 30 * Math.cos(rad) };
  const pin = onPlate(SHAFT.x, SHAFT.y, 56, 90 + turn);
  const rodPin = onPlate(SHAFT.x, SHAFT.y, 46, 64 + turn);
  const parked = isParked(state, 'mechanical');
  const engage = parked
    ? state.misSet
      ? 0.75
      : 1
    : state.range === 'R' && state.misSet
      ? 0.15
      : 0;
  const rod = rodEnd(engage);
  const fed = fedRange(state, 'mechanical');
  const cable = state.alive?.cable ?? true;
  const dead = state.power === false;
  const wire = state.alive?.solenoids ?? !(state.failSafe || dead);
  const bite = state.misSet ? 1 : 4;
  const gap = state.misSet ? 0 : 7;
  const y0 = 100;
  return (
    <Frame
      id={id}
      width={390}
      height={432}
      title={`Mechanical range selection, lever in ${RANGE_NAMES[state.range]}`}
      desc={describeMechanical(state)}
    >
      {/* hand lever in its gate */}
      {RANGES.map((g, i) => (
        <g key={g}>
          {g === state.range && (
            <rect
              class="dw-tag-yes"
              x={roundPlace(4 + i * 22)}
              y="2"
              width="21"
              height="22"
              rx="2"
            />
          )}
          <text
            class={g === state.range ? 'dw-tag-yes-text' : 'dw-text'}
            x={roundPlace(14.5 + i * 22)}
            y="18"
            text-anchor="middle"
          >
            {g}
          </text>
        </g>
      ))}
      <path class="dw-line" d="M6 32H90" />
      <path
        class="dw-solid"
        d={`M${roundPlace(foot.x - 3)} ${roundPlace(foot.y)}L44 116L${roundPlace(hand.x - 3)} ${roundPlace(hand.y)}h6L52 116L${roundPlace(foot.x + 3)} ${roundPlace(foot.y)}z`}
      />
      <circle class="dw-soft" cx={roundPlace(hand.x)} cy={roundPlace(hand.y)} r="9" />
      <path class="dw-solid" d={circlePath(48, 116, 6)} />

      {/* cable: sheath fixed at both ends, rod with eye and stop */}
      <path class="dw-line" d={`M${roundPlace(foot.x)} ${roundPlace(foot.y)}L82 146`} />
      <path class="dw-tube-out" d="M82 146C142 146 20 224 66 260" />
      <path class="dw-tube-in" d="M82 146C142 146 20 224 66 260" />
      {!cable && <path class="dw-line dw-cross" d="M64 194l14 14M78 194l-14 14" />}
      <path class="dw-solid" d={`${box(78, 138, 6, 16)}M64 252l8 14l-5 3l-8 -14z`} />
      <DetentPlate cx={SHAFT.x} cy={SHAFT.y} turn={turn} miss={miss} />
      <path
        class="dw-line"
        d={`M70 261L${roundPlace(pin.x)} ${roundPlace(pin.y)}H${roundPlace(pin.x + gap + 20)}`}
      />
      <circle class="dw-solid" cx={roundPlace(pin.x)} cy={roundPlace(pin.y)} r="8" />
      <circle class="dw-ink" cx={roundPlace(pin.x)} cy={roundPlace(pin.y)} r="3.5" />
      <path class="dw-ink" d={box(pin.x + 8 + gap, pin.y - 7, 6, 14)} />

      {/* manual valve */}
      <Cut
        id={id}
        d={`M172 18H262V160H172z${box(183, 24, 24, 136)}${box(207, y0, 55, 8)}${box(207, y0 - 25, 55, 9)}${box(207, y0 + 28, 55, 10)}`}
      />
      <path class="dw-void" d={box(183, 24, 24, 136)} />
      <Oil id={id} d={`${box(183, y0 - 20 + p, 24, 40)}${box(207, y0, 55, 8)}`} pressure={0.6} />
      {state.range === 'R' && (
        <Oil id={id} d={box(207, y0 - 25, 55, 9)} pressure={state.misSet ? 0.25 : 0.6} />
      )}
      {state.range === 'D' && (
        <Oil id={id} d={box(207, y0 + 28, 55, 10)} pressure={state.misSet ? 0.25 : 0.6} />
      )}
      <Spool
        x={183}
        y={y0 + p}
        bore={24}
        axis="y"
        lands={[
          { at: -50, length: 30 },
          { at: 20, length: 18 },
        ]}
      />
      <path class="dw-solid" d={box(191, y0 + 38 + p, 8, 105 - 38 - 5)} />
      <path class="dw-solid" d={circlePath(195, SHAFT.y + p, 5)} />
      <path
        class="dw-line"
        d={`M183 24V160M207 24V${y0 - 25}M207 ${y0 - 16}V${y0}M207 ${y0 + 8}V${y0 + 28}M207 ${y0 + 38}V160M183 24H207`}
      />
      <Flow points={`288,${y0 + 4} 222,${y0 + 4}`} lmin={fed ? bite : 0} />
      <Flow points={`212,${y0 - 20} 292,${y0 - 20}`} lmin={fed === 'R' ? bite : 0} />
      <Flow points={`212,${y0 + 33} 292,${y0 + 33}`} lmin={fed === 'D' ? bite : 0} />

      {/* controller and what it can reach */}
      <NamedBox
        x={288}
        y={2}
        width={98}
        height={42}
        lines={
          dead
            ? ['Controller', 'no power']
            : state.failSafe
              ? ['Controller', 'fail-safe']
              : ['Controller']
        }
        strong={state.failSafe === true && !dead}
      />
      <Wire points="338,44 338,62" alive={wire} cross={[338, 53]} />
      <path class="dw-solid" d="M296 62H384V142H296z" />
      <Solenoid x={322} y={66} on={wire && fed !== undefined} />

      {/* rod and pawl */}
      <ParkPawl id={id} cx={GEAR.x} cy={GEAR.y} engage={engage} />
      <path
        class="dw-line"
        d={`M${roundPlace(rodPin.x)} ${roundPlace(rodPin.y)}L${roundPlace(rodPin.x + 14)} ${roundPlace(GEAR.y + rod.y)}H${roundPlace(GEAR.x + rod.x)}`}
      />
      <path class="dw-solid" d={circlePath(rodPin.x, rodPin.y, 3.5)} />

      <text class="dw-text" text-anchor="middle">
        <tspan x="340" y="116">
          clutch
        </tspan>
        <tspan x="340" y="133">
          solenoids
        </tspan>
      </text>
      <text class="dw-text" x="226" y={y0 - 29}>
        R
      </text>
      <text class="dw-text" x="226" y={y0 + 53}>
        D
      </text>
      <text class="dw-text" x="268" y={y0 - 1}>
        line
      </text>
      <Label x={4} y={180} lines={['Hand lever']} to="30,166 46,130" />
      <Label x={4} y={214} lines={['Cable']} to="42,210 57,215" />
      <Label x={214} y={184} lines={['Manual valve']} to="212,180 197,172" />
      <Label x={106} y={104} lines={['Roller']} to="124,108 149,136" />
      <Label x={226} y={212} lines={['Detent plate']} to="223,208 172,188" />
      <Label
        x={8}
        y={294}
        lines={['Stop', state.misSet ? '~hard on the eye' : '~just past the eye']}
        to={`40,288 ${pin.x + gap + 11},${pin.y + 5}`}
      />
      <Label
        x={226}
        y={240}
        lines={['Park rod']}
        to={`223,238 ${rodPin.x + 13},${GEAR.y + rod.y - 8}`}
      />
      <Label
        x={296}
        y={240}
        lines={['Cone']}
        to={`312,245 ${GEAR.x - 36 - 46 * (1 - engage)},${GEAR.y - 77}`}
      />
      <Label x={386} y={262} anchor="end" lines={['Pawl']} to="370,267 362,310" />
      <Label x={250} y={420} anchor="end" lines={['Park gear']} to="254,414 284,388" />
      <text class="dw-text">
        <tspan class="dw-strong" x="8" y="345">
          {parked ? 'Park holds' : 'Park is out'}
        </tspan>
        <tspan x="8" y="364">
          {fed
            ? `Valve feeds ${RANGE_NAMES[fed]}${state.misSet ? ', partly shut' : ''}`
            : (state.failSafe || dead) && !parked
              ? 'Clutches vent'
              : 'Valve feeds nothing'}
        </tspan>
        <tspan x="8" y="383">
          {(state.failSafe || dead) && fed
            ? 'Default gear, full pressure'
            : 'No wire reaches the pawl'}
        </tspan>
      </text>
    </Frame>
  );
}
