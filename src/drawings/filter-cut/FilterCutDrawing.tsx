import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { circlePath } from '../parts/gear.ts';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { describeFilterCut } from './state.ts';
import { words } from './words.en.ts';

/** Tops and valleys of the pleats, from left to right. */
const PLEATS = Array.from(
  { length: 15 },
  (_, i) => `${54 + i * 13} ${i % 2 === 0 ? 126 : 84}`,
).join('L');
/** What stuck in the valleys. */
const STUCK = [
  'M75 120l6 -5l4 6z',
  'M130 122l9 -3l-2 6z',
  'M155 121l4 -7l3 7z',
  'M207 122l8 -5l1 6z',
];

export function FilterCutDrawing({ id }: { id: string }): JSX.Element {
  return (
    <Frame id={id} width={390} height={306} title={words.title} desc={describeFilterCut()}>
      <Cut id={id} d="M36 62V42H112V12H122V52H158V12H168V42H250V62H240V52H46V62z" />
      <path class="dw-soft" d={`${box(103, 16, 9, 16)}${box(168, 16, 9, 16)}`} />
      <Cut id={id} d="M36 112H46V132H240V112H250V142H36z" />
      <path class="dw-line" d={`M${PLEATS}`} />
      {STUCK.map((d) => (
        <path key={d} class="dw-ink" d={d} />
      ))}
      <path class="dw-solid" d="M254 88L312 74V98z" />
      <path class="dw-solid" d="M312 70H388V102H312z" />
      <path class="dw-line dw-other" d="M36 88H250" />

      <path class="dw-solid" d={box(4, 196, 382, 106)} />
      <path class="dw-soft" d={box(26, 226, 46, 18)} />
      {[
        [24, 222],
        [32, 219],
        [41, 221],
        [50, 218],
        [58, 221],
        [67, 219],
        [74, 223],
        [78, 231],
        [20, 231],
      ].map(([x = 0, y = 0]) => (
        <path key={`${x}-${y}`} class="dw-ink" d={circlePath(x, y, 2.5)} />
      ))}
      <path
        class="dw-ink"
        d="M122 224l14 -6l6 8l-12 5zM146 236l10 -7l8 6l-9 6zM126 242l8 -4l8 5l-9 4z"
      />
      <path class="dw-line dw-live" d="M216 244L232 216M232 246L240 220M246 242L262 222" />
      <path
        class="dw-soft"
        d="M312 228q4 -10 14 -7q9 4 3 12q-12 6 -17 -5zM338 242q3 -8 12 -6q6 6 -1 11q-9 2 -11 -5zM344 222q5 -6 10 0q0 7 -7 6z"
      />

      <Label x={188} y={20} lines={words.neck} to="186,18 172,22" />
      <Label x={386} y={122} anchor="end" lines={words.blade} />
      <Label x={143} y={164} anchor="middle" lines={words.pleats} to="143,152 143,104" />
      <Label x={4} y={188} lines={words.paper} />
      <Label x={49} y={266} anchor="middle" lines={words.paste} />
      <Label x={144} y={266} anchor="middle" lines={words.flakes} />
      <Label x={240} y={266} anchor="middle" lines={words.needles} />
      <Label x={334} y={266} anchor="middle" lines={words.crumbs} />
    </Frame>
  );
}
