import { still } from '../ui/still.ts';
import { round } from './path.ts';

interface TextLinesProps {
  readonly lines: readonly string[];
  readonly x: number;
  /** The middle of the block. */
  readonly y: number;
  readonly em: number;
  readonly anchor?: 'start' | 'middle' | 'end' | undefined;
  readonly kind?: string | undefined;
}

export const LINE_HEIGHT = 1.15;

/** A few lines of text about a middle. Baselines are set by number: `dominant-baseline` differs between browsers. */
export const TextLines = still(({ lines, x, y, em, anchor = 'start', kind }: TextLinesProps) => {
  const step = em * LINE_HEIGHT;
  const first = y - ((lines.length - 1) * step) / 2 + em * 0.35;
  return (
    <text class={kind} text-anchor={anchor} x={round(x)} y={round(first)}>
      {lines.length === 1
        ? lines[0]
        : lines.map((line, i) => (
            <tspan key={i} x={round(x)} y={round(first + i * step)}>
              {line}
            </tspan>
          ))}
    </text>
  );
});
