import { printer } from '../../quantity/print.ts';
import { fromShown, toShown } from '../../quantity/quantity.ts';
import { pressure } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import { commands } from './cars.ts';
import type { GaugeModel } from './model.ts';
import { columnAt, isHot, otherWarmth, placeAt, readingAt } from './places.ts';
import { words } from './words.en.ts';

/** Full scale [kPa], the middle of the dial and its radius, in the drawing's units. */
const FULL = 1400;
const X = 195;
const Y = 148;
const RADIUS = 116;
/** From one printed number to the next, and how many short ticks that makes. */
const STEPS = { us: { by: 50, parts: 5 }, si: { by: 400, parts: 4 } } as const;

const { gauge } = words;

/** A point of the dial, from nothing on the left to full scale on the right. */
function on(kPa: number, radius: number): readonly [number, number] {
  const angle = Math.PI * (1 - Math.min(1, Math.max(0, kPa / FULL)));
  const round = (value: number) => Number(value.toFixed(1));
  return [round(X + radius * Math.cos(angle)), round(Y - radius * Math.sin(angle))];
}
const ray = (kPa: number, from: number, to: number): string =>
  `M${on(kPa, from).join(' ')}L${on(kPa, to).join(' ')}`;

/** One hand of the gauge, with its word beside it, on the side away from the other. */
function Needle({ kPa, hot, thin, left }: NeedleProps) {
  const [x, y] = on(kPa, 66);
  const [endX, endY] = on(kPa, RADIUS);
  // A step across the hand: its word is wider than high, so it takes a longer one along than up.
  const [along, up] = [(endY - Y) / RADIUS, (X - endX) / RADIUS];
  const side = left ? 1 : -1;
  return (
    <>
      <path
        class={`gauge-needle ${hot ? 'gauge-hot' : 'gauge-cold'}${thin ? ' gauge-thin' : ''}`}
        d={ray(kPa, 0, RADIUS - 6)}
      />
      <text
        class="gauge-name"
        x={x + 24 * side * along}
        y={y + 14 * side * up + 5}
        text-anchor="middle"
      >
        {hot ? gauge.hot : gauge.cold}
      </text>
    </>
  );
}
interface NeedleProps {
  readonly kPa: number;
  readonly hot: boolean;
  readonly thin: boolean;
  readonly left: boolean;
}

/** Numbers and ticks, in the unit of the reader. */
function Scale() {
  const system = useUnits();
  const { by, parts } = STEPS[system];
  const most = toShown(FULL, pressure, system);
  const at = (n: number) => fromShown((n * by) / parts, pressure, system);
  const ticks = Array.from({ length: Math.floor((most / by) * parts) + 1 }, (_, n) => n);
  return (
    <>
      <path
        class="gauge-arc"
        d={`M${X - RADIUS} ${Y}A${RADIUS} ${RADIUS} 0 0 1 ${X + RADIUS} ${Y}`}
      />
      {ticks.map((n) => {
        const long = n % parts === 0;
        const [x, y] = on(at(n), RADIUS + 8);
        return (
          <g key={n}>
            <path class="gauge-tick" d={ray(at(n), RADIUS - (long ? 12 : 6), RADIUS)} />
            {long && (
              <text
                class="gauge-number"
                x={x}
                y={y + 4}
                text-anchor={x < X - 20 ? 'end' : x > X + 20 ? 'start' : 'middle'}
              >
                {String((n * by) / parts)}
              </text>
            )}
          </g>
        );
      })}
    </>
  );
}

/** A pressure gauge: the last reading beside its command, and the same at the other temperature where it was taken. */
export function Dial({ model }: { readonly model: GaugeModel }) {
  const print = printer(useUnits());
  const { shown, taken, read } = model;
  const now = shown.value;
  const kPa = (reading: number) => read.value[reading] ?? 0;
  const column = now === null ? 0 : columnAt(now);
  const partner = now === null ? null : readingAt(placeAt(now), otherWarmth(column));
  const other = partner !== null && taken.value.includes(partner) ? partner : null;
  const command = now === null ? null : (commands()[now] ?? 0);
  const said =
    now === null || command === null
      ? gauge.none
      : gauge.reads({ read: print(kPa(now), pressure), command: print(command, pressure) });
  return (
    <svg class="gauge-dial" viewBox="0 0 390 180" role="img" aria-label={said}>
      <Scale />
      {command !== null && (
        <path
          class="gauge-command"
          d={`M${on(command, RADIUS - 2).join(' ')}L${on(command + 28, RADIUS - 20).join(' ')}L${on(command - 28, RADIUS - 20).join(' ')}Z`}
        />
      )}
      {other !== null && now !== null && (
        <Needle kPa={kPa(other)} hot={isHot(columnAt(other))} thin left={kPa(other) < kPa(now)} />
      )}
      {now !== null && (
        <Needle
          kPa={kPa(now)}
          hot={isHot(column)}
          thin={false}
          left={other === null ? kPa(now) < FULL / 2 : kPa(now) <= kPa(other)}
        />
      )}
      <circle class="gauge-hub" cx={X} cy={Y} r="6" />
      <text class="gauge-reads" x={X} y={Y + 26} text-anchor="middle">
        {said}
      </text>
    </svg>
  );
}
