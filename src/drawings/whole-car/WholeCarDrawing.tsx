import type { JSX } from 'preact';
import { still } from '../../ui/still.ts';
import { clamp01, roundPlace, type Temp } from '../scale.ts';
import { Frame } from '../parts/frame.tsx';
import { circlePath, gearPath } from '../parts/gear.ts';
import { box, Cut, Oil } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { Spring } from '../parts/spring.tsx';
import { Tank } from '../parts/tank.tsx';
import { NamedBox } from '../parts/wire.tsx';
import { words as parts } from '../parts/hydraulic-words.en.ts';
import { describeWholeCar } from './state.ts';
import type { FaultPlace, Grip, WholeCarState } from './state.ts';
import { words } from './words.en.ts';

/** Share of full scale at which the piston has come to the plates: what its spring holds back. */
const SPRING_SHARE = 0.106;
/** Drawn at a twelfth of its speed, an idling engine turns once a second and the eye can follow it. */
const SLOWED = 1 / 12;
/** Drawing units that a liter moves the dashes on. */
const UNITS_PER_L = 900;
/** Where the split of the seal drips. */
const SEAL_DRIP = 171;
/** The dial of the gauge runs over three quarters of a turn. */
const DIAL = { from: -225, sweep: 270 };

/** A name of two lines at most, broken where it is most even. */
function inTwo(text: string): readonly string[] {
  const words = text.split(' ');
  const longest = (at: number) =>
    Math.max(words.slice(0, at).join(' ').length, words.slice(at).join(' ').length);
  const breaks = words.map((_, i) => i + 1).sort((a, b) => longest(a) - longest(b));
  const at = text.length > 15 ? (breaks[0] ?? words.length) : words.length;
  return [words.slice(0, at).join(' '), words.slice(at).join(' ')].filter((line) => line !== '');
}

const degrees = (turns: number): number => roundPlace((turns * SLOWED * 360) % 360);

const PLACES: Readonly<Record<FaultPlace, readonly [x: number, y: number, r: number]>> = {
  sump: [60, 136, 12],
  suction: [22, 122, 10],
  pump: [22, 97, 19],
  regulator: [98, 108, 15],
  feed: [134, 96, 12],
  seal: [171, 96, 19],
  riser: [210, 82, 13],
  piston: [213, 30, 13],
  plates: [240, 30, 22],
  turbine: [120, 30, 22],
};

/**
 * The whole car in one lane: engine, converter, clutch and wheels above; sump, pump, regulator, feed
 * hole and seal below; gauge and controller to the right. Everything that turns or flows stands where
 * the moment given has brought it, so the picture moves as time does and stops when time stops.
 */
export function WholeCarDrawing({ id, state }: { id: string; state: WholeCarState }): JSX.Element {
  const { printed, pressures, turns, temp } = state;
  const line = roundPlace(clamp01(pressures.line));
  const clutch = roundPlace(clamp01(pressures.clutch));
  // Rings, piston seal and open ports lie beyond the seal.
  const drip = state.fault === 'seal' ? SEAL_DRIP : 210;
  const [x, y, r] = state.fault === null ? [0, 0, 0] : PLACES[state.fault];
  return (
    <Frame
      id={id}
      width={390}
      height={150}
      title={words.title({ temp: printed.fluid })}
      desc={describeWholeCar(state)}
    >
      <Ground temp={temp} />
      <Passages id={id} line={line} clutch={clutch} split={state.fault === 'seal'} />
      <path class="dw-line" d="M40 30H102M138 30H222M264 30H278" />
      <path class="dw-line dw-off" d="M22 48V80" />
      <Wheel cx={22} cy={30} turned={degrees(turns.engine)} blades={5} />
      <Wheel cx={120} cy={30} turned={degrees(turns.turbine)} blades={9} bent />
      <Pack id={id} clutch={clutch} travel={roundPlace(clamp01(pressures.clutch / SPRING_SHARE))} />
      <Wheel cx={296} cy={30} turned={degrees(turns.wheels)} blades={5} tire />
      <Pawl down={state.parked} />
      <Gear turned={degrees(turns.engine)} />
      <Dashes d="M46 96H196" moved={state.fedL} kind={temp} />
      <Dashes
        d={`M${drip} 104V128`}
        moved={state.leakedL}
        kind={temp}
        width={state.leakLmin < 0.02 ? 0 : Math.min(7, 2 + state.leakLmin * 1.6)}
      />
      <Gauge clutch={clutch} wanted={roundPlace(clamp01(pressures.wanted))} />
      <Grips id={id} grip={state.grip} />
      <Said {...printed} temp={temp} drip={drip} />
      <g class="car-controller">
        <NamedBox
          x={268}
          y={114}
          width={120}
          height={35}
          lines={inTwo(state.controller)}
          strong={state.failSafe}
        />
      </g>
      {state.fault !== null && <path class="dw-mark" d={circlePath(x, y, r)} />}
    </Frame>
  );
}

