import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { NamedBox } from '../parts/wire.tsx';
import { describeFreezeFrame } from './state.ts';
import { words } from './words.en.ts';

/** The trace, as a shape with no scale: its foot, where Drive is selected, and the instant of the code. */
const PLOT = { left: 8, right: 382, top: 28, foot: 150, drive: 70, stored: 290 };
/** Where the card begins, its first row, and how far apart rows are. */
const CARD = 178;
const TOP = CARD + 38;
const ROW = 52;
const HEIGHT = 44;
const FOOT = TOP + words.rows.length * ROW;

/** A row: what the frame keeps, and what it is good for. */
function Row({ y, keeps, serves }: { y: number } & (typeof words.rows)[number]): JSX.Element {
  const middle = y + HEIGHT / 2;
  return (
    <g>
      <NamedBox x={18} y={y} width={136} height={HEIGHT} lines={keeps} />
      <path class="dw-line" d={`M154 ${middle}H212`} />
      <path class="dw-ink" d={`M222 ${middle}l-12 -5v10z`} />
      <Label x={230} y={middle + (serves.length > 1 ? -4 : 5)} lines={serves} />
    </g>
  );
}

/** A freeze frame as a card, under the trace at the instant it was taken. */
export function FreezeFrameDrawing({ id }: { id: string }): JSX.Element {
  const { left, right, top, foot, drive, stored } = PLOT;
  const { trace } = words;
  const last = FOOT + 20;
  return (
    <Frame
      id={id}
      width={390}
      height={last + HEIGHT + 10}
      title={words.title}
      desc={describeFreezeFrame()}
    >
      <path class="dw-line" d={`M${left} ${top}V${foot}H${right}`} />
      <path class="dw-line" d={`M${drive} ${foot - 5}v10`} />
      <path class="dw-line dw-off" d={`M${left} 68H150C210 66 250 52 ${right} 34`} />
      <path
        class="dw-line dw-flow-ink"
        d={`M${left} 74H96C110 92 122 108 150 108C200 106 240 88 ${stored} 72`}
      />
      <path class="dw-line" d={`M${left} 148H170L${right} 132`} />
      <path class="dw-line" d={`M${stored} ${top}V${CARD + 19}H214`} />
      <path class="dw-ink" d={`M202 ${CARD + 19}l12 -5v10z`} />
      <circle class="dw-dot" cx={stored} cy={72} r="4" />
      <Label x={drive} y={foot + 20} anchor="middle" lines={[trace.drive]} />
      <Label x={stored} y={top - 10} anchor="middle" lines={[`*${trace.stored}`]} />
      <Label x={left + 8} y={60} lines={[trace.engine]} />
      <Label x={160} y={126} anchor="middle" lines={[trace.turbine]} />
      <Label x={right} y={126} anchor="end" lines={[trace.output]} />
      <rect class="dw-solid" x={6} y={CARD} width={196} height={FOOT - CARD} rx="4" />
      <Label x={18} y={CARD + 24} lines={words.head} />
      {words.rows.map((row, i) => (
        <Row key={i} y={TOP + i * ROW} {...row} />
      ))}
      <Cut id={id} d={box(6, last - 6, 160, HEIGHT + 12)} />
      <Row y={last} {...words.missing} />
    </Frame>
  );
}
