import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { roundPlace } from '../scale.ts';
import { describeReachLadder, MINUTES } from './state.ts';
import { words } from './words.en.ts';

const TOP = 8;
const ROW = 62;
/** Room for the rule, above the pan. */
const RULE = 30;
const RULED = 3;
const FOOT = TOP + words.rungs.length * ROW + RULE;
const rowAt = (i: number): number => TOP + i * ROW + (i >= RULED ? RULE : 0);
/** The rails, and the bars: where none begins, and how long a minute is. */
const RAILS = [6, 82] as const;
const BARS = 234;
const MINUTE = 0.82;
const BAR = 12;
const barAt = (minutes: number): number => roundPlace(BARS + minutes * MINUTE);

/** What one has in hand on each rung, drawn from its upper left corner. */
const HELD: readonly ((id: string) => JSX.Element)[] = [
  // the seat
  () => (
    <path
      class="dw-solid"
      d="M24 4Q30 0 34 6L38 30H56Q62 30 62 36V40H34Q28 40 27 34ZM34 40V46M58 40V46"
    />
  ),
  // the dipstick
  () => (
    <>
      <circle class="dw-solid" cx={44} cy={7} r={6} />
      <path class="dw-line" d="M44 13V46M39 34H49M39 41H49" />
    </>
  ),
  // the gauge
  () => (
    <>
      <circle class="dw-solid" cx={44} cy={18} r={16} />
      <path class="dw-line" d="M44 6v4M32 18h4M52 18h4M44 18L52 11M44 34V46" />
      <circle class="dw-ink" cx={44} cy={18} r={3} />
    </>
  ),
  // the pan, and what drips into it
  (id) => (
    <>
      <Cut id={id} d={box(16, 2, 56, 7)} />
      <path class="dw-line" d="M32 14v5M44 17v6M56 13v5" />
      <path class="dw-solid" d="M16 28H72V32H66L60 46H28L22 32H16Z" />
    </>
  ),
  // the transmission on the bench
  (id) => (
    <>
      <Cut id={id} d="M18 2H28V8H58L70 14V30L58 36H28V42H18Z" />
      <path class="dw-solid" d="M70 18H78V26H70Z" />
      <path class="dw-line" d="M12 46H78M34 36V46M54 36V46" />
    </>
  ),
];

/** From the seat down: what is reached for, with the minutes it takes to scale. */
export function ReachLadderDrawing({ id }: { id: string }): JSX.Element {
  const last = MINUTES.length - 1;
  const rule = rowAt(RULED) - RULE + 2;
  return (
    <Frame id={id} width={390} height={FOOT} title={words.title} desc={describeReachLadder()}>
      {RAILS.map((x) => (
        <path key={x} class="dw-line" d={`M${x} ${TOP - 6}V${FOOT - 2}`} />
      ))}
      {words.rungs.map(({ name, minutes }, i) => {
        const y = rowAt(i);
        const [least = 0, most = 0] = MINUTES[i] ?? [];
        const bar = { x: barAt(least), y: y + 28, width: roundPlace(barAt(most) - barAt(least)) };
        return (
          <g key={i}>
            <g transform={`translate(0 ${y})`}>{HELD[i]?.(id)}</g>
            <path class="dw-line" d={`M${RAILS[0]} ${y + 52}H${RAILS[1]}`} />
            <Label x={94} y={y + 18} lines={name} />
            <Label x={BARS} y={y + 18} lines={[minutes]} />
            {i === last ? (
              <path class="dw-line" d={`M${BARS} ${bar.y + BAR / 2}H372M366 ${bar.y}l8 6l-8 6`} />
            ) : (
              <>
                <path class="dw-line" d={`M${BARS} ${bar.y + BAR}H382`} />
                <rect class="dw-ink" {...bar} height={BAR} />
              </>
            )}
          </g>
        );
      })}
      <path class="dw-line reach-rule" d={`M0 ${rule}H390`} />
      <Label x={94} y={rule + 19} lines={words.first} />
    </Frame>
  );
}
