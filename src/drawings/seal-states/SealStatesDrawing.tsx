import type { ComponentChildren, JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { circlePath } from '../parts/gear.ts';
import { Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { Lens } from '../parts/lens.tsx';
import { describeSealStates } from './state.ts';
import { words } from './words.en.ts';

const RADIUS = 56;
const COLUMNS = [66, 195, 324] as const;
const ROWS = [60, 240] as const;

/** A strip of rubber bent over a pin, and a groove with what stood in it when it was new: two lenses each. */
const BENT = 'M-70 58L-40 2A44 44 0 0 1 40 2L70 58L48 64L20 12A22 22 0 0 0 -20 12L-48 64Z';
const GROOVE = 'M-60 4H-26V44H26V4H60V60H-60Z';
const NEW = 'M-26 4C-24 -22 -12 -28 0 -28C12 -28 24 -22 26 4';
const WALL = 'M30 -60H60V60H30Z';

/** Fine cracks: where on the bend each starts, as a turn about the pin. */
const CRAZES = [-58, -44, -31, -17, -6, 8, 20, 35, 49, 61];

interface SpotProps {
  readonly id: string;
  readonly name: keyof typeof places;
  readonly children: ComponentChildren;
}
const places = {
  split: [0, 0],
  cut: [1, 0],
  swollen: [2, 0],
  set: [0, 1],
  hard: [1, 1],
  aged: [2, 1],
} as const;

function Spot({ id, name, children }: SpotProps): JSX.Element {
  const [column, row] = places[name];
  const [x, y] = [COLUMNS[column], ROWS[row]];
  return (
    <>
      <Lens id={`${id}-${name}`} x={x} y={y} radius={RADIUS} to="">
        {children}
      </Lens>
      <Label x={x} y={y + RADIUS + 20} anchor="middle" lines={words[name]} />
    </>
  );
}

export function SealStatesDrawing({ id }: { id: string }): JSX.Element {
  const pin = <Cut id={id} d={circlePath(0, 22, 20)} />;
  return (
    <Frame id={id} width={390} height={380} title={words.title} desc={describeSealStates()}>
      <Spot id={id} name="split">
        {pin}
        <path class="dw-soft" d={BENT} />
        <path class="dw-void" d="M-12 -20L-5 -13L-3 -8L1 -3L4 -10L5 -15L12 -20L0 -36Z" />
        <path class="dw-line" d="M-12 -20L-5 -13L-3 -8L1 -3L4 -10L5 -15L12 -20" />
      </Spot>
      <Spot id={id} name="cut">
        <path class="dw-soft" d="M-60 10H-18L-5 -4L17 42L13 10H60V60H-60Z" />
        <Cut id={id} d="M-60 -60H4V-12L-60 -34Z" />
      </Spot>
      <Spot id={id} name="swollen">
        <Cut id={id} d={GROOVE} />
        <path class="dw-soft" d="M-26 44V4H-36C-52 -2 -48 -40 0 -42C48 -40 52 -2 36 4H26V44Z" />
        <path class="dw-line dw-other" d={NEW} />
      </Spot>
      <Spot id={id} name="set">
        <Cut id={id} d={GROOVE} />
        <path class="dw-soft" d="M-26 44V-4H26V44Z" />
        <path class="dw-line dw-other" d={NEW} />
      </Spot>
      <Spot id={id} name="hard">
        <Cut id={id} other d={WALL} />
        <path class="dw-line dw-other" d="M-10 8L30 -34V-16L14 16" />
        <path class="dw-soft" d="M-60 8H-18L10 -26L20 -20V-8L4 24V60H-60Z" />
      </Spot>
      <Spot id={id} name="aged">
        {pin}
        <path class="dw-soft" d={BENT} />
        <path class="dw-mark-case" d="M-27 3A31 31 0 0 1 27 3" />
        {CRAZES.map((turn, i) => (
          <path
            key={turn}
            class="dw-line"
            d={i % 2 === 0 ? 'M0 -44L1 -38L-1 -31' : 'M0 -44L-1 -37'}
            transform={`translate(0 22) rotate(${turn})`}
          />
        ))}
      </Spot>
      <Label x={195} y={376} anchor="middle" lines={[`~${words.asNew}`]} />
    </Frame>
  );
}
