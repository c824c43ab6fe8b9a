import { HAIR_MM } from '../../quantity/hairs/hairs.ts';
import type { JSX } from 'preact';
import { Flow } from '../parts/flow.tsx';
import { Frame } from '../parts/frame.tsx';
import { circlePath } from '../parts/gear.ts';
import { box, Cut, Oil } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { crackWidth, TubeSeal } from '../parts/seal.tsx';
import { words as parts } from '../parts/hydraulic-words.en.ts';
import { roundPlace } from '../scale.ts';
import { describeTransferSeal, type TransferSealState } from './state.ts';
import { words } from './words.en.ts';

/** Scale of the lens: a hair must still be a visible dot, and the widest crack fit. */
const LENS = 110;

export function TransferSealDrawing({
  id,
  state,
}: {
  id: string;
  state: TransferSealState;
}): JSX.Element {
  const { temp, labels } = state;
  const split = crackWidth(state.crackMm, 34);
  const h = Math.min(state.crackMm, 0.5) * LENS;
  const cracked = split > 0;
  return (
    <Frame
      id={id}
      width={390}
      height={352}
      title={words.title[cracked ? 'split' : 'whole']}
      desc={describeTransferSeal(state)}
    >
      <Cut id={id} d="M30 40H236V148H30zM112 40V104H84V148H182V104H154V40z" />
      <Cut id={id} other d="M30 190H236V300H30zM84 190V234H112V300H154V234H182V190z" />
      <Oil id={id} d="M112 30H154V310H112z" pressure={state.pressure} />
      <path class="dw-line" d="M112 30V104M154 30V104M112 234V310M154 234V310" />
      <TubeSeal cx={133} top={106} bottom={232} bore={42} wall={24} split={split} splitY={169} />
      <path class="dw-line" d="M112 106V232" />
      <Flow points="133,308 133,172" lmin={state.feed} temp={temp} head={false} />
      <Flow points="133,172 133,38" lmin={state.feed - state.leak} temp={temp} />
      <Flow points="146,169 246,169 246,330" lmin={state.leak} temp={temp} />

      {cracked && (
        <g>
          <path class="dw-leader" d="M186 162L276 62M190 172L292 122" />
          <path class="dw-solid" d={circlePath(322, 92, 54)} />
          <clipPath id={`${id}-lens`}>
            <circle cx="322" cy="92" r="53" />
          </clipPath>
          <g clip-path={`url(#${id}-lens)`}>
            <path
              class="dw-soft"
              d={`${box(262, 30, 120, 62 - h / 2)}${box(262, 92 + h / 2, 120, 62 - h / 2)}`}
            />
            {h > 3 && <Flow points="272,92 362,92" lmin={state.leak} temp={temp} />}
          </g>
          <path class="dw-line" d={circlePath(322, 92, 54)} />
          <circle class="dw-ink" cx="290" cy="168" r={roundPlace((HAIR_MM * LENS) / 2)} />
          <Label x={300} y={173} lines={[words.hair]} />
          <Label x={322} y={20} anchor="middle" lines={[words.enlarged]} />
          <Label x={254} y={214} lines={[`*${labels.width}`, `*${words.leaks(labels)}`]} />
        </g>
      )}
      {!cracked && <Label x={262} y={166} lines={[`*${words.tight}`]} />}

      <Label x={4} y={18} lines={[`*${words.inside[temp](labels)}`]} to="100,14 124,14 124,36" />
      <text class="dw-text" x="56" y="74" text-anchor="middle">
        {parts.case}
      </text>
      <text class="dw-text" x="70" y="284" text-anchor="middle">
        {words.valveBody}
      </text>
      <Label x={4} y={174} lines={[words.joint]} to="38,169 66,169" />
      <Label x={254} y={276} lines={[parts.seal, `~${words.rubber}`]} to="250,268 168,214" />
      {cracked && <Label x={254} y={330} lines={[words.toSump]} />}
      <Label x={133} y={332} anchor="middle" lines={[words.fromFeed]} />
      <Label x={196} y={18} anchor="middle" lines={[words.toClutch]} />
    </Frame>
  );
}
