import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { describeOpenTogether } from './state.ts';
import { words } from './words.en.ts';

const PLATES = [74, 82, 90, 98, 106];
const SOLENOIDS = [82, 104, 126, 160, 182];
const PLEATS = [88, 100, 112, 124, 136, 148, 160, 172, 184];
/** From where to where each step of access reaches. */
const STEPS = [
  [16, 112],
  [126, 266],
  [284, 414],
] as const;

/** Parts drawn apart, in the order in which they come off from below; dashed is what waits for a reason. */
export function OpenTogetherDrawing({ id }: { id: string }): JSX.Element {
  return (
    <Frame id={id} width={390} height={424} title={words.title} desc={describeOpenTogether()}>
      {STEPS.map(([from, to]) => (
        <path key={from} class="dw-line" d={`M58 ${from}H52V${to}H58`} />
      ))}
      <Label x={2} y={60} lines={words.ifHurt} />
      <Label x={2} y={192} lines={words.bodyOff} />
      <Label x={2} y={352} lines={words.panOff} />
      <path class="dw-centre" d="M137 116V404" />

      {/* pack, converter, cooler */}
      <path class="dw-line dw-other" d={PLATES.map((x) => box(x, 24, 4, 82)).join('')} />
      <path
        class="dw-line dw-other"
        d="M150 65m-26 0a26 40 0 1 0 52 0a26 40 0 1 0 -52 0M138 65a12 20 0 1 0 24 0a12 20 0 1 0 -24 0"
      />
      <path
        class="dw-line dw-other"
        d={`${box(186, 30, 24, 70)}M186 44H210M186 58H210M186 72H210M186 86H210`}
      />

      {/* case wall, with the passage and the connector sleeve in it */}
      <Cut id={id} d={`${box(66, 138, 60, 20)}${box(148, 138, 32, 20)}${box(200, 138, 12, 20)}`} />
      <path class="dw-soft" d={`${box(178, 143, 5, 10)}${box(197, 143, 5, 10)}`} />
      <rect class="dw-solid" x={183} y={128} width={14} height={42} />
      <path class="dw-line" d="M187 128V118M193 128V118" />

      {/* bridge with its seals */}
      <rect class="dw-solid" x={129} y={172} width={16} height={34} />
      <path
        class="dw-soft"
        d={`${box(122, 176, 7, 9)}${box(145, 176, 7, 9)}${box(122, 193, 7, 9)}${box(145, 193, 7, 9)}`}
      />

      {/* valve body with its solenoids */}
      <Cut id={id} other d={box(72, 216, 130, 34)} />
      {SOLENOIDS.map((x) => (
        <rect key={x} class="dw-solid" x={x} y={250} width={12} height={15} />
      ))}

      {/* filter on its neck */}
      <rect class="dw-solid" x={100} y={286} width={20} height={18} />
      <path class="dw-soft" d={`${box(94, 290, 6, 8)}${box(120, 290, 6, 8)}`} />
      <rect class="dw-solid" x={78} y={304} width={118} height={24} />
      <path class="dw-line" d={PLEATS.map((x) => `M${x} 324l4 -16l4 16`).join('')} />

      {/* gasket, pan, fluid, magnet */}
      <path class="dw-soft" d={box(64, 348, 146, 6)} />
      <path class="dw-oil" fill-opacity="0.2" d="M77 384H197L190 404H84Z" />
      <path class="dw-line" d="M64 366H70L84 404H190L204 366H210" />
      <path class="dw-ink" d={box(128, 396, 22, 7)} />

      <Label x={226} y={30} lines={words.pack} to="222,26 106,20 100,30" />
      <Label x={226} y={76} lines={words.burnt} to="222,72 204,72" />
      <Label x={226} y={136} lines={words.sleeve} to="222,132 193,140" />
      <Label x={226} y={186} lines={words.seal} to="222,182 149,180" />
      <Label x={226} y={242} lines={words.solenoids} to="222,238 190,256" />
      <Label x={226} y={306} lines={words.filter} to="222,302 186,314" />
      <Label x={226} y={354} lines={words.gasket} to="222,350 204,351" />
      <Label x={226} y={390} lines={words.fluid} to="222,386 144,399" />
    </Frame>
  );
}
