import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { describeBridgeSeat } from './state.ts';
import { words } from './words.en.ts';

/** Case and valve body, each with two bores that face each other. */
const CASE =
  'M4 178H38V200H46V236H4ZM58 236V200H66V178H128V200H136V236ZM148 236V200H156V178H186V236Z';
const BODY = 'M4 52H46V78H38V100H4ZM58 52V78H66V100H128V78H136V52ZM148 52V78H156V100H186V52Z';
const BRIDGE = 'M26 164H42V146H62V164H132V146H152V164H168V178H152V196H132V178H62V196H42V178H26Z';
const CHANNELS = 'M48 146V196M56 146V196M138 146V196M146 146V196';
const SEALS = [38, 62, 128, 152].map((x) => box(x, 150, 4, 7) + box(x, 184, 4, 7)).join('');
const press = (x: number): string => `M${x} 110V136M${x - 5} 129L${x} 138L${x + 5} 129`;
const RIGHT = 200;

const Bridge = (): JSX.Element => (
  <>
    <path class="dw-solid" d={BRIDGE} />
    <path class="dw-line" d={CHANNELS} />
    <path class="dw-soft" d={SEALS} />
  </>
);

/** The same bridge twice: down in both bores, and held up at one end by a chip. */
export function BridgeSeatDrawing({ id }: { id: string }): JSX.Element {
  return (
    <Frame id={id} width={390} height={310} title={words.title} desc={describeBridgeSeat()}>
      <Cut id={id} other d={BODY} />
      <Cut id={id} d={CASE} />
      <Bridge />
      <path class="dw-line" d={`${press(35)}${press(160)}`} />
      <g transform={`translate(${RIGHT} 0)`}>
        <Cut id={id} other d={BODY} />
        <Cut id={id} d={CASE} />
        <path class="dw-ink" d="M132 200L136 189L141 200Z" />
        <g transform="rotate(-6 52 187)">
          <Bridge />
        </g>
        <path class="dw-line" d={`${press(35)}M166 136V112M161 119L166 110L171 119`} />
      </g>
      <Label x={4} y={20} lines={words.body} to="40,42 40,50" />
      <Label x={74} y={130} lines={words.bridge} to="97,136 97,160" />
      <Label x={76} y={226} lines={words.case} />
      <Label x={RIGHT + 70} y={226} lines={words.daylight} to="306,212 312,174" />
      <Label x={4} y={262} lines={words.seated} />
      <Label x={RIGHT + 4} y={262} lines={words.rocks} />
    </Frame>
  );
}
