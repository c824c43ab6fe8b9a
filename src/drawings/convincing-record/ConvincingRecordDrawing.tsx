import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { describeConvincingRecord } from './state.ts';
import { words } from './words.en.ts';

const SCALE = { x: 24, y: 116, long: 150 };
const MARKS = Array.from({ length: 16 }, (_, i) => i);
const PLOT = { x: 204, y: 28, wide: 180, high: 112, drive: 26 };
const TABLE = { x: 6, y: 204, wide: 378, row: 28, name: 176, column: 101 };

/** The old seal, its split held open, beside a scale, with the number of the job. */
function Photo() {
  return (
    <g>
      <rect class="dw-solid" x={6} y={26} width={182} height={130} />
      {/* the bridge with its two bores, split between them */}
      <path class="dw-soft" d="M30 52H92L98 66L104 52H168V92H30Z" />
      <ellipse class="dw-solid" cx={62} cy={72} rx="15" ry="12" />
      <ellipse class="dw-solid" cx={136} cy={72} rx="15" ry="12" />
      <path class="dw-line" d="M98 66L96 76L101 84L98 92" />
      <rect class="dw-solid" x={SCALE.x} y={SCALE.y} width={SCALE.long} height={16} />
      {MARKS.map((mark) => (
        <path
          key={mark}
          class="dw-line"
          d={`M${SCALE.x + mark * 10} ${SCALE.y}v${mark % 5 === 0 ? 10 : 6}`}
        />
      ))}
      <Label x={182} y={150} anchor="end" lines={words.job} />
      <Label x={12} y={44} lines={words.split} to="88,42 97,70" />
    </g>
  );
}

/** Turbine speed before and after, from where Drive was selected. */
function Traces() {
  const { x, y, wide, high, drive } = PLOT;
  return (
    <g>
      <path class="dw-line" d={`M${x} ${y}V${y + high}H${x + wide}`} />
      <path class="dw-line" d={`M${x + drive} ${y + high - 5}v10`} />
      <path
        class="dw-line dw-off"
        d={`M${x} ${y + 24}H${x + 58}L${x + 82} ${y + 78}H${x + 108}C${x + 134} ${y + 70} ${x + 150} ${y + 36} ${x + wide} ${y + 8}`}
      />
      <path
        class="dw-line dw-flow-ink"
        d={`M${x} ${y + 24}H${x + 48}L${x + 62} ${y + high - 2}H${x + wide}`}
      />
      <Label
        x={x + 116}
        y={y + 14}
        anchor="end"
        lines={words.before}
        to={`${x + 118},${y + 12} ${x + 156},${y + 40}`}
      />
      <Label x={x + wide} y={y + high - 10} anchor="end" lines={words.after} />
      <Label x={x} y={y + high + 22} lines={words.selected} />
    </g>
  );
}

/** What has to stand beside them. */
function Sheet({ id }: { id: string }) {
  const { x, y, wide, row, name, column } = TABLE;
  const foot = y + row * (words.rows.length + 1);
  return (
    <g>
      <rect class="dw-solid" x={x} y={y} width={wide} height={foot - y} />
      <path class="dw-line" d={`M${x + name} ${y}V${foot}M${x + name + column} ${y}V${foot}`} />
      <Cut id={id} d={box(x + 104, y - 7, 56, 14)} />
      <Label x={x + name + 10} y={y + 19} lines={[words.columns.before]} />
      <Label x={x + name + column + 10} y={y + 19} lines={[words.columns.after]} />
      {words.rows.map((line, i) => {
        const top = y + row * (i + 1);
        return (
          <g key={line}>
            <path class="dw-line" d={`M${x} ${top}H${x + wide}`} />
            <Label x={x + 8} y={top + 19} lines={[line]} />
            {[0, 1].map((at) => (
              <path
                key={at}
                class="dw-line dw-flow-ink"
                d={`M${x + name + 12 + at * column} ${top + 16}q8 -8 16 0t16 0t16 0t16 0`}
              />
            ))}
          </g>
        );
      })}
    </g>
  );
}

/** A photo, two traces on one axis, and the sheet that ties them together. */
export function ConvincingRecordDrawing({ id }: { id: string }): JSX.Element {
  return (
    <Frame id={id} width={390} height={382} title={words.title} desc={describeConvincingRecord()}>
      <Label x={6} y={16} lines={words.photo} />
      <Photo />
      <Label x={PLOT.x} y={16} lines={words.traces} />
      <Traces />
      <Label x={6} y={196} lines={words.sheet} />
      <Sheet id={id} />
    </Frame>
  );
}