const Ground = still(({ temp }: Pick<WholeCarState, 'temp'>) => (
  <Tank x={4} y={122} width={256} height={26} level={4} temp={temp} />
));

/** From the pump to the clutch; what stands at line pressure is tinted by it, what lies behind the feed hole by the clutch's. */
const Passages = still(
  ({ id, line, clutch, split }: { id: string; line: number; clutch: number; split: boolean }) => (
    <>
      <path class="dw-line" d="M18 112V134M26 112V134" />
      <Oil id={id} d={box(36, 90, 96, 12)} pressure={line} />
      <Oil id={id} d={`${box(136, 90, 80, 12)}${box(204, 50, 12, 40)}`} pressure={clutch} />
      <path class="dw-line" d="M36 90H204V50M36 102H88M108 102H216V50" />
      {/* regulator: a spool under the line, on its spring */}
      <path class="dw-line" d="M88 102V120M108 102V120" />
      <path class="dw-solid" d={box(89, 104, 18, 6)} />
      <Spring x1={98} y1={110} x2={98} y2={120} radius={6} coils={2} />
      {/* feed hole */}
      <path class="dw-ink" d={`${box(131, 89, 6, 5)}${box(131, 98, 6, 5)}`} />
      {/* transfer seal: rubber above and below the passage, split at its foot */}
      <path class="dw-soft" d={box(158, 81, 26, 9)} />
      <path
        class="dw-soft"
        d={split ? `${box(158, 102, 10, 9)}${box(174, 102, 10, 9)}` : box(158, 102, 26, 9)}
      />
    </>
  ),
);

/** Something that turns, with one blade inked so that the eye can follow it. */
const Wheel = still(
  ({
    cx,
    cy,
    turned,
    blades,
    bent = false,
    tire = false,
  }: {
    cx: number;
    cy: number;
    turned: number;
    blades: number;
    bent?: boolean;
    tire?: boolean;
  }) => (
    <g transform={`translate(${cx} ${cy}) rotate(${turned})`}>
      <path class="dw-solid" d={circlePath(0, 0, 18)} />
      {tire && <path class="dw-line" d={circlePath(0, 0, 13)} />}
      {Array.from({ length: blades }, (_, i) => (
        <path
          key={i}
          class={i === 0 ? 'dw-line dw-live' : 'dw-line'}
          transform={`rotate(${roundPlace((i * 360) / blades)})`}
          d={bent ? 'M0 -5Q7 -10 2 -17' : 'M0 -5V-17'}
        />
      ))}
      <path class="dw-solid" d={circlePath(0, 0, 5)} />
    </g>
  ),
);

const Gear = still(({ turned }: { turned: number }) => (
  <>
    <path class="dw-solid" d={circlePath(22, 96, 16)} />
    <g transform={`translate(22 96) rotate(${turned})`}>
      <path class="dw-soft" d={gearPath(0, 0, 8, 13, 9)} />
      <path class="dw-ink" d={box(-1, -12, 2, 8)} />
    </g>
  </>
));

