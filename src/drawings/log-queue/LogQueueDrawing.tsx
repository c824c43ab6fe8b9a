import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { describeLogQueue, gapsOf, turnOf, turnsOf, type LogQueueState } from './state.ts';
import { words } from './words.en.ts';

const LEFT = 5;
const WIDTH = 380;
const TOP = 40;
const ROW = 74;

/** The same second of the line under several lists: each slot one value, the turbine's inked. */
export function LogQueueDrawing({ id, state }: { id: string; state: LogQueueState }): JSX.Element {
  const { slots, lists } = state;
  const slot = WIDTH / slots;
  const foot = TOP + lists.length * ROW;
  return (
    <Frame
      id={id}
      width={390}
      height={foot + 36}
      title={words.title}
      desc={describeLogQueue(state)}
    >
      {lists.map((items, row) => {
        const y = TOP + row * ROW;
        const head = words.head({ items: String(items), turns: String(turnsOf(state, items)) });
        return (
          <g key={items}>
            <Label x={LEFT} y={y - 10} lines={[head]} />
            {gapsOf(state, items).map(([from, to]) => (
              <Cut key={from} id={id} d={box(LEFT + from * slot, y + 30, (to - from) * slot, 9)} />
            ))}
            {Array.from({ length: slots }, (_, i) => {
              const mine = turnOf(i, items) === 0;
              const x = LEFT + i * slot;
              return (
                <g key={i}>
                  <rect
                    class={mine ? 'dw-tag-yes' : 'dw-solid'}
                    {...{ x, y, width: slot, height: 30 }}
                  />
                  {mine && (
                    <text class="dw-tag-yes-text" x={x + slot / 2} y={y + 20} text-anchor="middle">
                      {words.turbine}
                    </text>
                  )}
                </g>
              );
            })}
          </g>
        );
      })}
      <path class="dw-line" d={`M${LEFT} ${foot - 22}v8h${WIDTH}v-8`} />
      <Label x={LEFT} y={foot + 10} lines={[words.second]} />
      <Label x={LEFT + WIDTH} y={foot + 10} anchor="end" lines={words.marks} />
    </Frame>
  );
}
