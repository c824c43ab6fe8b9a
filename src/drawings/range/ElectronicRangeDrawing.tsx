import type { JSX } from 'preact';
import {
  describeElectronic,
  fedRange,
  isParked,
  OIL,
  solenoidsAlive,
  type RangeState,
} from './state.ts';
import { Frame } from '../parts/frame.tsx';
import { circlePath, gearPath } from '../parts/gear.ts';
import { Letters } from '../parts/hand-lever.tsx';
import { box, Oil } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { CONE_TRAVEL, ParkPawl } from '../parts/park-pawl.tsx';
import { words as parkNames } from '../parts/park-words.en.ts';
import { SolenoidValve } from '../parts/solenoid-valve.tsx';
import { ClutchSolenoid } from './ClutchSolenoid.tsx';
import { ControllerBox, Said } from './ControllerBox.tsx';
import {
  coneAt,
  PAWL_SCALE,
  pawlNames,
  WIRE,
  type Place,
  type RangeLayout,
  type WireLayout,
} from './layouts.ts';
import { INLET, OilActuator } from './OilActuator.tsx';
import { words } from './words.en.ts';

const names = words.wire;

function said(s: RangeState, fed: 'R' | 'D' | undefined): readonly string[] {
  const parked = isParked(s, 'electronic');
  if (s.power === false) return parked ? names.sprung : names.ratchets;
  if (s.failSafe) return parked ? names.chose : names.waits;
  return [fed ? words.feeds({ range: words.ranges[fed] }) : words.cable.nothing];
}

/**
 * Selector, controller, clutch solenoids, and what moves the park rod. Two ways are common: a spring that engages Park and oil that
 * holds it out, drawn in full, or a motor on the same rod, drawn dashed above it (common practice, no source).
 */
export function ElectronicRangeDrawing({
  id,
  state,
  layout = 'tall',
}: {
  id: string;
  state: RangeState;
  layout?: RangeLayout | undefined;
}): JSX.Element {
  const at = WIRE[layout];
  const { gear, park } = at;
  const oil = state.oil ?? OIL;
  const parked = isParked(state, 'electronic');
  const dead = state.power === false;
  const fed = fedRange(state, 'electronic');
  // Without power and still rolling, the pawl rides over the teeth: drawn halfway.
  const engage = parked ? 1 : dead ? 0.5 : 0;
  const held = !parked && !dead;
  const wires = [
    state.alive?.selector ?? !dead,
    solenoidsAlive(state),
    solenoidsAlive(state),
    !dead,
  ];
  const cone = coneAt(gear, engage);
  const half = layout === 'tall' ? 24 : 22;
  const right = park.x - INLET;
  const back = (1 - engage) * CONE_TRAVEL * PAWL_SCALE;
  const rail = at.drive.y + 44;
  return (
    <Frame
      id={id}
      width={at.width}
      height={at.height}
      cropped={layout === 'wide'}
      title={names.title({ range: words.ranges[state.range] })}
      desc={describeElectronic(state)}
    >
      <Letters
        x={layout === 'tall' ? 8 : 0}
        y={layout === 'tall' ? 22 : 10}
        picked={state.range}
        column
      />
      <Line {...{ id, at, rail }} pressure={oil.line} />
      {(['D', 'R'] as const).map((one) => {
        const { x, y } = at[one === 'D' ? 'drive' : 'reverse'];
        return (
          <ClutchSolenoid
            key={one}
            {...{ id, one, x, y, oil }}
            port={x - 40}
            foot={rail}
            supply={oil.line}
            on={fed === one}
          />
        );
      })}
      <ControllerBox at={at} state={state} alive={(wire) => wires[wire] === true} />

      <Oil id={id} d={box(park.x - 48, park.y - 14, 22, 8)} pressure={oil.line} />
      <path class="dw-line" d={`M${park.x - 48} ${park.y - 14}h22m0 8h-22`} />
      <SolenoidValve id={id} {...park} on={held} supply={oil.line} outlet={held ? oil.line : 0} />
      <Oil
        id={id}
        d={box(park.x - 4, park.y, 8, cone.y - half - park.y)}
        pressure={held ? oil.line : 0}
      />
      <path class="dw-line" d={`M${park.x - 4} ${park.y}V${cone.y - half}m8 0V${park.y}`} />
      <path
        class="dw-solid"
        d={box(right - 28 - back, cone.y - 3.5, cone.x - right + 28 + back, 7)}
      />
      <OilActuator
        id={id}
        x={right}
        y={cone.y}
        back={back}
        pressure={held ? oil.line : 0}
        half={half}
      />
      <Motor {...at.motor} />
      <ParkPawl id={id} cx={gear.x} cy={gear.y} engage={engage} scale={PAWL_SCALE} />

      {pawlNames(layout, gear, cone).map((label) => (
        <Label key={`${label.x} ${label.y}`} {...label} />
      ))}
      <Label x={park.x - 52} y={park.y - 5} anchor="end" lines={[words.line]} />
      <Label {...at.byOil} lines={[names.byOil[held ? 'out' : 'in']]} />
      <Label
        x={at.motor.x + 25}
        y={at.motor.y - 40}
        lines={[names.orMotor, ...(dead ? [`~${names.stays}`] : [])]}
      />
      {layout === 'tall' && (
        <>
          <Label x={2} y={14} lines={[names.selector]} />
          <Label
            x={2}
            y={cone.y - 34}
            lines={[parkNames.actuator]}
            to={`44,${cone.y - 30} 50,${cone.y - 20}`}
          />
          <Label x={park.x + 58} y={park.y - 14} lines={[names.solenoid]} />
        </>
      )}
      <Said {...at.says} parked={parked} lines={said(state, fed)} layout={layout} />
    </Frame>
  );
}

/** The line under both clutch solenoid valves. */
function Line({
  id,
  at,
  rail,
  pressure,
}: {
  id: string;
  at: WireLayout;
  rail: number;
  pressure: number;
}): JSX.Element {
  const [left, right] = [at.drive.x - 52, at.reverse.x - 33];
  return (
    <>
      <Oil id={id} d={box(left, rail, right - left, 8)} pressure={pressure} />
      <path
        class="dw-line"
        d={`M${left} ${rail}H${at.drive.x - 40}m7 0H${at.reverse.x - 40}m7 0v8H${left}`}
      />
      <Label x={at.drive.x - 44} y={rail - 5} anchor="end" lines={[words.line]} />
    </>
  );
}

/** The other way: a motor whose pinion runs on the rod. Dashed, since a transmission has the one or the other. */
const Motor = ({ x, y }: Place) => (
  <g>
    <rect class="dw-line dw-other" x={x - 20} y={y - 62} width="40" height="60" rx="3" />
    <path class="dw-solid" d={circlePath(x, y - 43, 15)} />
    <path class="dw-soft" d={gearPath(x, y - 15, 7, 12, 9)} />
    <text class="dw-text" x={x} y={y - 38} text-anchor="middle">
      M
    </text>
  </g>
);
