import type { JSX } from 'preact';
import { Kept, still } from '../../ui/still.ts';
import { clamp01, flowStep, roundPlace, type Temp } from '../scale.ts';
import { Flow } from '../parts/flow.tsx';
import { Frame } from '../parts/frame.tsx';
import { box, Cut, Oil } from '../parts/hatch.tsx';
import { Knob } from '../parts/knob.tsx';
import { Label, Verdict } from '../parts/label.tsx';
import { Plates } from '../parts/plates.tsx';
import { PumpGears } from '../parts/pump-gears.tsx';
import { crackWidth, TubeSeal } from '../parts/seal.tsx';
import { Spool } from '../parts/spool.tsx';
import { Spring } from '../parts/spring.tsx';
import { Filter, Tank } from '../parts/tank.tsx';
import { words as parts } from '../parts/hydraulic-words.en.ts';
import { describeCircuit, type CircuitState } from './state.ts';
import { words } from './words.en.ts';

/** Stroke at which the piston starts to squeeze: below this share of full scale its spring still holds it back. */
const SPRING_SHARE = 0.106;

/** The one clutch circuit, from the sump to the plates: valve body below, case and rotating clutch above the joint. */
export function CircuitDrawing({
  id,
  state,
  onCrack,
}: {
  id: string;
  state: CircuitState;
  /** Given the height that a drag of the crack has come to [mm], in hundredths; whoever takes it keeps it in range. */
  onCrack?: ((mm: number) => void) | undefined;
}): JSX.Element {
  const { pressures, flows, temp, holds, labels } = state;
  // To a hundredth: less cannot be seen, and a part whose numbers have not changed is not drawn again.
  const line = roundPlace(clamp01(pressures.line));
  const clutch = roundPlace(clamp01(pressures.clutch));
  const travel = roundPlace(clamp01(pressures.clutch / SPRING_SHARE));
  const left = roundPlace(clamp01(flows.leftOver / Math.max(flows.pump, 0.01)));
  const feedOpen = roundPlace(clamp01(state.feedOpen ?? flows.feed / 4));

  return (
    <Frame id={id} width={390} height={382} title={words.title} desc={describeCircuit(state)}>
      <g transform="translate(0 22)">
        <Sump {...{ id, temp }} />
        <ValveBody {...{ id, line, left }} />
        <FeedValve {...{ id, clutch, feedOpen }} />
        <Joint {...{ id, clutch, crackMm: state.crackMm }} />
        <Drum {...{ id, clutch, travel }} />
        <Gears {...{ id }} />
        <Streams flows={flows} temp={temp} />
        <Names temp={temp} />
        <Label
          x={316}
          y={-2}
          anchor="end"
          lines={[`*${parts.clutchAt(labels.clutch)}`]}
          to="268,3 272,70"
        />
        {onCrack && <CrackGrip crackMm={state.crackMm} onCrack={onCrack} />}
        <Verdict id={id} x={322} y={-18} holds={holds} />
        <Label x={8} y={148} lines={[`*${parts.lineAt(labels.line)}`]} to="60,153 108,211" />
        <Label x={8} y={104} lines={[parts.seal]} to="88,100 206,152" />
        <g class="dw-names">
          <Label
            x={8}
            y={121}
            lines={[`~${state.crackMm > 0 ? words.crack(labels.width) : words.whole}`]}
          />
        </g>
        {state.crackMm > 0 && (
          <g class="dw-leak">
            <Label x={384} y={154} anchor="end" lines={[`*${words.leaks(labels.crack)}`]} />
          </g>
        )}
      </g>
    </Frame>
  );
}

/** Drawing units that the pointer moves for a millimeter: ten times what the crack itself is drawn with. */
const UNITS_PER_MM = 200;

/** Takes hold of the split and opens it, pulled down. */
const CrackGrip = ({ crackMm, onCrack }: { crackMm: number; onCrack: (mm: number) => void }) => (
  <Knob
    x={244}
    y={163}
    reach={box(182, 130, 86, 68)}
    value={crackMm}
    onPull={(mm, down) => onCrack(Math.round((mm + down / UNITS_PER_MM) * 100) / 100)}
  />
);

interface PartProps {
  id: string;
  temp: Temp;
  /** Shares of full scale. */
  line: number;
  clutch: number;
  /** Shares of their way: the regulator's port, the feed valve, the piston. */
  left: number;
  feedOpen: number;
  travel: number;
  crackMm: number;
}

