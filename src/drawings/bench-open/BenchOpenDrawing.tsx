import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { circlePath } from '../parts/gear.ts';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { describeBenchOpen } from './state.ts';
import { words } from './words.en.ts';

/** Ports in the face of the case, and the bolts round it. */
const PORTS = [66, 128, 190];
const PORT_Y = 120;
const BOLTS = [30, 92, 154, 216].flatMap((x) => [`${x},86`, `${x},222`]);
const HOSE = 'M66 26V102';

export function BenchOpenDrawing({ id }: { id: string }): JSX.Element {
  return (
    <Frame id={id} width={390} height={306} title={words.title} desc={describeBenchOpen()}>
      <path class="dw-solid" d="M18 74H228V234H18z" />
      <path class="dw-line" d="M30 98H216V210H30z" />
      {BOLTS.map((at) => {
        const [x = 0, y = 0] = at.split(',').map(Number);
        return <path key={at} class="dw-ink" d={circlePath(x, y, 3)} />;
      })}
      {PORTS.map((x) => (
        <path key={x} class="dw-ink" d={circlePath(x, PORT_Y, 9)} />
      ))}
      {/* forward and reverse come up through one seal */}
      <path
        class="dw-soft"
        fill-rule="evenodd"
        d="M62 166H132V198H62zM70 172V192H92V172zM102 172V192H124V172z"
      />
      <path class="gh-hose" d={HOSE} />
      <path class="gh-core" d={HOSE} />
      <path class="dw-soft" d="M52 98H80L72 112H60z" />
      <path
        class="dw-solid"
        d="M170 106q8 -6 18 -2t22 0q4 8 0 16t2 14q-10 4 -20 1t-20 2q-4 -8 -1 -16t-1 -15z"
      />
      {/* the shaft, and the dial against its end */}
      <path class="dw-solid" d={box(228, 146, 44, 18)} />
      <path class="dw-line" d="M272 155H290" />
      <path class="dw-solid" d={circlePath(312, 155, 22)} />
      <path class="dw-line dw-live" d="M312 155L322 142" />
      <path class="dw-line" d="M312 136v5M331 155h-5M293 155h5" />
      <Cut id={id} d={box(304, 177, 16, 26)} />
      {/* the valve body, a hose on one of its bores */}
      <path class="dw-solid" d={box(262, 36, 124, 72)} />
      {[52, 72, 92].map((y) => (
        <path key={y} class="dw-line" d={`M262 ${y - 5}H340V${y + 5}H262`} />
      ))}
      <path class="dw-line" d="M352 48h22v16h-14v16h18v16h-26" />
      <path class="gh-hose" d="M218 20C240 20 240 52 258 52" />
      <path class="gh-core" d="M218 20C240 20 240 52 258 52" />

      <Label x={82} y={30} lines={words.air} />
      {words.ports.map((name, i) => (
        <text
          key={name}
          class="dw-text"
          x={PORTS[i] ?? 0}
          y={i === 2 ? 152 : 148}
          text-anchor="middle"
        >
          {name}
        </text>
      ))}
      <Label x={18} y={258} lines={words.seal} to="60,244 84,196" />
      <Label x={18} y={296} lines={words.rag} to="176,282 211,160 211,132" />
      <Label x={264} y={14} lines={words.body} />
      <Label x={262} y={222} lines={words.dial} />
    </Frame>
  );
}
