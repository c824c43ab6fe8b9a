import type { JSX } from 'preact';
import { Flow } from '../parts/flow.tsx';
import { ForceArrow } from '../parts/force-arrow.tsx';
import { Frame } from '../parts/frame.tsx';
import { box, Cut, Oil } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { Spool } from '../parts/spool.tsx';
import { Spring } from '../parts/spring.tsx';
import { words as parts } from '../parts/hydraulic-words.en.ts';
import { clamp01 } from '../scale.ts';
import { COVERED, describeSpoolValve, openOf, type SpoolValveState } from './state.ts';
import { words } from './words.en.ts';

/** Both ends of the spool are alike, so an arrow as long as the pressure is as long as the push. */
const push = (share: number): number => 80 * clamp01(share);

export function SpoolValveDrawing({
  id,
  state,
}: {
  id: string;
  state: SpoolValveState;
}): JSX.Element {
  const { pressures: p, temp } = state;
  const open = openOf(state);
  const c = 195 + open * 20;
  const [a, b] = [c - 28, c + 28];
  return (
    <Frame id={id} width={390} height={310} title={words.title} desc={describeSpoolValve(state)}>
      <Cut
        id={id}
        d={`M14 84H376V200H14z${box(30, 118, 330, 48)}${box(147, 84, 20, 34)}${box(223, 84, 20, 34)}${box(181, 166, 28, 34)}${box(34, 84, 16, 34)}${box(334, 166, 16, 34)}`}
      />
      <path class="dw-void" d={box(30, 118, 330, 48)} />
      <Oil
        id={id}
        d={`${box(30, 118, a - 52 - 30, 48)}${box(34, 84, 16, 34)}`}
        pressure={p.command}
      />
      <Oil
        id={id}
        d={`${box(a, 118, 56, 48)}${box(181, 166, 28, 74)}${box(209, 218, 141, 14)}${box(334, 166, 16, 52)}${box(b + 52, 118, 360 - b - 52, 48)}`}
        pressure={p.clutch}
      />
      <Oil id={id} d={box(223, 52, 20, 66)} pressure={p.line} />
      <Oil id={id} d={box(147, 84, 20, 34)} pressure={open < -COVERED ? p.clutch * 0.3 : 0} />
      <Spring x1={b + 54} y1={142} x2={359} y2={142} radius={17} coils={5} />
      <Spool
        x={0}
        y={118}
        bore={48}
        axis="x"
        lands={[
          { at: a - 52, length: 52 },
          { at: b, length: 52 },
        ]}
      />
      <path
        class="dw-line"
        d="M34 84V118H30V166H181V240M209 240V232H350V166H360V118H243V52M223 52V118H167V84M147 84V118H50V84M209 166V218H334V166H209"
      />
      <path class="dw-ink" d={`${box(268, 218, 8, 4)}${box(268, 228, 8, 4)}`} />

      <Flow
        points={`233,56 233,124 ${Math.max(205, c)},142 195,156 195,250`}
        lmin={open > COVERED ? state.flow : 0}
        temp={temp}
      />
      <Flow
        points={`195,240 195,156 ${Math.min(185, c)},142 157,124 157,76`}
        lmin={open < -COVERED ? state.flow : 0}
        temp={temp}
      />
      <ForceArrow x={a - 52 - push(p.command)} y={142} length={push(p.command)} />
      <ForceArrow x={b + 52 + push(p.clutch)} y={142} length={-push(p.clutch)} hollow />

      <Label x={8} y={22} lines={[words.command, `*${state.labels.command}`]} to="42,46 42,104" />
      <Label x={140} y={64} anchor="end" lines={[words.exhaust]} to="118,70 151,106" />
      <Label x={252} y={50} lines={[parts.line, `*${state.labels.line}`]} />
      <Label x={386} y={74} anchor="end" lines={[parts.spring]} to="362,80 344,130" />
      <Label x={195} y={270} anchor="middle" lines={[words.toClutch, `*${state.labels.clutch}`]} />
      <Label x={384} y={258} anchor="end" lines={words.pushesBack} to="330,242 330,226" />
      <Label x={8} y={226} lines={[words.land]} to={`24,210 ${a - 44},158`} />
      <Label x={52} y={252} lines={[words.stem]} to={`92,236 ${c - 12},143`} />
    </Frame>
  );
}
