import type { JSX } from 'preact';
import { Flow } from '../parts/flow.tsx';
import { Frame } from '../parts/frame.tsx';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { roundPlace } from '../scale.ts';
import { describeFilterBuild, PLEATS } from './state.ts';
import { words } from './words.en.ts';

const WIDTH = 150;
/** Where the halves of the shell meet, and how far apart they stand at an open seam. */
const SEAM = { y: 172, open: 6 };

/** Folded media across the shell. */
const pleatPath = (left: number, count: number): string => {
  const step = (WIDTH - 28) / count;
  const fold = (i: number) =>
    `L${roundPlace(left + 14 + (i + 0.5) * step)} 146L${roundPlace(left + 14 + (i + 1) * step)} 198`;
  return `M${left + 7} 198H${left + 14}${Array.from({ length: count }, (_, i) => fold(i)).join('')}H${left + WIDTH - 7}`;
};

/** One filter in its bore; all that differs between the two is said by its part. */
function OneFilter({
  id,
  left,
  part,
}: {
  id: string;
  left: number;
  part: keyof typeof PLEATS;
}): JSX.Element {
  const right = left + WIDTH;
  const cx = left + WIDTH / 2;
  const gap = part === 'unknown' ? SEAM.open : 0;
  const ring = part === 'unknown' ? 5 : 9;
  const { y } = SEAM;
  return (
    <g>
      <Cut id={id} other d={`${box(cx - 50, 66, 24, 48)}${box(cx + 26, 66, 24, 48)}`} />
      <path
        class="dw-solid"
        d={`M${cx - 17} 128V72H${cx - 11}V134M${cx + 17} 128V72H${cx + 11}V134`}
      />
      <path
        class="dw-soft"
        d={`${box(cx - 17 - ring, 84, ring, 12)}${box(cx + 17, 84, ring, 12)}`}
      />
      <Cut
        id={id}
        d={`M${cx - 11} 128H${left}V${y - 6}H${left - 8}V${y}H${left + 7}V135H${cx - 11}zM${cx + 11} 128H${right}V${y - 6}H${right + 8}V${y}H${right - 7}V135H${cx + 11}z`}
      />
      <path class="dw-line" d={pleatPath(left, PLEATS[part])} />
      <Cut
        id={id}
        other
        d={`M${left - 8} ${y}H${left + 7}V219H${cx - 24}V226H${left}V${y + 6}H${left - 8}zM${right + 8} ${y + gap}H${right - 7}V219H${cx + 24}V226H${right}V${y + gap + 6}H${right + 8}z`}
      />
    </g>
  );
}

/** Two filters that look alike from outside, cut open beside each other. */
export function FilterBuildDrawing({ id }: { id: string }): JSX.Element {
  const { parts, neck, seam, media, mouth } = words;
  const [maker, unknown] = [12, 222];
  const [makerX, unknownX] = [maker + WIDTH / 2, unknown + WIDTH / 2];
  return (
    <Frame id={id} width={390} height={330} title={words.title} desc={describeFilterBuild()}>
      <OneFilter id={id} left={maker} part="maker" />
      <OneFilter id={id} left={unknown} part="unknown" />
      {/* air past the neck seal, light out of the seam */}
      <Flow points={`${unknownX + 24},126 ${unknownX + 24},58`} lmin={0.5} />
      <path class="dw-line dw-flow-ink" d="M382 175h8M381 170l7 -6M381 180l7 6" />

      <Label x={makerX} y={18} anchor="middle" lines={parts.maker} />
      <Label x={unknownX} y={18} anchor="middle" lines={parts.unknown} />
      <Label x={4} y={40} lines={neck.maker} to={`36,62 36,90 ${makerX - 21},90`} />
      <Label x={200} y={40} lines={neck.unknown} to={`232,62 232,90 ${unknownX - 20},90`} />
      <text class="dw-text" x={makerX} y={244} text-anchor="middle">
        {mouth}
      </text>
      <text class="dw-text" x={unknownX} y={244} text-anchor="middle">
        {mouth}
      </text>
      <Label
        x={4}
        y={272}
        lines={[words.pleats({ pleats: String(PLEATS.maker) }), media.maker]}
        to={`38,258 48,186`}
      />
      <Label
        x={214}
        y={272}
        lines={[words.pleats({ pleats: String(PLEATS.unknown) }), media.unknown]}
        to={`248,258 258,186`}
      />
      <Label x={184} y={312} anchor="end" lines={seam.maker} to="176,298 176,182 168,173" />
      <Label x={388} y={306} anchor="end" lines={seam.unknown} to="384,292 384,190 378,177" />
    </Frame>
  );
}