/** Piston and plates: the gaps close as the piston comes, and what pushes it is tinted by its pressure. */
const Pack = still(({ id, clutch, travel }: { id: string; clutch: number; travel: number }) => {
  const piston = roundPlace(211 + 5 * travel);
  const gap = 2.4 * (1 - travel);
  return (
    <>
      <Oil id={id} d={box(204, 6, piston - 204, 48)} pressure={clutch} />
      <Cut id={id} d="M198 2H264V7H204V50H198z" />
      <path class="dw-solid" d={box(piston, 8, 6, 44)} />
      {Array.from({ length: 6 }, (_, i) => {
        const at = roundPlace(piston + 7 + i * (5.4 + gap));
        return i % 2 === 0 ? (
          <path key={i} class="dw-soft" d={box(at, 12, 4.6, 36)} />
        ) : (
          <path key={i} class="dw-solid" d={box(at, 8, 4.6, 44)} />
        );
      })}
    </>
  );
});

/** The park pawl above the wheels: in its notch, or lifted out of it. */
const Pawl = still(({ down }: { down: boolean }) => (
  <g transform={down ? 'rotate(0 326 6)' : 'rotate(16 326 6)'}>
    <path class={down ? 'dw-ink' : 'dw-solid'} d="M326 3L296 6L292 15L300 15L304 11L326 9z" />
    <path class="dw-solid" d={circlePath(326, 6, 3)} />
  </g>
));

/** Fluid on its way, by how much has gone by since the start. */
const Dashes = still(
  ({ d, moved, kind, width = 3 }: { d: string; moved: number; kind: string; width?: number }) =>
    width === 0 ? null : (
      <path
        class={`dw-moved dw-moved-${kind}`}
        stroke-width={roundPlace(width)}
        stroke-dashoffset={roundPlace(-((moved * UNITS_PER_L) % 12))}
        d={d}
      />
    ),
);

const Gauge = still(({ clutch, wanted }: { clutch: number; wanted: number }) => {
  const turn = (share: number) => roundPlace(DIAL.from + DIAL.sweep * share);
  return (
    <>
      <path class="dw-line" d="M216 96H228" />
      <path class="dw-solid" d={circlePath(246, 90, 19)} />
      <g transform="translate(246 90)">
        <path class="dw-line dw-live" transform={`rotate(${turn(wanted)})`} d="M13 0H19" />
        <path class="dw-line dw-live" transform={`rotate(${turn(clutch)})`} d="M-4 0H14" />
        <path class="dw-ink" d={circlePath(0, 0, 3)} />
      </g>
    </>
  );
});

const Grips = still(({ id, grip }: { id: string; grip: Grip }) => (
  <g class="car-grip">
    <rect
      class={grip === 'holds' ? 'dw-tag-yes' : grip === 'slips' ? 'dw-cut' : 'dw-solid'}
      fill={grip === 'slips' ? `url(#${id}-cut)` : undefined}
      x="270"
      y="58"
      width="66"
      height="21"
      rx="2"
    />
    <text
      class={grip === 'holds' ? 'dw-tag-yes-text' : 'dw-text dw-strong'}
      x="303"
      y="73"
      text-anchor="middle"
    >
      {words.grip[grip]}
    </text>
  </g>
));

/** The style sheet moves these by their order where a lane is low. */
const Said = still(
  ({
    engine,
    turbine,
    wheels,
    line,
    clutch,
    wanted,
    leak,
    fluid,
    temp,
    drip,
  }: WholeCarState['printed'] & { temp: Temp; drip: number }) => (
    <g class="car-said">
      <Label x={43} y={22} lines={[words.engine]} />
      <Label x={31} y={57} lines={[`*${engine}`]} />
      <Label x={141} y={22} lines={[words.turbine]} />
      <Label x={130} y={57} lines={[`*${turbine}`]} />
      <Label x={332} y={22} lines={[words.wheels]} />
      <Label x={320} y={47} lines={[`*${wheels}`]} />
      <Label x={44} y={84} lines={[parts.lineAt(line)]} />
      <Label x={44} y={117} lines={[`~${parts.pump}`]} />
      <Label x={272} y={94} lines={[`*${parts.clutchAt(clutch)}`]} />
      <Label x={272} y={109} lines={[`~${words.wanted({ pressure: wanted })}`]} />
      <Label x={36} y={142} lines={[`*${words.sump[temp]({ temp: fluid })}`]} />
      <Label
        x={drip === SEAL_DRIP ? drip + 7 : drip - 7}
        y={142}
        anchor={drip === SEAL_DRIP ? 'start' : 'end'}
        lines={[leak]}
      />
    </g>
  ),
);
