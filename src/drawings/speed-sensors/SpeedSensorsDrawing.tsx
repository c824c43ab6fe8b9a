import type { JSX } from 'preact';
import { format, formatNumber } from '../../quantity/print.ts';
import { Frame } from '../parts/frame.tsx';
import { circlePath, gearPath } from '../parts/gear.ts';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { words as hydraulic } from '../parts/hydraulic-words.en.ts';
import { roundPlace } from '../scale.ts';
import { describeSpeedSensors, printed, type SpeedSensorsState } from './state.ts';
import { words } from './words.en.ts';

/** Pulses shown in one window: one for every 100 rpm, as many as can be told apart. */
const RPM_PER_PULSE = 100;
const MAX_PULSES = 24;

function pulses(x: number, y: number, width: number, rpm: number): string {
  const n = Math.min(MAX_PULSES, Math.max(0, rpm) / RPM_PER_PULSE);
  if (n < 0.2) return `M${x} ${y}h${width}`;
  const pitch = width / n;
  const parts = [`M${x} ${y}`];
  for (let i = 0; i * pitch < width - 0.01; i += 1) {
    const left = width - i * pitch;
    const half = Math.min(pitch / 2, left);
    const rest = Math.min(pitch / 2, left - half);
    parts.push(`v-22h${roundPlace(half)}v22h${roundPlace(rest)}`);
  }
  return parts.join('');
}

function Wheel({ id, cx, teeth }: { id: string; cx: number; teeth: number }): JSX.Element {
  return (
    <g>
      <Cut
        id={id}
        d={`${gearPath(cx, 122, 44, 53, teeth, -Math.PI / 2, 0.4)}${circlePath(cx, 122, 15)}`}
      />
      <path class="dw-solid" d={circlePath(cx, 122, 14)} />
      <path class="dw-line" d={`M${cx - 6} 122h12M${cx} 116v12`} />
      {/* sensor: magnet core in a coil, a hair's gap above the teeth */}
      <path class="dw-solid" d={`M${cx - 15} 26h30v24h-9v14h-12v-14h-9z`} />
      <path class="dw-soft" d={box(cx - 6, 40, 12, 24)} />
      <path class="dw-line" d={`M${cx - 6} 26v-8M${cx + 6} 26v-8`} />
    </g>
  );
}

export function SpeedSensorsDrawing({
  id,
  state,
}: {
  id: string;
  state: SpeedSensorsState;
}): JSX.Element {
  const inUnits = printed(state, format);
  const bare = printed(state, formatNumber);
  return (
    <Frame id={id} width={390} height={356} title={words.title} desc={describeSpeedSensors(state)}>
      <Wheel id={id} cx={92} teeth={24} />
      <Wheel id={id} cx={290} teeth={24} />
      <path class="dw-centre" d="M146 122H236" />
      <text class="dw-text" x="191" y="112" text-anchor="middle">
        {words.gears}
      </text>
      <text class="dw-text" x="191" y="142" text-anchor="middle">
        {words.ratio(inUnits)}
      </text>
      <Label x={4} y={18} lines={[hydraulic.sensor]} to="46,22 76,38" />
      <Label x={160} y={48} lines={words.wheel} to="158,58 126,86" />
      <Label x={386} y={18} anchor="end" lines={[hydraulic.sensor]} to="340,22 306,38" />
      <Label x={92} y={198} anchor="middle" lines={[words.turbine, `*${inUnits.turbine}`]} />
      <Label x={290} y={198} anchor="middle" lines={[words.output, `*${inUnits.output}`]} />
      <path class="dw-line" d={pulses(12, 258, 162, state.turbineRpm)} />
      <path class="dw-line" d={pulses(210, 258, 162, state.outputRpm)} />
      <text class="dw-text dw-quiet" x="191" y="280" text-anchor="middle">
        {words.pulses}
      </text>
      <path class="dw-leader" d="M12 292H378" />
      <text class="dw-text" x="12" y="314">
        {words.sum(bare)}
      </text>
      <text class="dw-text dw-strong" x="12" y="338">
        {words.slip({ ...bare, slip: inUnits.slip })}
      </text>
    </Frame>
  );
}
