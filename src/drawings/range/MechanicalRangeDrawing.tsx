import type { JSX } from 'preact';
import { clamp01, roundPlace } from '../scale.ts';
import {
  describeMechanical,
  fedRange,
  gaveUp,
  isParked,
  OIL,
  solenoidsAlive,
  type Range,
  type RangeState,
} from './state.ts';
import { DetentPlate, onPlate, PINS, PLATE_TURN } from '../parts/detent.tsx';
import { Frame } from '../parts/frame.tsx';
import { circlePath } from '../parts/gear.ts';
import { HandLever, leverFoot } from '../parts/hand-lever.tsx';
import { box, Oil } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { Lens } from '../parts/lens.tsx';
import { ManualValve, PORT, PORTS } from '../parts/manual-valve.tsx';
import { ParkPawl } from '../parts/park-pawl.tsx';
import { ClutchSolenoid } from './ClutchSolenoid.tsx';
import { ControllerBox, Said } from './ControllerBox.tsx';
import {
  CABLE,
  cableNames,
  coneAt,
  PAWL_SCALE,
  pawlNames,
  type CableLayout,
  type Place,
  type RangeLayout,
} from './layouts.ts';
import { words } from './words.en.ts';

const names = words.cable;
/** How far the cone is in for each range; below 0 it is further back than it has to be. */
const CONE = { P: 1, R: 0.15, N: -0.1, D: -0.35 } as const;
/** From the line port to the clutch solenoid valves, and how high these stand above the axis of the bore. */
const SOLENOIDS = { R: -9, D: 82 } as const;
const ABOVE = 48;
/** What the plate turns for a unit that the spool moves [degrees]. */
const TURN = 1.25;

function said(s: RangeState, fed: 'R' | 'D' | undefined): readonly string[] {
  if (fed === undefined)
    return [gaveUp(s) && s.range !== 'P' && s.range !== 'N' ? names.vents : names.nothing];
  if (gaveUp(s)) return names.held;
  const range = words.ranges[fed];
  return s.misSet ? [names.partly({ range }), names.partOpen] : [words.feeds({ range })];
}

/** Hand lever, cable, detent plate, manual valve, rod, pawl: what the hand moves, and how little is left to the controller. */
export function MechanicalRangeDrawing({
  id,
  state,
  layout = 'tall',
}: {
  id: string;
  state: RangeState;
  layout?: RangeLayout | undefined;
}): JSX.Element {
  const at = CABLE[layout];
  const { valve, plate, gear } = at;
  const { range, misSet = false } = state;
  const oil = state.oil ?? OIL;
  const fed = fedRange(state, 'mechanical');
  // The spool stands short by what is shut of its port; plate and pins with it.
  const short = misSet ? PORT * (1 - clamp01(state.portOpen ?? 0.5)) : 0;
  const miss = (range === 'P' || range === 'R' ? short : -short) * TURN;
  const turn = PLATE_TURN[range] + miss;
  const engage = CONE[range] - (range === 'P' ? short * 0.05 : 0);
  const passage = misSet ? oil.clutch : oil.line;
  const pin = onPlate(plate.x, plate.y, PINS.valve, turn - 90);
  const rod = onPlate(plate.x, plate.y, PINS.rod, turn + 90);
  const eye = onPlate(plate.x, plate.y, PINS.cable, turn + 90);
  const cone = coneAt(gear, engage);
  return (
    <Frame
      id={id}
      width={at.width}
      height={at.height}
      cropped={layout === 'wide'}
      title={names.title({ range: words.ranges[range] })}
      desc={describeMechanical(state)}
    >
      <HandLever x={0} y={2} range={range} />
      <Cable at={at} range={range} eye={eye} broken={state.alive?.cable === false} />
      <DetentPlate cx={plate.x} cy={plate.y} turn={turn} miss={miss} />
      <Eye {...eye} gap={misSet ? 0 : 5} />
      <ManualValve
        {...{ id, range, short, ...valve }}
        line={oil.line}
        fed={passage}
        rod={pin.x - valve.x + 6}
      />
      <path
        class="dw-line"
        d={`M${pin.x} ${pin.y}L${pin.x + 6} ${valve.y}M${rod.x} ${rod.y}L${cone.x} ${cone.y}`}
      />
      {(['R', 'D'] as const).map((one) => {
        const port = valve.x + PORTS[one === 'R' ? 'reverse' : 'drive'];
        return (
          <ClutchSolenoid
            key={one}
            {...{ id, one, port, oil }}
            x={valve.x + SOLENOIDS[one]}
            y={valve.y - ABOVE}
            foot={valve.y - 18}
            supply={range === one ? passage : 0}
            on={fed === one}
          />
        );
      })}
      <Oil id={id} d={box(valve.x + PORTS.line, valve.y + 18, PORT, 8)} pressure={oil.line} />
      <path class="dw-line" d={`M${valve.x + PORTS.line} ${valve.y + 18}v8m${PORT} 0v-8`} />
      <ControllerBox at={at} state={state} alive={() => solenoidsAlive(state)} />
      <ParkPawl id={id} cx={gear.x} cy={gear.y} engage={engage} scale={PAWL_SCALE} />
      <Lens id={id} {...at.lens} to={`M${at.lens.from}L${eye.x} ${eye.y}`}>
        <Stop gap={misSet ? 0 : 12} />
      </Lens>
      {[
        ...cableNames(layout, at, names.stop[misSet ? 'hard' : 'right'], { cone, eye }),
        ...pawlNames(layout, gear, cone),
      ].map((label) => (
        <Label key={`${label.x} ${label.y}`} {...label} />
      ))}
      <Said
        {...at.says}
        parked={isParked(state, 'mechanical')}
        lines={said(state, fed)}
        layout={layout}
      />
    </Frame>
  );
}

/** Sheath fixed at both ends; what runs in it moves with the foot of the lever and with the eye. */
function Cable({
  at,
  range,
  eye,
  broken,
}: {
  at: CableLayout;
  range: Range;
  eye: Place;
  broken: boolean;
}): JSX.Element {
  const foot = leverFoot(range);
  const { from, d, to, cross } = at.sheath;
  return (
    <>
      <path
        class="dw-line"
        d={`M${foot.x} ${roundPlace(foot.y + 2)}L${from}M${to}L${eye.x} ${eye.y}`}
      />
      <path class="dw-tube-out" d={d} />
      <path class="dw-tube-in" d={d} />
      {broken && (
        <path class="dw-line dw-cross" d={`M${cross[0] - 7} ${cross[1] - 7}l14 14m0 -14l-14 14`} />
      )}
    </>
  );
}

/** The cable's eye on its pin, and the stop past it. */
const Eye = ({ x, y, gap }: Place & { gap: number }) => (
  <>
    <path class="dw-line" d={`M${x} ${y}h${gap + 12}`} />
    <path class="dw-solid" d={circlePath(x, y, 6)} />
    <path class="dw-ink" d={`${circlePath(x, y, 2.5)}${box(x + 6 + gap, y - 6, 5, 12)}`} />
  </>
);

/** The same, as large as the gap has to be to be seen. */
const Stop = ({ gap }: { gap: number }) => (
  <>
    <path class="dw-solid" d="M-60 -4H60V4H-60z" />
    <path class="dw-solid" d={circlePath(-8, 0, 15)} />
    <path class="dw-ink" d={`${circlePath(-8, 0, 7)}${box(7 + gap, -15, 10, 30)}`} />
  </>
);
