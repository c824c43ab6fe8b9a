import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { describeHoursOrDegrees } from './state.ts';
import { words } from './words.en.ts';

const PANEL = 176;
const ROW = 30;
const BARS = 196;
const LONG = 184;
const SHORT = 46;
/** How long each car waits at its three starts: long or short, not measured. */
const WAITS = [
  [LONG, SHORT, LONG],
  [LONG, LONG, SHORT],
] as const;

/** What the first car goes by. */
const Clock = (): JSX.Element => (
  <>
    <circle class="dw-solid" cx={20} cy={18} r={15} />
    <path class="dw-line" d="M20 8V18L28 22" />
  </>
);
/** What the second car goes by. */
const Thermometer = (): JSX.Element => (
  <>
    <path class="dw-solid" d="M16 4Q20 0 24 4V22A7 7 0 1 1 16 22Z" />
    <circle class="dw-ink" cx={20} cy={28} r={4} />
    <path class="dw-line" d="M20 14V28" />
  </>
);
const SIGNS = [Clock, Thermometer] as const;

/** Two cars that are late in the frost, and the second start that tells them apart. */
export function HoursOrDegreesDrawing({ id }: { id: string }): JSX.Element {
  return (
    <Frame
      id={id}
      width={390}
      height={2 * PANEL}
      title={words.title}
      desc={describeHoursOrDegrees()}
    >
      {words.cars.map(({ head, waits, points }, car) => {
        const Sign = SIGNS[car] ?? Clock;
        return (
          <g key={car} transform={`translate(0 ${car * PANEL})`}>
            <Sign />
            <Label x={46} y={24} lines={head} />
            {car === 0 && <Label x={BARS} y={24} lines={[`~${words.wait}`]} />}
            <path class="dw-line" d={`M${BARS} 36V${40 + 3 * ROW}`} />
            {waits.map((wait, i) => {
              const width = WAITS[car]?.[i] ?? 0;
              return (
                <g key={i}>
                  <Label x={BARS - 10} y={40 + i * ROW + 18} lines={[wait]} anchor="end" />
                  <Cut id={id} d={box(BARS, 40 + i * ROW + 5, width, 18)} />
                </g>
              );
            })}
            <Label x={BARS} y={40 + 3 * ROW + 14} lines={points} />
          </g>
        );
      })}
    </Frame>
  );
}
