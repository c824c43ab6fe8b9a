import type { JSX } from 'preact';
import { Flow } from '../parts/flow.tsx';
import { Frame } from '../parts/frame.tsx';
import { circlePath } from '../parts/gear.ts';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { clamp01, roundPlace } from '../scale.ts';
import { describeAirRig, worstLeak, type AirLeak, type AirRigState } from './state.ts';
import { words } from './words.en.ts';

/** Dashes as quick for a gram a second as for so many liters of fluid a minute. */
const LMIN_PER_GRAM = 6;
/** The needle's way from nothing to all [degrees]. */
const SWEEP = { from: -135, over: 270 };
/** How far the piston goes over. */
const STROKE = 7;

const wayOut: Record<AirLeak, readonly string[]> = {
  rings: ['204,98 176,98', '262,98 290,98'],
  openPort: ['254,58 254,14'],
  pistonSeal: ['318,48 318,37 352,37'],
  transferSeal: ['254,52 254,12'],
};
const bubblesAt: Record<AirLeak, readonly (readonly [number, number])[]> = {
  rings: [
    [180, 88],
    [172, 78],
    [184, 72],
    [284, 88],
    [290, 80],
  ],
  openPort: [
    [246, 18],
    [262, 12],
    [254, 4],
  ],
  pistonSeal: [
    [346, 46],
    [354, 54],
    [348, 62],
  ],
  transferSeal: [
    [246, 26],
    [262, 18],
    [254, 8],
  ],
};

function Dial({ x, y, radius, share }: { x: number; y: number; radius: number; share: number }) {
  const turn = roundPlace(SWEEP.from + SWEEP.over * clamp01(share));
  return (
    <g transform={`translate(${x} ${y})`}>
      <path class="dw-solid" d={circlePath(0, 0, radius)} />
      {[0, 0.25, 0.5, 0.75, 1].map((tick) => (
        <path
          key={tick}
          class="dw-line"
          d={`M0 ${3 - radius}v5`}
          transform={`rotate(${SWEEP.from + SWEEP.over * tick})`}
        />
      ))}
      <path class="dw-line dw-live" d={`M0 4V${7 - radius}`} transform={`rotate(${turn})`} />
      <path class="dw-ink" d={circlePath(0, 0, 3.5)} />
    </g>
  );
}

function Circuit({ id, state }: { id: string; state: AirRigState }): JSX.Element {
  const { leaks, wet } = state;
  const x = state.applied ? STROKE : 0;
  return (
    <g>
      <Cut
        id={id}
        d={`M196 26H276V94H196z${box(196, 55, 62, 10)}${box(228, 65, 10, 29)}${box(249, 26, 10, 29)}`}
      />
      <Cut
        id={id}
        other
        d={`M176 102H298V18H384V28H312V142H176z${box(228, 102, 10, 16)}${box(228, 118, 84, 9)}${box(206, 102, 13, 12)}${box(247, 102, 13, 12)}`}
      />
      {wet && (
        <path
          class="dw-oil"
          fill-opacity="0.3"
          d={`${box(228, 119, 84, 8)}${box(312, 112, 6 + x, 30)}`}
        />
      )}
      {/* rings in their grooves, piston with its seals, spring, plates, snap ring */}
      <path class="dw-soft" d={`${box(207, 95, 11, 16)}${box(248, 95, 11, 16)}`} />
      <path class="dw-solid" d={box(320 + x, 34, 13, 96)} />
      <path class="dw-soft" d={`${box(320 + x, 28, 13, 8)}${box(320 + x, 128, 13, 8)}`} />
      <path class="dw-line" d={`M${333 + x} 112l5 -5l5 10l5 -10l5 10l5 -10l4 5M372 100V124`} />
      <path class="dw-line dw-live" d="M346 46V92M352 30V76M358 46V92M364 30V76" />
      <path class="dw-ink" d={box(369, 28, 6, 8)} />
      <path class="dw-centre" d="M168 142H390" />
      {leaks.openPort === undefined && <path class="dw-solid" d={circlePath(254, 40, 7)} />}
    </g>
  );
}

