import type { LineLayout } from './line-layout.ts';
import { hatchFill } from './Hatches.tsx';
import { round } from './path.ts';
import { TextLines } from './TextLines.tsx';
import { textWidth } from './wrap.ts';

interface StripsProps {
  readonly id: string;
  readonly layout: LineLayout;
  readonly em: number;
  readonly at: number | null;
}

/**
 * Rows of states along x. A state too short for its words gets them when the cursor stands in it, the last one
 * whenever there is none; all of them are in the table below the chart.
 */
export function Strips({ id, layout, em, at }: StripsProps) {
  const { frame, x, strips, stripTops, stripHeight } = layout;
  return (
    <>
      {strips.map((strip, row) => {
        const top = stripTops[row] ?? 0;
        const last = strip.states.at(-1);
        const fits = (label: string, room: number) => textWidth(label, em) + em * 0.6 <= room;
        // What it has come to is named in any case.
        const ended =
          last && !fits(last.label, frame.right - x.place(last.from)) ? last : undefined;
        const inForce = at === null ? ended : strip.states.find((s) => at >= s.from && at < s.to);
        return (
          <g key={strip.id} class="strip">
            <TextLines
              lines={[strip.label]}
              x={frame.left}
              y={top - em * 0.65}
              em={em}
              kind="strip-name"
            />
            {strip.states.map((state) => {
              const start = Math.max(frame.left, x.place(state.from));
              const end = Math.min(frame.right, x.place(state.to));
              if (end <= start) return null;
              return (
                <g key={state.from}>
                  <rect
                    class={`state ${state.kind}`}
                    fill={state.kind === 'hatched' ? hatchFill(id, 'even') : undefined}
                    x={round(start)}
                    y={round(top)}
                    width={round(end - start)}
                    height={round(stripHeight)}
                  />
                  {fits(state.label, end - start) && (
                    <TextLines
                      lines={[state.label]}
                      x={(start + end) / 2}
                      y={top + stripHeight / 2}
                      em={em}
                      anchor="middle"
                      kind="state-name"
                    />
                  )}
                </g>
              );
            })}
            {inForce && (
              <TextLines
                lines={[inForce.label]}
                x={frame.right}
                y={top - em * 0.65}
                em={em}
                anchor="end"
                kind="strip-now"
              />
            )}
          </g>
        );
      })}
    </>
  );
}