const Gears = still(({ id }: { id: string }) => (
  <>
    <PumpGears id={id} cx={47} cy={213} radius={34} />
    <path class="dw-solid" d={box(58, 283, 160, 21)} />
  </>
));

const Sump = still(function Sump({ id, temp }: Pick<PartProps, 'id' | 'temp'>): JSX.Element {
  return (
    <>
      <Tank x={8} y={304} width={374} height={52} level={10} temp={temp} />
      <Filter x={20} y={326} width={56} height={20} />
      <Oil id={id} d="M40 326V246h14v80z" pressure={0} />
      <path class="dw-line" d="M40 326V246M54 326V246" />
    </>
  );
});

/** Line, its clearances, and the regulator, which uncovers its port by as much as is left over. */
const ValveBody = still(function ValveBody({
  id,
  line,
  left,
}: Pick<PartProps, 'id' | 'line' | 'left'>): JSX.Element {
  return (
    <>
      <Cut
        id={id}
        d={`M100 172H366V276H100z${box(100, 206, 168, 14)}${box(128, 220, 24, 50)}${box(152, 226, 36, 12)}M176 238h12v38h-12z${box(268, 182, 24, 88)}${box(211, 184, 57, 12)}M211 172h14v12h-14z`}
      />
      <Oil id={id} d="M78 206H268V220H78z" pressure={line} />
      <path class="dw-line" d="M78 206H268M268 220H152M128 220H78" />
      {/* the line's own clearances, lumped: a thin slot to the sump */}
      <Oil id={id} d={box(229, 220, 4, 56)} pressure={line * 0.5} />
      <path class="dw-line" d="M229 220V276M233 220V276" />
      <path class="dw-void" d={box(128, 220, 24, 50)} />
      <Oil id={id} d={`${box(152, 226, 36, 12)}${box(176, 238, 12, 38)}`} pressure={0.08} />
      <Oil id={id} d={box(128, 219, 24, 5 + left * 13)} pressure={line} />
      <Spring x1={140} y1={240 + left * 13} x2={140} y2={270} radius={8} coils={4} />
      <Spool x={128} y={0} bore={24} axis="y" lands={[{ at: 223 + left * 13, length: 17 }]} />
      <path class="dw-line" d="M128 220V270H152V238H176V276M188 276V226H152V220" />
    </>
  );
});

/** Feed valve and hole, up to the joint. */
const FeedValve = still(function FeedValve({
  id,
  clutch,
  feedOpen,
}: Pick<PartProps, 'id' | 'clutch' | 'feedOpen'>): JSX.Element {
  return (
    <>
      <path class="dw-void" d={box(268, 182, 24, 88)} />
      <Oil
        id={id}
        d={`M268 182h24v${roundPlace(feedOpen * 12 + 26)}h-24z${box(225, 184, 44, 12)}${box(211, 172, 14, 24)}`}
        pressure={clutch}
      />
      <Spring x1={280} y1={236 + feedOpen * 12} x2={280} y2={270} radius={8} coils={4} />
      <Spool
        x={268}
        y={0}
        bore={24}
        axis="y"
        lands={[
          { at: 183, length: 1 },
          { at: 206 + feedOpen * 12, length: 28 },
        ]}
      />
      <path class="dw-line" d="M268 196V206M268 220V270H292V182H268V184H225V172M211 172V196H268" />
      <path class="dw-ink" d="M241 184h6v4h-6zM241 192h6v4h-6z" />
    </>
  );
});

/** Case wall, its drilling, and the seal across the joint. */
const Joint = still(function Joint({
  id,
  clutch,
  crackMm,
}: Pick<PartProps, 'id' | 'clutch' | 'crackMm'>): JSX.Element {
  return (
    <>
      <Cut id={id} d="M168 154V140H186V47H250V140H268V154H235V142H201V154zM211 142V47H225V142z" />
      <Oil id={id} d="M211 184V47h14v137z" pressure={clutch} />
      <path class="dw-line" d="M211 142V47M225 142V47" />
      <TubeSeal
        cx={218}
        top={143}
        bottom={179}
        bore={14}
        wall={9}
        split={crackWidth(crackMm, 20)}
        splitY={163}
      />
    </>
  );
});