function Seal({ id, state }: { id: string; state: AirRigState }): JSX.Element {
  const split = state.leaks.transferSeal !== undefined;
  return (
    <g>
      <Cut id={id} d={`M196 30H216V92H196z${box(196, 55, 20, 10)}`} />
      <Cut id={id} d={box(292, 30, 16, 62)} />
      <path class="dw-soft" d="M216 65H292V84Q254 92 216 84z" />
      <path
        class="dw-soft"
        d={
          split
            ? 'M216 55V36Q234 31 250 31L252 55zM292 55V36Q274 31 258 31L256 55z'
            : 'M216 55V36Q254 28 292 36V55z'
        }
      />
      {state.wet && <path class="dw-oil" fill-opacity="0.3" d={box(216, 60, 76, 5)} />}
    </g>
  );
}

/** From supply to circuit: what comes in through the hole, what stays, and where the rest gets away. */
export function AirRigDrawing({ id, state }: { id: string; state: AirRigState }): JSX.Element {
  const { held, labels, leaks, wet } = state;
  const open = held !== null;
  const lost = Object.values(leaks).reduce((sum, flow) => sum + flow, 0);
  const worst = worstLeak(state);
  return (
    <Frame id={id} width={390} height={186} title={words.title} desc={describeAirRig(state)}>
      <path class="dw-solid" d={box(0, 54, 172, 12)} />
      <path class="dw-line" d="M26 54V44M142 54V54" />
      <Dial x={26} y={26} radius={18} share={0.6} />
      <path class={open ? 'dw-solid' : 'dw-ink'} d="M52 50L72 70V50L52 70z" />
      <path class="dw-line" d="M62 60V44M55 44H69" />
      <Cut id={id} d={`${box(92, 46, 8, 12)}${box(92, 62, 8, 12)}`} />
      <Dial x={138} y={28} radius={26} share={(held ?? 0) / 100} />
      <path class="dw-soft" d="M168 50L196 55V65L168 70z" />
      {state.part === 'circuit' ? (
        <Circuit id={id} state={state} />
      ) : (
        <Seal id={id} state={state} />
      )}
      {open && (
        <g>
          <Flow points="4,60 48,60" lmin={lost * LMIN_PER_GRAM} />
          <Flow points="104,60 192,60" lmin={lost * LMIN_PER_GRAM} head={false} />
          {(Object.entries(leaks) as [AirLeak, number][]).flatMap(([way, flow]) =>
            wayOut[way].map((points) => (
              <Flow
                key={points}
                points={points}
                lmin={(flow / wayOut[way].length) * LMIN_PER_GRAM}
              />
            )),
          )}
          {wet &&
            worst !== null &&
            bubblesAt[worst].map(([x, y], i) => (
              <path key={i} class="dw-solid" d={circlePath(x, y, 2.5 + (i % 3))} />
            ))}
        </g>
      )}
      <Label x={0} y={92} lines={[`*${labels.supply}`, words.supply]} />
      <Label
        x={114}
        y={115}
        anchor="middle"
        lines={[`*${labels.hole}`, words.hole]}
        to="106,100 96,80"
      />
      <Label x={166} y={16} lines={open ? [`*${labels.held}`, words.held] : [`*${words.shut}`]} />
      {state.part === 'circuit' ? (
        <g>
          <Label x={274} y={13} lines={[words.port]} to="272,10 264,14 258,34" />
          <Label x={200} y={164} lines={[words.rings]} to="212,150 212,108" />
          <Label
            x={388}
            y={178}
            anchor="end"
            lines={[words.pistonSeal]}
            to={`330,164 ${326 + (state.applied ? STROKE : 0)},134`}
          />
          <text class="dw-text" x={262} y={164} text-anchor="middle">
            {words.shaft}
          </text>
        </g>
      ) : (
        <g>
          <Label x={228} y={116} anchor="middle" lines={[words.seal]} to="228,102 240,80" />
          <Label x={388} y={66} anchor="end" lines={[words.plate]} to="312,61 300,61" />
        </g>
      )}
    </Frame>
  );
}
