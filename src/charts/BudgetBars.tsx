import { useRef } from 'preact/hooks';
import { format } from '../quantity/print.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { textFor, type UnitText } from '../quantity/unit-system.ts';
import { useUnits } from '../ui/use-units.ts';
import { ChartFigure, type ChartHeight } from './ChartFigure.tsx';
import { hatchFill, Hatches, type HatchDensity } from './Hatches.tsx';
import { round } from './path.ts';
import { placeLabels } from './place-labels.ts';
import { LINE_HEIGHT, TextLines } from './TextLines.tsx';
import { useSize } from './use-size.ts';
import { words } from './words.en.ts';
import { wrap } from './wrap.ts';

export interface BudgetPart {
  readonly id: string;
  readonly label: string;
  /** Metric, zero or more. */
  readonly value: number;
  /** Told apart by hatch, not hue; `full` is solid ink: keep it for the part the story is about. */
  readonly fill: HatchDensity | 'open' | 'full';
}

export interface BudgetBarsProps {
  readonly id: string;
  readonly name: string;
  readonly takeaway: UnitText;
  readonly quantity: Quantity;
  /** What there is to share out, as in "Pump gives". */
  readonly supply: { readonly label: string; readonly value: number };
  /** Where it goes, from the bottom of the column up. They should add up to the supply. */
  readonly parts: readonly BudgetPart[];
  /** Full height of the scale; fixed while controls move. */
  readonly max: number;
  readonly height?: ChartHeight;
}

/** How far the parts are from the supply, when that is more than rounding; the picture then says so. */
export function shortfall(supply: number, parts: readonly { readonly value: number }[]): number {
  const missing = supply - parts.reduce((sum, { value }) => sum + value, 0);
  return Math.abs(missing) > Math.max(1e-9, Math.abs(supply) * 1e-6) ? missing : 0;
}

/** Two columns of the same height: what comes in, and where it goes, every part with its words and number. */
export function BudgetBars(budget: BudgetBarsProps) {
  const { id, name, takeaway, quantity, supply, parts, max, height = 'normal' } = budget;
  const box = useRef<HTMLDivElement>(null);
  const size = useSize(box);
  const system = useUnits();
  const { width, height: tall, em } = size;
  const top = em * 2;
  const bottom = tall - em * 0.8;
  const column = Math.min(em * 8, width * 0.2);
  const first = em * 0.4;
  const second = first + column + em * 0.7;
  const labels = second + column + em * 1.6;
  const rise = (value: number): number =>
    (Math.min(Math.max(0, value), max) / max) * (bottom - top);

  let level = bottom;
  const blocks = parts.map((part) => {
    const tallness = rise(part.value);
    level -= tallness;
    return { part, top: level, height: tallness };
  });
  const texts = parts.map((part) =>
    wrap(`${part.label} ${format(part.value, quantity, system)}`, width - labels, em),
  );
  const middles = placeLabels(
    blocks.map((block, i) => ({
      at: block.top + block.height / 2,
      height: (texts[i]?.length ?? 1) * em * LINE_HEIGHT + em * 0.2,
    })),
    em * 1.4,
    tall,
  );
  const missing = shortfall(supply.value, parts);
  const shown = `${textFor(takeaway, system)}${missing === 0 ? '' : ` ${words.missing(format(missing, quantity, system))}`}`;

  return (
    <ChartFigure
      id={id}
      name={name}
      takeaway={shown}
      box={box}
      size={size}
      height={height}
      tables={() => [
        {
          caption: name,
          columns: [
            { label: words.where, words: [supply.label, ...parts.map(({ label }) => label)] },
            {
              label: quantity.name,
              quantity,
              values: [supply.value, ...parts.map(({ value }) => value)],
            },
          ],
        },
      ]}
    >
      <Hatches id={id} />
      <rect
        class="part open"
        x={round(first)}
        y={round(bottom - rise(supply.value))}
        width={round(column)}
        height={round(rise(supply.value))}
      />
      <TextLines
        lines={[`${supply.label} ${format(supply.value, quantity, system)}`]}
        x={first}
        y={bottom - rise(supply.value) - em * 0.8}
        em={em}
      />
      <path
        class="axis"
        d={`M${round(first - em * 0.4)} ${round(bottom)}H${round(second + column + em * 0.4)}`}
      />
      {blocks.map(({ part, top: y, height: h }, i) => (
        <g key={part.id}>
          <rect
            class={`part ${part.fill}`}
            fill={
              part.fill === 'open' || part.fill === 'full' ? undefined : hatchFill(id, part.fill)
            }
            x={round(second)}
            y={round(y)}
            width={round(column)}
            height={round(h)}
          />
          <path
            class="leader plain"
            d={`M${round(second + column)} ${round(y + h / 2)}L${round(labels - em * 0.4)} ${round(middles[i] ?? 0)}`}
          />
          <TextLines
            lines={texts[i] ?? []}
            x={labels}
            y={middles[i] ?? 0}
            em={em}
            kind={part.fill === 'full' ? 'strong' : undefined}
          />
        </g>
      ))}
    </ChartFigure>
  );
}
