import { LineChart } from '../../charts/LineChart.tsx';
import { litresOf, MARK_MM, WINDOW_C } from '../../car/pan.ts';
import { training } from '../../engine/index.ts';
import { dimension, fluidVolume } from '../../quantity/part-quantities.ts';
import { printer } from '../../quantity/print.ts';
import { temperature } from '../../quantity/quantities.ts';
import { TEMP_AXIS, TEMPS } from '../../simulation/choices/temperatures.ts';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
import { levelAt, type LevelModel } from './model.ts';

/** What the stick shows, or nothing where it comes out dry. */
function shownAt(off: number, temp: number): number | null {
  const { stickMm, stickDry } = levelAt({ off, temp });
  return stickDry ? null : stickMm;
}
const RIGHT = TEMPS.map((temp) => levelAt({ temp }).stickMm);

/** The same fill at every temperature, and what is taken for granted; fetched once the answer is out. */
export function Below({ model }: PictureProps<LevelModel>) {
  const print = printer(useUnits());
  const { off, temp } = model.givens;
  const here = TEMPS.map((tempC) => shownAt(off.value, tempC));
  const now = shownAt(off.value, temp.value);
  const { chart, taken } = words;
  return (
    <>
      <LineChart
        id="level-window-stick"
        name={chart.name}
        takeaway={chart.takeaway}
        xAxis={TEMP_AXIS}
        yAxis={{ label: chart.y, quantity: dimension, min: -20, max: 35 }}
        x={TEMPS}
        series={[
          { id: 'right', label: chart.right, kind: 'healthy', y: RIGHT },
          { id: 'here', label: chart.here, kind: 'plain', y: here },
        ]}
        bands={[{ id: 'marks', kind: 'needed', label: chart.marks, from: -MARK_MM, to: MARK_MM }]}
        marks={
          now === null ? [] : [{ id: 'now', kind: 'now', x: temp.value, y: now, words: chart.now }]
        }
        height="short"
      />
      <div class="below-taken">
        <p>
          <strong>{taken.head}</strong>{' '}
          {taken.model({
            fill: print(training.sump.fill * 1e3, fluidVolume),
            apart: print(2 * MARK_MM, dimension),
            holds: print(litresOf(2 * MARK_MM), fluidVolume),
            from: print(WINDOW_C.from, temperature),
            to: print(WINDOW_C.to, temperature),
          })}
        </p>
        <p>{taken.pressure}</p>
        <p>{taken.air}</p>
        <p>{taken.left}</p>
      </div>
    </>
  );
}
