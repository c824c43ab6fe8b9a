import { scaleLinear } from 'd3-scale';
import type { NumericKind } from '../../diagnosis/index.ts';
import { measuredAs } from '../../planner/amounts.ts';
import { toShown } from '../../quantity/quantity.ts';
import { printNumber } from '../../quantity/language.ts';
import { useUnits } from '../../ui/use-units.ts';
import { words } from '../words.en.ts';

/** Where the scale of a dial ends, metric. */
const FULL = { linePressure: 2000, clutchPressure: 2000, airTest: 100 } as const;
const [WIDTH, HEIGHT, X, Y, REACH] = [240, 150, 120, 128, 96];
const [FROM, TO] = [-Math.PI * 0.94, -Math.PI * 0.06];
const at = (turn: number, reach: number): readonly [number, number] => [
  X + reach * Math.cos(turn),
  Y + reach * Math.sin(turn),
];
const line = (turn: number, from: number, to: number): string => {
  const [x1, y1] = at(turn, from);
  const [x2, y2] = at(turn, to);
  return `M${x1.toFixed(1)} ${y1.toFixed(1)}L${x2.toFixed(1)} ${y2.toFixed(1)}`;
};
const arc = (reach: number): string => {
  const [x1, y1] = at(FROM, reach);
  const [x2, y2] = at(TO, reach);
  return `M${x1.toFixed(1)} ${y1.toFixed(1)}A${reach} ${reach} 0 0 1 ${x2.toFixed(1)} ${y2.toFixed(1)}`;
};

interface DialProps {
  readonly title: string;
  readonly of: keyof typeof FULL & NumericKind;
  readonly value: number;
  readonly shown: string;
}

/** A needle over a half round; the scale is the reader's own. */
export function Dial({ title, of, value, shown }: DialProps) {
  const system = useUnits();
  const { quantity } = measuredAs[of];
  const scale = scaleLinear([0, toShown(FULL[of], quantity, system)], [FROM, TO]).clamp(true);
  return (
    <svg
      class="case-picture"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`${title}. ${words.instrument.gaugeDesc({ value: shown })}`}
    >
      <path class="case-line" d={arc(REACH)} />
      {scale.ticks(6).map((mark) => {
        const turn = scale(mark);
        const [x, y] = at(turn, REACH - 26);
        return (
          <g key={mark}>
            <path class="case-line" d={line(turn, REACH - 12, REACH)} />
            <text class="case-text" x={x.toFixed(1)} y={(y + 5).toFixed(1)} text-anchor="middle">
              {printNumber(mark, 0)}
            </text>
          </g>
        );
      })}
      <text class="case-text" x={X} y={HEIGHT - 4} text-anchor="middle">
        {quantity[system].symbol}
      </text>
      <path class="case-needle" d={line(scale(toShown(value, quantity, system)), 0, REACH - 8)} />
      <circle class="case-ink" cx={X} cy={Y} r="6" />
    </svg>
  );
}

/** The line gauge while somebody watches its needle. */
export function Swinging({ swings }: { readonly swings: boolean }) {
  const { flutter, flutterTitle } = words.instrument;
  const middle = (FROM + TO) / 2;
  const needles = swings ? [-0.28, -0.14, 0, 0.14, 0.28] : [0];
  return (
    <svg
      class="case-picture"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`${flutterTitle}. ${flutter[swings ? 'flutters' : 'steady']}`}
    >
      <path class="case-line" d={arc(REACH)} />
      {needles.map((off) => (
        <path
          key={off}
          class={off === 0 ? 'case-needle' : 'case-line'}
          d={line(middle + off, 0, REACH - 8)}
        />
      ))}
      <circle class="case-ink" cx={X} cy={Y} r="6" />
    </svg>
  );
}
