import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { ChartPicture as Picture, PictureAxis } from '../../quiz/chart-picture.ts';

interface ChartDrawingProps {
  readonly chart: Picture;
  /** Whoever reads decides where none is given. */
  readonly system?: UnitSystem;
}

/** Lines are told apart by letter and by how they are drawn. */
export function ChartDrawing({ chart, system }: ChartDrawingProps) {
  const { width, height, left, right, top, bottom, lines } = chart;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} preserveAspectRatio="xMinYMin" aria-hidden="true">
      {(system === undefined ? (['si', 'us'] as const) : [system]).map((one) => (
        <g key={one} class={system === undefined ? `u-${one}` : undefined}>
          <Ticks {...chart} axis={chart.x[one]} way="across" />
          <Ticks {...chart} axis={chart.y[one]} way="up" />
        </g>
      ))}
      <path class="question-chart-axis" d={`M${left} ${top}V${bottom}H${right}`} />
      {lines.map(({ path, letter, x, y }, place) => (
        <g key={letter}>
          <path class={`question-chart-line line-${place}`} d={path} />
          <text class="question-chart-letter" x={x} y={y}>
            {letter}
          </text>
        </g>
      ))}
    </svg>
  );
}

interface TicksProps extends Pick<Picture, 'left' | 'right' | 'top' | 'bottom' | 'height'> {
  readonly axis: PictureAxis;
  readonly way: 'across' | 'up';
}

function Ticks({ axis, way, left, right, bottom, height }: TicksProps) {
  const across = way === 'across';
  return (
    <g>
      {axis.ticks.map(({ place, text }) => (
        <g key={text}>
          <path
            class="question-chart-tick"
            d={across ? `M${place} ${bottom}v5` : `M${left} ${place}H${right}`}
          />
          {across ? (
            <text x={place} y={bottom + 19} text-anchor="middle">
              {text}
            </text>
          ) : (
            <text x={left - 6} y={place + 4} text-anchor="end">
              {text}
            </text>
          )}
        </g>
      ))}
      {across ? (
        <text x={right} y={height - 8} text-anchor="end">
          {axis.title}
        </text>
      ) : (
        <text x="0" y="13">
          {axis.title}
        </text>
      )}
    </g>
  );
}
