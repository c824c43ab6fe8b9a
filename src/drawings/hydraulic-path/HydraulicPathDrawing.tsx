import type { JSX } from 'preact';
import { Flow } from '../parts/flow.tsx';
import { Frame } from '../parts/frame.tsx';
import { circlePath } from '../parts/gear.ts';
import { box, Cut, Oil } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { PumpGears } from '../parts/pump-gears.tsx';
import { Spool } from '../parts/spool.tsx';
import { Spring } from '../parts/spring.tsx';
import { Filter, Tank } from '../parts/tank.tsx';
import { words as parts } from '../parts/hydraulic-words.en.ts';
import { words as verdicts } from '../parts/words.en.ts';
import { clamp01, roundPlace, type Temp } from '../scale.ts';
import {
  CIRCUITS,
  COLUMN,
  describeHydraulicPath,
  faultPlace,
  verdictOf,
  type HydraulicPathState,
  type PathCircuitState,
} from './state.ts';
import { words } from './words.en.ts';

/** Pressure tap: where a gauge is screwed in. */
function Tap({ x, y }: { x: number; y: number }): JSX.Element {
  return (
    <g>
      <path class="dw-solid" d={circlePath(x, y, 8)} />
      <path class="dw-line" d={`M${roundPlace(x)} ${roundPlace(y)}l4 -5`} />
    </g>
  );
}

function Column({
  id,
  x,
  c,
  line,
  temp,
}: {
  id: string;
  x: number;
  c: PathCircuitState;
  line: number;
  temp: Temp;
}): JSX.Element {
  const on = c.applied;
  const lift = on && c.pressure > 0.1 ? 6 : 0;
  const plates = [0, 1, 2, 3, 4].map((i) => 36 + i * (on && lift ? 4.4 : 5.6));
  return (
    <g>
      {/* clutch: drum, plates, piston with oil below it */}
      <Oil
        id={id}
        d={`${box(x - 30, 72 - lift, 60, 10 + lift)}${box(x - 5, 82, 10, 168)}`}
        pressure={c.pressure}
      />
      <path
        class="dw-line"
        d={`M${x - 36} 30V82H${x - 5}V250M${x + 36} 30V82H${x + 5}V250M${x - 36} 30h10M${x + 36} 30h-10`}
      />
      <path
        class="dw-line"
        d={plates
          .map((y, i) => `M${x + (i % 2 ? -28 : -34)} ${roundPlace(y)}h${i % 2 ? 56 : 68}`)
          .join('')}
      />
      <path class="dw-solid" d={box(x - 30, 64 - lift, 60, 8)} />
      {/* rings: the turning half above, the still half below */}
      <path class="dw-ink" d={`${box(x - 13, 99, 8, 8)}${box(x + 5, 99, 8, 8)}`} />
      <path
        class="dw-line"
        d={`M${x - 22} 95H${x - 5}M${x + 5} 95H${x + 22}M${x - 22} 111H${x - 5}M${x + 5} 111H${x + 22}`}
      />
      <path class="dw-line" d={`M${x + 5} 132h9`} />
      <Tap x={x + 20} y={132} />
      {/* feed hole, then the valve, between line and passage */}
      <path class="dw-ink" d={`${box(x - 5, 230, 3, 6)}${box(x + 2, 230, 3, 6)}`} />
      <Oil id={id} d={box(x - 5, 274, 10, 18)} pressure={line} />
      <path class="dw-line" d={`M${x - 5} 274V290M${x + 5} 274V290`} />
      <path class="dw-solid" d={box(x - 28, 248, 56, 26)} />
      {on && <Oil id={id} d={box(x - 8, 249, 16, 24)} pressure={c.pressure} />}
      <Spring x1={x + 16 - (on ? 0 : 6)} y1={261} x2={x + 27} y2={261} radius={8} coils={3} />
      <Spool
        x={x}
        y={249}
        bore={24}
        axis="x"
        lands={
          on
            ? [
                { at: -27, length: 16 },
                { at: 8, length: 9 },
              ]
            : [
                { at: -27, length: 8 },
                { at: -7, length: 17 },
              ]
        }
      />
      <Flow points={`${x},288 ${x},120`} lmin={on ? (c.feed ?? 0) : 0} temp={temp} />
    </g>
  );
}