/** Rotating parts, lower half: shaft with rings, drum, piston, plates. */
const Drum = still(function Drum({
  id,
  clutch,
  travel,
}: Pick<PartProps, 'id' | 'clutch' | 'travel'>): JSX.Element {
  const px = roundPlace(280 + 8 * travel);
  return (
    <>
      <Cut
        id={id}
        other
        d={`M150 18H384V44H150z${box(208, 32, 20, 12)}${box(212, 26, 62, 8)}${box(264, 26, 12, 18)}`}
      />
      <Oil id={id} d="M208 47V34h4V26H276V50H264V34H228V47z" pressure={clutch} />
      <path class="dw-line" d="M208 44V34h4V26H276V44M264 44V34H228V44" />
      <path class="dw-ink" d={`${box(195, 37, 8, 10)}${box(233, 37, 8, 10)}`} />
      <path class="dw-centre" d="M140 18H390" />
      <Oil id={id} d={`M262 52H${px}V120H262z`} pressure={clutch} />
      <Cut id={id} d="M254 44H264V50H262V120H380V128H254zM276 44H384V50H276z" />
      <Cut id={id} other d={`M${px} 52h9v36h6v20h-6v12h-9z`} />
      <Spring x1={px + 9} y1={61} x2={320} y2={61} radius={6} coils={5} />
      <path class="dw-solid" d="M320 50h4v20h-4z" />
      <Plates
        id={id}
        x={px + 16}
        hubY={84}
        drumY={120}
        pairs={4}
        thickness={7}
        gap={1.4 * (1 - travel)}
      />
      <Cut id={id} d="M366 92h8v28h-8z" />
      <Cut id={id} other d="M308 78H384V84H308z" />
    </>
  );
});

/** All the flows. Each changes its look in steps only, see `flowStep`. */
function Streams({ flows, temp }: Pick<CircuitState, 'flows' | 'temp'>): JSX.Element {
  const lmin = [
    flows.pump,
    flows.feed,
    flows.leftOver,
    flows.clearances,
    flows.rings,
    flows.rings / 2,
    flows.crack,
  ];
  const draw = () => {
    const [pump = 0, feed = 0, left = 0, clearances = 0, rings = 0, ring = 0, crack = 0] = lmin;
    return (
      <>
        <Flow points="47,324 47,252" lmin={pump} temp={temp} />
        <Flow points="82,213 124,213" lmin={pump} temp={temp} />
        <Flow points="156,213 264,213" lmin={feed} temp={temp} />
        <Flow points="154,232 182,232 182,282" lmin={left} temp={temp} />
        <Flow points="112,305 112,315" lmin={left} temp={temp} />
        <Flow points="231,224 231,312" lmin={clearances} temp={temp} />
        <Flow points="266,190 218,190 218,174" lmin={feed} temp={temp} head={false} />
        <Flow points="218,152 218,52" lmin={rings} temp={temp} />
        <Flow points="192,51 177,51 177,136" lmin={ring} temp={temp} />
        <Flow points="230,163 377,163 377,312" lmin={crack} temp={temp} />
      </>
    );
  };
  return <Kept by={[lmin.map(flowStep).join(), temp]} draw={draw} />;
}

const Names = still(function Names({ temp }: Pick<PartProps, 'temp'>): JSX.Element {
  return (
    <>
      <Label x={8} y={173} lines={[parts.pump]} to="30,177 36,192" />
      <Label x={374} y={342} anchor="end" lines={[parts.sump[temp]]} />
      <text class="dw-text" x="138" y="298" text-anchor="middle">
        <tspan class="dw-names">{parts.beyond[0]}</tspan>
        {parts.beyond[1]}
        <tspan class="dw-names">{parts.beyond[2]}</tspan>
      </text>
      <g class="dw-names">
        <Label x={8} y={20} lines={[words.rings]} to="90,21 198,43" />
        <Label x={8} y={58} lines={[parts.case]} to="43,54 193,78" />
        <Label x={58} y={266} lines={[parts.regulator]} to="122,260 140,242" />
        <Label x={302} y={196} lines={[words.hole]} to="300,188 296,177 244,177 244,186" />
        <Label x={302} y={226} lines={[words.valve]} to="300,222 284,222" />
        <Label x={240} y={295} lines={[words.clearances]} />
        <Label x={84} y={342} lines={[parts.filter]} to="82,338 70,336" />
      </g>
    </>
  );
});
