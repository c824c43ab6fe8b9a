import { hatchFill, Hatches } from '../../charts/Hatches.tsx';
import type { OpenModel } from './model.ts';
import { cars, printHours } from './print.ts';
import { words } from './words.en.ts';

const ID = 'now-or-twice-bars';
const WIDTH = 390;
const FIRST = 2;
const LONG = WIDTH - 2 * FIRST;
const HIGH = 28;
/** Full lengths of a bar [h]; the first that holds both, so that a slider moves bars and not their scale. */
const SCALES = [30, 100, 300, 1000, 3000, 10_000];

const { picture } = words;

interface BarProps {
  readonly y: number;
  readonly name: string;
  readonly total: string;
  /** Work on every car and comebacks, as lengths. */
  readonly parts: readonly (readonly [work: boolean, length: number])[];
}
function Bar({ y, name, total, parts }: BarProps) {
  let at = FIRST;
  return (
    <g>
      <text x={FIRST} y={y}>
        {name}
      </text>
      <text class="bills-total" x={WIDTH - FIRST} y={y} text-anchor="end">
        {total}
      </text>
      <path class="bills-foot" d={`M${FIRST} ${y + 6}V${y + 10 + HIGH}`} />
      {parts.map(([work, length]) => {
        const x = at;
        at += length;
        return (
          <rect
            key={String(work)}
            class={work ? 'part full' : 'part'}
            fill={work ? undefined : hatchFill(ID, 'even')}
            x={x.toFixed(1)}
            y={y + 8}
            width={length.toFixed(1)}
            height={HIGH}
          />
        );
      })}
    </g>
  );
}

/** What twenty cars cost with the part left and with it renewed, in hours of the shop. */
export function Bars({ model, shown }: { readonly model: OpenModel; readonly shown: boolean }) {
  const { left, work, comebacks, renewed } = model.sums.value;
  const most = Math.max(left, renewed);
  const full = SCALES.find((one) => one >= most) ?? most;
  const long = (value: number): number => (value / full) * LONG;
  const said = shown
    ? picture.describe({
        cars,
        left: printHours(left),
        work: printHours(work),
        comebacks: printHours(comebacks),
      })
    : picture.before({ cars, left: printHours(left) });
  return (
    <div class="chart">
      <svg class="bills" viewBox={`0 0 ${WIDTH} 158`} role="img" aria-label={said}>
        <Hatches id={ID} />
        <Bar
          y={18}
          name={picture.left({ cars })}
          total={printHours(left)}
          parts={[[false, long(left)]]}
        />
        <Bar
          y={80}
          name={picture.renewed({ cars })}
          total={shown ? printHours(renewed) : picture.notYet}
          parts={
            shown
              ? [
                  [true, long(work)],
                  [false, long(comebacks)],
                ]
              : []
          }
        />
        <rect class="part full" x={FIRST} y={139} width={18} height={14} />
        <text x={FIRST + 26} y={152}>
          {picture.work}
        </text>
        <rect class="part" fill={hatchFill(ID, 'even')} x={210} y={139} width={18} height={14} />
        <text x={236} y={152}>
          {picture.comebacks}
        </text>
      </svg>
    </div>
  );
}