/** Three circuits from one line, as a map: what is shared, what is not, and where a gauge goes. */
export function HydraulicPathDrawing({
  id,
  state,
}: {
  id: string;
  state: HydraulicPathState;
}): JSX.Element {
  const { temp } = state;
  const line = clamp01(state.line.pressure);
  const open = 10 * clamp01(state.flows.leftOver / Math.max(state.flows.pump, 0.01));
  return (
    <Frame id={id} width={390} height={466} title={words.title} desc={describeHydraulicPath(state)}>
      <Tank x={8} y={408} width={374} height={52} level={10} temp={temp} />
      <Filter x={34} y={428} width={52} height={20} />
      <Oil id={id} d={box(55, 366, 10, 62)} pressure={0} />
      <path class="dw-line" d="M55 366V428M65 366V428" />
      <Oil
        id={id}
        d={`${box(55, 290, 316, 12)}${box(55, 302, 10, 30)}${box(164, 302, 24, 8 + open)}`}
        pressure={line}
      />
      <path
        class="dw-line"
        d="M65 330V302H164M188 302H371V290H305M295 290H201M191 290H97M87 290H55V330"
      />
      <PumpGears id={id} cx={60} cy={348} radius={28} />

      <Oil id={id} d={`${box(188, 318, 100, 10)}${box(278, 328, 10, 22)}`} pressure={0.08} />
      <path class="dw-line" d="M188 318H288V350M278 350V328H188" />
      <path class="dw-line" d="M164 302V368H188V302" />
      <Spring x1={176} y1={326 + open} x2={176} y2={367} radius={8} coils={4} />
      <Spool x={164} y={0} bore={24} axis="y" lands={[{ at: 312 + open, length: 14 }]} />
      <path class="dw-solid" d={`${box(226, 350, 154, 24)}${box(206, 354, 14, 12)}`} />
      <path class="dw-line" d="M188 360H206" />
      <path class="dw-solid" d="M357 46h18v14h-5v12h-8v-12h-5z" />
      <Label x={366} y={90} anchor="middle" lines={[parts.sensor]} />
      <Label x={190} y={392} lines={[words.solenoid]} to="213,380 213,364" />

      <path class="dw-centre" d="M30 172H386" />
      {CIRCUITS.map((c) => (
        <Column key={c} id={id} x={COLUMN[c]} c={state.circuits[c]} line={line} temp={temp} />
      ))}
      <path
        class="dw-soft"
        fill-rule="evenodd"
        d={`M76 158H212V186H76z${box(87, 158, 10, 28)}${box(191, 158, 10, 28)}`}
      />
      <Cut id={id} d={`${box(283, 162, 12, 20)}${box(305, 162, 12, 20)}`} />
      <path class="dw-line" d="M350 302V310" />
      <Tap x={350} y={318} />

      <Flow points="60,426 60,378" lmin={state.flows.pump} temp={temp} />
      <Flow points="78,296 158,296" lmin={state.flows.pump} temp={temp} />
      <Flow points="190,323 283,323 283,348" lmin={state.flows.leftOver} temp={temp} />
      <Flow points="330,376 330,416" lmin={state.flows.leftOver} temp={temp} />

      {CIRCUITS.map((c) => {
        const k = state.circuits[c];
        const x = COLUMN[c];
        const verdict = verdictOf(k);
        return (
          <g key={c}>
            <text class="dw-text" x={x} y="18" text-anchor="middle">
              {words.circuits[c]}
              {(verdict === 'holds' || verdict === 'slips') && (
                <tspan class="dw-strong">{` ${verdicts[verdict]}`}</tspan>
              )}
            </text>
            <text class={`dw-text${k.applied ? ' dw-strong' : ' dw-quiet'}`} x={x + 31} y="137">
              {k.label}
            </text>
          </g>
        );
      })}
      <Label x={4} y={58} lines={[words.clutch]} />
      <Label x={4} y={108} lines={[words.rings]} />
      <Label x={4} y={137} lines={[words.taps]} />
      <Label x={4} y={165} lines={[parts.case]} />
      <Label x={4} y={186} lines={words.valveBody} />
      <Label x={104} y={206} lines={[words.shared]} />
      <Label x={4} y={238} lines={[words.hole]} />
      <Label x={4} y={266} lines={[words.valve]} />
      <Label x={4} y={301} lines={[parts.line]} />
      <Label x={384} y={340} anchor="end" lines={[`*${state.line.label}`]} />
      <Label x={100} y={344} lines={[parts.pump]} />
      <Label x={96} y={392} lines={[parts.regulator]} to="150,379 168,356" />
      <text class="dw-text" x="303" y="367" text-anchor="middle">
        {parts.beyond.join('')}
      </text>
      <Label x={94} y={444} lines={[parts.filter]} />
      <Label x={376} y={444} anchor="end" lines={[parts.sump[temp]]} />
      {(state.faults ?? []).map((f) => {
        const at = faultPlace(f.id, f.circuit ?? 'forward');
        return (
          <g key={`${f.id}${f.circuit ?? ''}`}>
            <circle class="dw-mark-case" cx={at.x} cy={at.y} r={at.r ?? 17} />
            <circle class="dw-mark" cx={at.x} cy={at.y} r={at.r ?? 17} />
          </g>
        );
      })}
    </Frame>
  );
}
