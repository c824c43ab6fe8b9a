import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import type { JSX } from 'preact';
import type { Bin } from './figures.ts';
import { words } from './words.en.ts';

const TITLE = 'reliability-title';
const DESC = 'reliability-desc';
const SIDE = 360;
const LEFT = 56;
const TOP = 14;
const FOOT = 62;
const RIGHT = 22;
const TICKS = [0, 0.2, 0.4, 0.6, 0.8, 1];
/** Of a normal law, for 95 %. */
const Z = 1.96;

/** Where a share may lie that was found on so many cars, 95 % (E. B. Wilson's score interval, 1927). */
export function wilson(share: number, n: number): readonly [number, number] {
  const middle = (share + Z ** 2 / (2 * n)) / (1 + Z ** 2 / n);
  const half = (Z * Math.sqrt((share * (1 - share)) / n + (Z / (2 * n)) ** 2)) / (1 + Z ** 2 / n);
  return [middle - half, middle + half];
}

const whole = (share: number): string => String(Math.round(100 * share));

/** What the planner said against how often it was right: drawn at build, nothing moves. */
export function Reliability({ bins }: { readonly bins: readonly Bin[] }): JSX.Element {
  const x = scaleLinear([0, 1], [LEFT, SIDE - RIGHT]);
  const y = scaleLinear([0, 1], [SIDE - FOOT, TOP]);
  const path = line<readonly [number, number]>(
    ([said]) => x(said),
    ([, right]) => y(right),
  );
  const even = path([
    [0, 0],
    [1, 1],
  ]);
  return (
    <svg
      class="reliability"
      viewBox={`0 0 ${SIDE} ${SIDE}`}
      role="img"
      aria-labelledby={`${TITLE} ${DESC}`}
    >
      <title id={TITLE}>{words.diagramTitle}</title>
      <desc id={DESC}>{words.diagramDesc(bins.length)}</desc>
      <g class="grid">
        {TICKS.map((tick) => (
          <path key={tick} d={`M${x(tick)} ${TOP}V${y(0)}M${LEFT} ${y(tick)}H${x(1)}`} />
        ))}
      </g>
      <path class="axis" d={`M${LEFT} ${TOP}V${y(0)}H${x(1)}`} />
      <path class="even" d={even ?? ''} />
      <g class="ticks">
        {TICKS.map((tick) => (
          <text key={`x${tick}`} x={x(tick)} y={y(0) + 20} text-anchor="middle">
            {whole(tick)}
          </text>
        ))}
        {TICKS.map((tick) => (
          <text key={`y${tick}`} x={LEFT - 8} y={y(tick) + 5} text-anchor="end">
            {whole(tick)}
          </text>
        ))}
      </g>
      <text class="title" x={(LEFT + SIDE - RIGHT) / 2} y={SIDE - 12} text-anchor="middle">
        {words.across}
      </text>
      <text
        class="title"
        transform={`translate(16 ${(TOP + y(0)) / 2}) rotate(-90)`}
        text-anchor="middle"
      >
        {words.up}
      </text>
      {bins.map(({ from, said, right, cars }) => {
        const [low, high] = wilson(right, cars);
        return (
          <g key={from} class="bin">
            <path d={`M${x(said)} ${y(low)}V${y(high)}`} />
            <circle cx={x(said)} cy={y(right)} r="5" />
          </g>
        );
      })}
    </svg>
  );
}
