import { LineChart } from '../../charts/LineChart.tsx';
import { pressure, seconds } from '../../quantity/quantities.ts';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { END, type WholeCarModel } from './model.ts';
import { OnOwnSheet } from './OnOwnSheet.tsx';
import { words } from './words.en.ts';

const { chart } = words;
const TIME = { label: chart.time, quantity: seconds, min: 0, max: END };
const CLUTCH = { label: chart.clutch, quantity: pressure, min: 0 };
const LINE = { label: chart.line, quantity: pressure, min: 0 };
const TOP_KPA = { clutch: 800, line: 1000 };

/** What two gauges would have drawn. */
export function Below({ model, stage }: PictureProps<WholeCarModel>) {
  const cold = model.cold.value;
  const hot = model.hot.value;
  /** As drawn for the training transmission, or as high as another one goes. */
  const top = (usual: number, ...all: readonly (readonly number[])[]): number =>
    model.own.value === null ? usual : Math.max(usual, ...all.flat());
  const shared = { xAxis: TIME, x: model.times, cursor: model.givens.time, cursorStays: true };
  return (
    <>
      <OnOwnSheet model={model} open={stage === 'own'} />
      <LineChart
        id="whole-car-clutch"
        name={chart.clutch}
        takeaway={chart.clutchTakeaway}
        yAxis={{
          ...CLUTCH,
          max: top(TOP_KPA.clutch, hot.wanted, cold.clutch, hot.clutch),
        }}
        series={[
          { id: 'wanted', label: chart.wanted, kind: 'plain', y: hot.wanted },
          { id: 'cold', label: chart.had.cold, kind: 'cold', y: cold.clutch },
          { id: 'hot', label: chart.had.hot, kind: 'hot', y: hot.clutch },
        ]}
        {...shared}
      />
      <LineChart
        id="whole-car-line"
        name={chart.line}
        takeaway={chart.lineTakeaway}
        yAxis={{ ...LINE, max: top(TOP_KPA.line, cold.line, hot.line) }}
        series={[
          { id: 'cold', label: chart.cold, kind: 'cold', y: cold.line },
          { id: 'hot', label: chart.hot, kind: 'hot', y: hot.line },
        ]}
        {...shared}
      />
    </>
  );
}
