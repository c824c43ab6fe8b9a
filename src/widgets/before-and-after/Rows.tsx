import { makeScale, ticksFor } from '../../charts/scale.ts';
import { readAs } from '../../diagnosis/before-after.ts';
import { printer } from '../../quantity/print.ts';
import { temperature } from '../../quantity/quantities.ts';
import { fromShown, toShown } from '../../quantity/quantity.ts';
import { useUnits } from '../../ui/use-units.ts';
import { pointsOf, type ProofModel } from './model.ts';
import { printTaken, quantityOf } from './print.ts';
import { words } from './words.en.ts';

const WIDTH = 390;
const EDGE = 8;
const ROW = 46;
const TOP = 18;
const AXIS = TOP + 3 * ROW - 2;
const { picture } = words;

interface RowProps {
  readonly y: number;
  readonly name: string;
  /** Places along the axis: the reading, and where it may truly lie. */
  readonly at: readonly [least: number, reading: number, most: number] | null;
  readonly kind: 'before' | 'after' | 'sound';
  /** No end in sight. */
  readonly open: boolean;
}
function Row({ y, name, at, kind, open }: RowProps) {
  return (
    <g>
      <text x={EDGE} y={y}>
        {name}
      </text>
      {at && (
        <>
          <rect
            class={`proof-bar proof-${kind}`}
            x={at[0].toFixed(1)}
            y={y + 8}
            width={Math.max(1, at[2] - at[0]).toFixed(1)}
            height={14}
          />
          {open ? (
            <path class="proof-mark" d={`M${WIDTH - EDGE - 9} ${y + 9}l9 6l-9 6z`} />
          ) : (
            <path class="proof-line" d={`M${at[1].toFixed(1)} ${y + 5}v20`} />
          )}
        </>
      )}
    </g>
  );
}

/** Both readings and a sound car's on one axis, each with what it may be off by. */
export function Rows({ model, shown }: { readonly model: ProofModel; readonly shown: boolean }) {
  const system = useUnits();
  const print = printer(system);
  const { state, pair } = model;
  const { test } = state.value;
  const { before, after, right, room, doubt } = pair.value;
  const quantity = quantityOf(test);
  const fast = pointsOf(state.value).includes('load');
  // Fixed for a test, so that a slider moves bars and not their scale.
  const full = test === 'stop' ? 2.75 : (test === 'line' ? 700 : 460) * (fast ? 2 : 1);
  const scale = makeScale('linear', [0, full], [EDGE, WIDTH - EDGE]);
  const ticks = ticksFor('linear', 0, toShown(full, quantity, system));
  const { errors } = pair.value;
  const span = (value: number, half: number) =>
    [scale(Math.max(0, value - half)), scale(value), scale(Math.min(full, value + half))] as const;
  const name = picture.names[test];
  const value = shown
    ? {
        before: printTaken(before, test, system),
        after: printTaken(after, test, system),
        sound: print(right, quantity),
      }
    : { before: picture.open, after: picture.open, sound: picture.open };
  const temp = {
    before: print(before.tempC, temperature),
    after: print(after.tempC, temperature),
  };
  const rows = [
    {
      kind: 'before',
      name: picture.before({ temp: temp.before, value: value.before }),
      at: span(readAs(before), errors.before),
      open: before.value === null,
    },
    {
      kind: 'after',
      name: picture.after({ temp: temp.after, value: value.after }),
      at: span(readAs(after), errors.after),
      open: after.value === null,
    },
    {
      kind: 'sound',
      name: picture.sound({ temp: temp.after, value: value.sound }),
      at: span(right, errors.sound),
      open: false,
    },
  ] as const;
  const said = shown
    ? picture.describe({
        name,
        before: value.before,
        after: value.after,
        right: value.sound,
        doubt: print(doubt, quantity),
        room: print(room, quantity),
      })
    : picture.unread;
  return (
    <figure class="proof-picture">
      <figcaption>{picture.doubt}</figcaption>
      <svg class="proof-rows" viewBox={`0 0 ${WIDTH} ${AXIS + 40}`} role="img" aria-label={said}>
        {rows.map((row, i) => (
          <Row
            key={row.kind}
            {...row}
            y={TOP + i * ROW}
            at={shown ? row.at : null}
            open={shown && row.open}
          />
        ))}
        <path class="proof-axis" d={`M${EDGE} ${AXIS}H${WIDTH - EDGE}`} />
        {ticks.map((tick) => {
          const x = scale(fromShown(tick, quantity, system));
          return (
            <g key={tick}>
              <path class="proof-axis" d={`M${x.toFixed(1)} ${AXIS}v5`} />
              <text
                class="proof-number"
                x={x.toFixed(1)}
                y={AXIS + 19}
                text-anchor={x < 2 * EDGE ? 'start' : x > WIDTH - 2 * EDGE ? 'end' : 'middle'}
              >
                {String(tick)}
              </text>
            </g>
          );
        })}
        <text class="proof-number" x={WIDTH - EDGE} y={AXIS + 36} text-anchor="end">
          {picture.axis({ name, unit: quantity[system].symbol })}
        </text>
      </svg>
    </figure>
  );
}
