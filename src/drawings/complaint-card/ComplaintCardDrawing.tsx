import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { NamedBox } from '../parts/wire.tsx';
import { describeComplaintCard } from './state.ts';
import { words } from './words.en.ts';

/** Where the first row begins, and how far apart they are. */
const TOP = 66;
const ROW = 54;
const FOOT = TOP + words.rows.length * ROW;

/** A card on a clipboard; each question leads to what its answer splits. */
export function ComplaintCardDrawing({ id }: { id: string }): JSX.Element {
  return (
    <Frame
      id={id}
      width={390}
      height={FOOT + 14}
      title={words.title}
      desc={describeComplaintCard()}
    >
      <rect class="dw-solid" x={6} y={14} width={192} height={FOOT - 8} rx="4" />
      <Cut id={id} d={box(72, 4, 60, 20)} />
      <Label x={18} y={48} lines={words.head} />
      {words.rows.map(({ asks, splits }, i) => {
        const y = TOP + i * ROW;
        const middle = y + 22;
        return (
          <g key={i}>
            <NamedBox x={18} y={y} width={132} height={44} lines={asks} />
            <path class="dw-line" d={`M150 ${middle}H208`} />
            <path class="dw-ink" d={`M218 ${middle}l-12 -5v10z`} />
            <Label x={226} y={middle + (splits.length > 1 ? -4 : 5)} lines={splits} />
          </g>
        );
      })}
    </Frame>
  );
}
