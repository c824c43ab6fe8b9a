import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { describeLogPatterns } from './state.ts';
import { words, type Pattern } from './words.en.ts';

/** A plot's own box, its engine speed, and where Drive is selected. */
const PLOT = { width: 176, height: 76, idle: 22, drive: 36 };
const STEP = { across: 200, down: 138 };

/** Turbine speed from the left edge, in the plot's own box: as a shape, with no scale. */
const TURBINE: Readonly<Record<Pattern, string>> = {
  stays: 'M0 24H176',
  late: 'M0 24H96L112 74H176',
  part: 'M0 24H60C68 46 76 52 92 52H176',
  climbs: 'M0 24H52L64 74H112C130 68 150 44 176 18',
  zero: 'M0 24H84L88 74L92 24H176',
  bumps: 'M0 36H40L44 56L48 36H84L88 58L92 36H134L138 54L142 36H176',
};
/** Engine speed, where it does more than idle. */
const ENGINE: Partial<Record<Pattern, string>> = {
  climbs: 'M0 22H112C130 18 150 10 176 4',
  bumps: 'M0 14H176',
};
/** Drive was selected long before these. */
const ON_THE_ROAD: readonly Pattern[] = ['bumps'];

/** The road under it, with a bump at each dip. */
const BUMPS = 'M0 76V72H38l6 -6l6 6H82l6 -6l6 6H132l6 -6l6 6H176V76Z';

/** Small traces of what a log may show, each with its meaning under it. */
export function LogPatternsDrawing({ id }: { id: string }): JSX.Element {
  const patterns = Object.keys(words.patterns) as Pattern[];
  const rows = patterns.length / 2;
  return (
    <Frame
      id={id}
      width={390}
      height={rows * STEP.down + 4}
      title={words.title}
      desc={describeLogPatterns()}
    >
      {patterns.map((pattern, i) => (
        <g
          key={pattern}
          transform={`translate(${6 + (i % 2) * STEP.across} ${10 + Math.floor(i / 2) * STEP.down})`}
        >
          <path class="dw-line" d={`M0 0V${PLOT.height}H${PLOT.width}`} />
          {!ON_THE_ROAD.includes(pattern) && (
            <path class="dw-line" d={`M${PLOT.drive} ${PLOT.height - 5}v10`} />
          )}
          <path class="dw-line dw-off" d={ENGINE[pattern] ?? `M0 ${PLOT.idle - 6}H176`} />
          <path class="dw-line dw-flow-ink" d={TURBINE[pattern]} />
          {ON_THE_ROAD.includes(pattern) && <Cut id={id} d={BUMPS} />}
          <Label x={0} y={PLOT.height + 22} lines={words.patterns[pattern]} />
        </g>
      ))}
    </Frame>
  );
}
