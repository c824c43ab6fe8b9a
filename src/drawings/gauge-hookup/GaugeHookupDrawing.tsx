import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { describeGaugeHookup } from './state.ts';
import { words } from './words.en.ts';

/** From the gauge's foot by way of the tie to the tap. */
const HOSE = 'M62 122V142C62 160 78 160 96 158C140 152 176 140 176 172';
/** Ticks of the gauge's face. */
const TICKS = [-135, -90, -45, 0, 45, 90, 135];

export function GaugeHookupDrawing({ id }: { id: string }): JSX.Element {
  return (
    <Frame id={id} width={390} height={330} title={words.title} desc={describeGaugeHookup()}>
      {/* the hose: a thick line with a light core */}
      <path class="gh-hose" d={HOSE} />
      <path class="gh-core" d={HOSE} />
      {/* the tie, and what it hangs from */}
      <path class="dw-line" d="M96 128V150" />
      <Cut id={id} d={box(84, 120, 24, 8)} />
      <rect class="dw-solid" x={89} y={149} width={14} height={17} rx="3" />

      <circle class="dw-solid" cx={62} cy={66} r={46} />
      <path class="dw-line" d="M44 20V8H80V20M62 112v10" />
      {TICKS.map((turn) => (
        <path key={turn} class="dw-line" d="M62 26v8" transform={`rotate(${turn} 62 66)`} />
      ))}
      <path class="dw-line dw-flow-ink" d="M62 66L84 44" />
      <circle class="dw-ink" cx={62} cy={66} r={5} />

      {/* bell housing, case and tail, with the shaft behind */}
      <Cut id={id} d="M132 184H160V192H292L316 206V238L292 252H160V262H132Z" />
      <rect class="dw-solid" x={168} y={172} width={16} height={20} />
      <path class="dw-line" d="M164 178H188" />
      <rect class="dw-solid" x={316} y={213} width={74} height={18} />
      <path class="dw-centre" d="M300 222H390" />
      <path class="dw-line" d="M346 206A8 18 0 0 1 346 238M340 230l6 8l7 -6" />
      <rect class="dw-solid" x={186} y={212} width={96} height={24} />
      <text class="dw-text" x={234} y={229} text-anchor="middle">
        {words.box[0]}
      </text>

      <Cut id={id} other d={`${box(0, 282, 390, 5)}${box(0, 303, 390, 5)}`} />
      <Label x={6} y={326} lines={words.exhaust} />

      <Label x={128} y={32} lines={words.gauge} to="122,48 110,56" />
      <Label x={196} y={112} lines={words.hose} to="190,124 150,146" />
      <Label x={6} y={204} lines={words.tap} to="84,200 164,182" />
      <Label x={300} y={194} lines={words.shaft} />
    </Frame>
  );
}
