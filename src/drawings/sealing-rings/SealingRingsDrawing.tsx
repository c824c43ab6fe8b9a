import type { JSX } from 'preact';
import { Flow } from '../parts/flow.tsx';
import { Frame } from '../parts/frame.tsx';
import { circlePath } from '../parts/gear.ts';
import { box, Cut, Oil } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { clamp01 } from '../scale.ts';
import { describeSealingRings, type SealingRingsState } from './state.ts';
import { words } from './words.en.ts';

export function SealingRingsDrawing({
  id,
  state,
}: {
  id: string;
  state: SealingRingsState;
}): JSX.Element {
  const { temp, labels } = state;
  const g = 2 + 5 * clamp01(state.wear);
  const bore = 126;
  const shaft = bore + 10;
  return (
    <Frame id={id} width={390} height={340} title={words.title} desc={describeSealingRings(state)}>
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

      <Label x={186} y={20} lines={[`*${words.inside[temp](labels)}`]} to="182,16 168,34" />
      <text class="dw-text" x="94" y="76" text-anchor="middle">
        {words.sleeve}
      </text>
      <text class="dw-text" x="94" y="93" text-anchor="middle">
        {words.still}
      </text>
      <Label x={332} y={158} lines={words.shaft} to="330,162 300,172" />
      <Label x={332} y={206} lines={words.toClutch} />
      <Label x={216} y={250} lines={[words.ring]} to="236,236 219,148" />
      <Label
        x={298}
        y={74}
        lines={[...words.past, `*${labels.leak}`]}
        to={`316,112 286,${bore + 2}`}
      />
      <Label x={130} y={284} lines={words.fromEnd(labels)} to="126,280 70,246" />
    </Frame>
  );
}
