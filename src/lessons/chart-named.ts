import { chartIds, chartOf } from '../question-charts/index.ts';
import type { ChartPicture } from '../quiz/chart-picture.ts';
import { allowedWords } from './check/nearest.ts';

/** What a writer is told who names a chart that is not there. */
export const noChart = (id: string): string =>
  `There is no chart "${id}". ${allowedWords(id, chartIds, 'src/question-charts')}`;

/** The chart of that name; throws where there is none. */
export function chartNamed(id: string): ChartPicture {
  const chart = chartOf(id);
  if (chart === undefined) throw new Error(noChart(id));
  return chart;
}
