import type { ChartPicture as Picture } from '../../quiz/chart-picture.ts';
import { ChartDrawing } from './ChartDrawing.tsx';
import { WordsText } from './WordsText.tsx';

interface ChartPictureProps {
  readonly chart: Picture;
  /** What opens the same in numbers. */
  readonly asTable: string;
}

/** The chart of a question, and what stands in it as numbers. */
export function ChartPicture({ chart, asTable }: ChartPictureProps) {
  return (
    <figure class="question-chart">
      <ChartDrawing chart={chart} />
      <figcaption>
        <WordsText words={chart.about} />
      </figcaption>
      <details>
        <summary>{asTable}</summary>
        {/* No region: a page may hold several of one name. */}
        <div class="table-scroll" role="group" aria-label={asTable} tabIndex={0}>
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
        </div>
      </details>
    </figure>
  );
}
