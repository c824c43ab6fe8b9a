import type { JSX } from 'preact';
import { linePath, parsePoints, roundPlace } from '../scale.ts';
import { words } from './words.en.ts';

export interface LabelProps {
  x: number;
  y: number;
  /** One line each; a leading '*' makes the line strong, a '~' quiet. */
  lines: readonly string[];
  anchor?: 'start' | 'middle' | 'end' | undefined;
  /** Leader: from beside the text, by way of any bends, to a dot on the part. */
  to?: string | undefined;
}

export const LINE_HEIGHT = 17;

export function Label({ x, y, lines, anchor = 'start', to }: LabelProps): JSX.Element {
  const bends = to === undefined ? [] : parsePoints(to);
  const end = bends.at(-1);
  return (
    <g>
      {end && (
        <>
          <path class="dw-leader" d={linePath(bends)} />
          <circle class="dw-dot" cx={roundPlace(end[0])} cy={roundPlace(end[1])} r="3" />
        </>
      )}
      <text class="dw-text" text-anchor={anchor}>
        {lines.map((line, i) => {
          const mark = line[0];
          const cls = mark === '*' ? 'dw-strong' : mark === '~' ? 'dw-quiet' : undefined;
          return (
            <tspan key={i} x={roundPlace(x)} y={roundPlace(y + i * LINE_HEIGHT)} class={cls}>
              {cls ? line.slice(1) : line}
            </tspan>
          );
        })}
      </text>
    </g>
  );
}

/** Holds is a filled band, slips a hatched one, each with its word: the site's rule for every picture. */
export function Verdict({
  id,
  x,
  y,
  holds,
  word,
}: {
  id: string;
  x: number;
  y: number;
  holds: boolean;
  word?: string | undefined;
}): JSX.Element {
  return (
    <g>
      <rect
        class={holds ? 'dw-tag-yes' : word ? 'dw-solid' : 'dw-cut'}
        fill={holds || word ? undefined : `url(#${id}-cut)`}
        x={roundPlace(x)}
        y={roundPlace(y)}
        width="62"
        height="22"
        rx="2"
      />
      <text
        class={holds ? 'dw-tag-yes-text' : 'dw-text dw-strong'}
        x={roundPlace(x + 31)}
        y={roundPlace(y + 16)}
        text-anchor="middle"
      >
        {word ?? (holds ? words.holds : words.slips)}
      </text>
    </g>
  );
}
