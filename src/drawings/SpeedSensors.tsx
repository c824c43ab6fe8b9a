import { format, formatNumber } from '../quantity/print.ts';
import { ratio } from '../quantity/part-quantities.ts';
import { speed } from '../quantity/quantities.ts';
import type { JSX } from 'preact';
import { roundPlace } from './scale.ts';
import { Frame } from './parts/frame.tsx';
import { circlePath, gearPath } from './parts/gear.ts';
import { box, Cut } from './parts/hatch.tsx';
import { Label } from './parts/label.tsx';

export interface SpeedSensorsState {
  turbineRpm: number;
  outputRpm: number;
  /** Turbine turns for one output turn in the gear that is asked for. */
  ratio: number;
}

export const speedSensorsExample: SpeedSensorsState = {
  turbineRpm: 1500,
  outputRpm: 300,
  ratio: 4,
};

const slipOf = (s: SpeedSensorsState): number => s.turbineRpm - s.ratio * s.outputRpm;

export const describeSpeedSensors = (s: SpeedSensorsState): string =>
  `The turbine sensor counts ${format(s.turbineRpm, speed, 'si')}, the output sensor ${format(s.outputRpm, speed, 'si')}. In a gear of ${formatNumber(s.ratio, ratio, 'si')} to 1 the turbine should turn at ${format(s.ratio * s.outputRpm, speed, 'si')}. The difference, ${format(slipOf(s), speed, 'si')}, is what the controller calls slip.`;

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
  state = speedSensorsExample,
}: {
  id: string;
  state?: SpeedSensorsState | undefined;
}): JSX.Element {
  const want = state.ratio * state.outputRpm;
  return (
    <Frame
      id={id}
      width={390}
      height={356}
      title="Turbine and output speed sensors"
      desc={describeSpeedSensors(state)}
    >
      <Wheel id={id} cx={92} teeth={24} />
      <Wheel id={id} cx={290} teeth={24} />
      <path class="dw-centre" d="M146 122H236" />
      <text class="dw-text" x="191" y="112" text-anchor="middle">
        gears
      </text>
      <text class="dw-text" x="191" y="142" text-anchor="middle">
        {`${formatNumber(state.ratio, ratio, 'si')} : 1`}
      </text>
      <Label x={4} y={18} lines={['Sensor']} to="46,22 76,38" />
      <Label x={160} y={48} lines={['Tone', 'wheel']} to="158,58 126,86" />
      <Label x={386} y={18} anchor="end" lines={['Sensor']} to="340,22 306,38" />
      <Label
        x={92}
        y={198}
        anchor="middle"
        lines={['Turbine', `*${format(state.turbineRpm, speed, 'si')}`]}
      />
      <Label
        x={290}
        y={198}
        anchor="middle"
        lines={['Output', `*${format(state.outputRpm, speed, 'si')}`]}
      />
      <path class="dw-line" d={pulses(12, 258, 162, state.turbineRpm)} />
      <path class="dw-line" d={pulses(210, 258, 162, state.outputRpm)} />
      <text class="dw-text dw-quiet" x="191" y="280" text-anchor="middle">
        pulses in the same time
      </text>
      <path class="dw-leader" d="M12 292H378" />
      <text class="dw-text" x="12" y="314">
        {`turbine ${formatNumber(state.turbineRpm, speed, 'si')} − ${formatNumber(state.ratio, ratio, 'si')} × output ${formatNumber(state.outputRpm, speed, 'si')} (= ${formatNumber(want, speed, 'si')})`}
      </text>
      <text class="dw-text dw-strong" x="12" y="338">
        {`slip ${format(slipOf(state), speed, 'si')}`}
      </text>
    </Frame>
  );
}
