import { LineChart } from '../../charts/LineChart.tsx';
import { MARK_MM, mmOf, WINDOW_C } from '../../car/pan.ts';
import { training } from '../../engine/index.ts';
import { dimension, fluidVolume } from '../../quantity/part-quantities.ts';
import { printer } from '../../quantity/print.ts';
import { temperature } from '../../quantity/quantities.ts';
import { TEMP_AXIS, TEMPS } from '../../simulation/choices/temperatures.ts';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
import { levelAt, type LevelModel } from './model.ts';

const RIGHT = TEMPS.map((temp) => levelAt({ temp }).stickMm);

/** The same fill at every temperature, and what is taken for granted; fetched once the answer is out. */
export function Below({ model }: PictureProps<LevelModel>) {
  const print = printer(useUnits());
  const { off, temp } = model.givens;
  const here = TEMPS.map((tempC) => levelAt({ off: off.value, temp: tempC }).stickMm);
  const { chart, taken } = words;
  return (
    <>
      <LineChart
        id="level-window-stick"
        name={chart.name}
        takeaway={chart.takeaway}
        xAxis={TEMP_AXIS}
        yAxis={{ label: chart.y, quantity: dimension, min: -80, max: 50 }}
        x={TEMPS}
        series={[
          { id: 'right', label: chart.right, kind: 'healthy', y: RIGHT },
          { id: 'here', label: chart.here, kind: 'plain', y: here },
        ]}
        bands={[{ id: 'marks', kind: 'needed', label: chart.marks, from: -MARK_MM, to: MARK_MM }]}
        marks={[
          {
            id: 'now',
            kind: 'now',
            x: temp.value,
            y: levelAt({ off: off.value, temp: temp.value }).stickMm,
            words: chart.now,
          },
        ]}
        height="short"
      />
      <div class="level-taken">
        <p>
          <strong>{taken.head}</strong>{' '}
          {taken.model({
            fill: print(training.sump.fill * 1e3, fluidVolume),
            litre: print(1, fluidVolume),
            lifts: print(mmOf(1), dimension),
            from: print(WINDOW_C.from, temperature),
            to: print(WINDOW_C.to, temperature),
          })}
        </p>
        <p>{taken.pressure}</p>
        <p>{taken.left}</p>
      </div>
    </>
  );
}
