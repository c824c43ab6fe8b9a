import type { ChartPicture as Picture, PictureAxis } from '../../quiz/chart-picture.ts';
import { WordsText } from './WordsText.tsx';

interface ChartPictureProps {
  readonly chart: Picture;
  /** What opens the same in numbers. */
  readonly asTable: string;
}

/** The chart of a question: axes in the reader's units, lines told apart by letter and by how they are drawn. */
export function ChartPicture({ chart, asTable }: ChartPictureProps) {
  const { width, height, left, right, top, bottom, lines } = chart;
  return (
    <figure class="question-chart">
      <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
        {(['si', 'us'] as const).map((system) => (
          <g key={system} class={`u-${system}`}>
            <Ticks {...chart} axis={chart.x[system]} way="across" />
            <Ticks {...chart} axis={chart.y[system]} way="up" />
          </g>
        ))}
        <path class="question-chart-axis" d={`M${left} ${top}V${bottom}H${right}`} />
        {lines.map(({ path, letter, at: [x, y] }, place) => (
          <g key={letter}>
            <path class={`question-chart-line line-${place}`} d={path} />
            <text class="question-chart-letter" x={x} y={y}>
              {letter}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>
        <WordsText words={chart.about} />
      </figcaption>
      <details>
        <summary>{asTable}</summary>
        <table>
          <thead>
            <tr>
              {chart.head.map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {chart.rows.map((row, i) => (
              <tr key={i}>
                {row.map((cell, j) => (
                  <td key={j}>
                    <WordsText words={cell} />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </figure>
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
