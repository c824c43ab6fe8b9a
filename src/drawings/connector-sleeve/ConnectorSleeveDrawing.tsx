import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { describeConnectorSleeve } from './state.ts';
import { words } from './words.en.ts';

/** Where the pins and their wires run. */
const PINS = [132, 148] as const;
/** The rings, above and below the sleeve. */
const RINGS = [94, 168] as const;

/** Wires go out through the case in a sleeve on rubber rings; the two ways that fluid finds past it. */
export function ConnectorSleeveDrawing({ id }: { id: string }): JSX.Element {
  return (
    <Frame id={id} width={390} height={290} title={words.title} desc={describeConnectorSleeve()}>
      <path class="dw-oil" fill-opacity="0.2" d={box(0, 52, 116, 180)} />
      <Cut id={id} d="M116 40H166V92H116zM116 188H166V240H116z" />
      <Cut id={id} other d="M66 102H206V112H66zM66 168H206V178H66zM134 112H148V168H134z" />
      {RINGS.map((y) => (
        <path
          key={y}
          class="dw-soft"
          d={`${box(122, y - 2 + (y > 100 ? 10 : 0), 14, 10)}${box(146, y - 2 + (y > 100 ? 10 : 0), 14, 10)}`}
        />
      ))}
      <path class="dw-solid" d="M154 116H208V106H276V174H208V164H154z" />
      {PINS.map((y) => (
        <path key={y} class="dw-line" d={`M0 ${y}H96M276 ${y}H390`} />
      ))}
      {PINS.map((y) => (
        <path key={y} class="dw-ink" d={box(96, y - 2, 120, 4)} />
      ))}
      {/* the two ways out */}
      <path class="dw-line dw-other" d="M84 184H176V226" />
      <path class="dw-ink" d="M176 240c-7 -10 0 -14 0 -18c0 4 7 8 0 18z" />
      <path class="dw-line dw-other" d="M104 140H350" />
      <path class="dw-ink" d="M362 140l-12 -5v10z" />
      <Label x={8} y={78} lines={words.inside} />
      <Label x={141} y={30} anchor="middle" lines={words.case} />
      <Label x={200} y={30} lines={words.rings} to="198,40 153,96" />
      <Label x={300} y={30} lines={words.outside} />
      <Label x={8} y={24} lines={words.sleeve} to="40,30 76,106" />
      <Label x={242} y={98} anchor="middle" lines={words.plug} />
      <Label x={386} y={122} anchor="end" lines={words.wires} />
      <Label x={8} y={262} lines={words.past} to="70,248 150,226 172,226" />
      <Label x={192} y={222} lines={words.through} to="260,206 250,144" />
    </Frame>
  );
}
