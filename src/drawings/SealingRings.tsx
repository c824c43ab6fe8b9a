import type { JSX } from 'preact';
import { clamp01 } from './scale.ts';
import type { Temp } from './scale.ts';
import { Flow } from './parts/flow.tsx';
import { Frame } from './parts/frame.tsx';
import { circlePath } from './parts/gear.ts';
import { box, Cut, Oil } from './parts/hatch.tsx';
import { Label } from './parts/label.tsx';

export interface SealingRingsState {
  /** 0 new, 1 worn out: widens the drawn gap. */
  wear: number;
  /** Share of 1000 kPa between the rings. */
  pressure: number;
  temp: Temp;
  /** L/min past both rings, and what goes on to the clutch: nothing once it is full. */
  leak: number;
  onward: number;
  labels: { pressure: string; leak: string; gap: string };
}

export const sealingRingsExample: SealingRingsState = {
  wear: 0,
  pressure: 0.4,
  temp: 'hot',
  leak: 0.6,
  onward: 0,
  labels: { pressure: '400 kPa', leak: '0.6 L/min', gap: '0.025 mm' },
};

export const describeSealingRings = (s: SealingRingsState): string =>
  `Two sealing rings carry oil at ${s.labels.pressure} from the still sleeve into the turning shaft. The gap past each ring is ${s.labels.gap}, drawn far larger than it is. Together they lose ${s.labels.leak} of ${s.temp} fluid.`;

export function SealingRingsDrawing({
  id,
  state = sealingRingsExample,
}: {
  id: string;
  state?: SealingRingsState | undefined;
}): JSX.Element {
  const { temp, labels } = state;
  const g = 2 + 5 * clamp01(state.wear);
  const bore = 126;
  const shaft = bore + 10;
  return (
    <Frame
      id={id}
      width={390}
      height={340}
      title="Rotating sealing rings"
      desc={describeSealingRings(state)}
    >
      <Cut id={id} d={`M40 40H290V${bore}H40z${box(150, 40, 30, bore - 40)}`} />
      <Cut
        id={id}
        other
        d={`M10 ${shaft}H320V216H10z${box(146, shaft, 38, 24)}${box(156, 158, 18, 52)}${box(174, 194, 146, 16)}${box(102, shaft, 26, 26)}${box(202, shaft, 26, 26)}`}
      />
      <Oil
        id={id}
        d={`M150 24H180V${bore}H202V${shaft}H184V160H174V194H324V210H156V160H146V${shaft}H128V${bore}H150z`}
        pressure={state.pressure}
      />
      <Oil
        id={id}
        d={`${box(102, bore, 26, shaft + 26 - bore)}${box(202, bore, 26, shaft + 26 - bore)}`}
        pressure={state.pressure}
      />
      <path
        class="dw-line"
        d={`M102 ${shaft}v26h26V${shaft}M202 ${shaft}v26h26V${shaft}M150 24V${bore}M180 24V${bore}M146 ${shaft}V160H156V210H320M184 ${shaft}V160H174V194H320`}
      />
      {/* oil pushes each ring outward against the far wall of its groove and up against the sleeve */}
      <path class="dw-soft" d={`${box(102, bore + g, 18, 28)}${box(210, bore + g, 18, 28)}`} />
      <path class="dw-centre" d="M2 222H330" />

      <Flow points={`165,28 165,${bore + 5}`} lmin={state.leak + state.onward} temp={temp} />
      <Flow points={`165,${bore + 12} 165,202 318,202`} lmin={state.onward} temp={temp} />
      <Flow points={`98,${bore + 5} 22,${bore + 5}`} lmin={state.leak / 2} temp={temp} />
      <Flow points={`232,${bore + 5} 312,${bore + 5}`} lmin={state.leak / 2} temp={temp} />

      {/* the ring by itself: split, so that it can be fitted, with a stepped joint */}
      <path
        class="dw-cut"
        fill={`url(#${id}-cut)`}
        fill-rule="evenodd"
        d={`${circlePath(68, 284, 44)}${circlePath(68, 284, 34)}`}
      />
      <path class="dw-solid" d="M62 238h5v8h6v8h-5v-6h-6z" />

      <Label x={186} y={20} lines={[`*${labels.pressure}, ${temp}`]} to="182,16 168,34" />
      <text class="dw-text" x="94" y="76" text-anchor="middle">
        Sleeve
      </text>
      <text class="dw-text" x="94" y="93" text-anchor="middle">
        stands still
      </text>
      <Label x={332} y={158} lines={['Shaft', 'turns']} to="330,162 300,172" />
      <Label x={332} y={206} lines={['to the', 'clutch']} />
      <Label x={216} y={250} lines={['Sealing ring']} to="236,236 219,148" />
      <Label
        x={298}
        y={74}
        lines={['Past the', 'rings', `*${labels.leak}`]}
        to={`316,112 286,${bore + 2}`}
      />
      <Label
        x={130}
        y={284}
        lines={[
          'Ring, seen from the end:',
          'its joint lets it spring out',
          `gap ${labels.gap}, drawn larger`,
        ]}
        to="126,280 70,246"
      />
    </Frame>
  );
}
