import type { JSX } from 'preact';
import { Flow } from '../parts/flow.tsx';
import { Frame } from '../parts/frame.tsx';
import { box, Cut, Oil } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { PumpGears } from '../parts/pump-gears.tsx';
import { Spool } from '../parts/spool.tsx';
import { Spring } from '../parts/spring.tsx';
import { Filter, Tank } from '../parts/tank.tsx';
import { words as parts } from '../parts/hydraulic-words.en.ts';
import { clamp01 } from '../scale.ts';
import { describePumpRegulator, type PumpRegulatorState } from './state.ts';
import { words } from './words.en.ts';

export function PumpRegulatorDrawing({
  id,
  state,
}: {
  id: string;
  state: PumpRegulatorState;
}): JSX.Element {
  const { flows, temp, labels } = state;
  const line = clamp01(state.line);
  const s = 14 * clamp01(flows.leftOver / Math.max(flows.pump, 0.01));
  const open = s > 0.3;
  return (
    <Frame id={id} width={390} height={372} title={words.title} desc={describePumpRegulator(state)}>
      <Tank x={8} y={310} width={374} height={56} level={10} temp={temp} />
      <Filter x={14} y={334} width={56} height={20} />
      <Oil id={id} d="M35 334V176h16v158z" pressure={0} />
      <path class="dw-line" d="M35 334V176M51 334V176" />

      <Oil
        id={id}
        d={`${box(140, 84, 226, 16)}${box(206, 100, 10, 72)}${box(248, 100, 14, 72)}`}
        pressure={line}
      />
      <path class="dw-line" d="M140 84H366M140 100H206V156M216 156V100H248V156M262 156V100H366" />

      <Cut
        id={id}
        d={`M190 156H382V232H190z${box(200, 172, 172, 30)}${box(206, 156, 10, 16)}${box(248, 156, 14, 16)}${box(276, 202, 14, 30)}`}
      />
      <path class="dw-void" d={box(200, 172, 172, 30)} />
      <Oil
        id={id}
        d={`${box(200, 172, 16 + s, 30)}${box(206, 156, 10, 16)}${box(232 + s, 172, 44, 30)}${box(248, 156, 14, 16)}`}
        pressure={line}
      />
      <Oil id={id} d={box(276, 202, 14, 66)} pressure={open ? 0.08 : 0} />
      <Spring x1={312 + s} y1={187} x2={371} y2={187} radius={11} coils={5} />
      <Spool
        x={0}
        y={172}
        bore={30}
        axis="x"
        lands={[
          { at: 216 + s, length: 16 },
          { at: 276 + s, length: 36 },
        ]}
      />
      <path
        class="dw-line"
        d="M206 156V172H200V202H276V268M290 268V202H372V172H262V156M248 156V172H216V156"
      />

      <PumpGears id={id} cx={82} cy={116} radius={66} delivery={line} />
      <path class="dw-line" d="M44 35A90 90 0 0 1 120 35" />
      <path class="dw-head" d="M40 37l12 -9l1 11z" />
      <path class="dw-solid" d={box(200, 268, 174, 24)} />

      <Flow points="43,330 43,186" lmin={flows.pump} temp={temp} />
      <Flow points="152,92 200,92" lmin={flows.pump} temp={temp} />
      <Flow points="270,92 384,92" lmin={flows.toClutches} temp={temp} />
      <Flow points="255,104 255,187 283,187 283,266" lmin={flows.leftOver} temp={temp} />
      <Flow points="287,293 287,318" lmin={flows.leftOver} temp={temp} />

      <text class="dw-text" x="82" y="18" text-anchor="middle">
        {words.turns}
      </text>
      <Label
        x={196}
        y={22}
        lines={[`*${parts.lineAt(labels.line)}`, words.toClutches]}
        to="230,44 230,90"
      />
      <Label x={100} y={208} lines={[parts.pump, `~${labels.pump}`]} to="118,192 118,168" />
      <text class="dw-text" x="372" y="223" text-anchor="end">
        {parts.regulator}
      </text>
      <Label x={304} y={130} lines={[parts.spring]} to="330,136 340,180" />
      <Label x={186} y={252} anchor="end" lines={words.pushes} to="176,236 208,190" />
      <Label x={300} y={252} lines={[open ? labels.leftOver : words.shut]} />
      <text class="dw-text" x="287" y="285" text-anchor="middle">
        {parts.beyond.join('')}
      </text>
      <Label x={62} y={290} lines={[words.crescent]} to="72,276 82,162" />
      <Label x={78} y={350} lines={[parts.filter]} to="76,346 64,344" />
      <Label x={376} y={350} anchor="end" lines={[parts.sump[temp]]} />
    </Frame>
  );
}
