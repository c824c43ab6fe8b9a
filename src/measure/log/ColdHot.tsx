import { useSignal } from '@preact/signals';
import type { Axis } from '../../charts/axis.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import type { Mark } from '../../charts/line-data.ts';
import type { LogRead } from '../../log/analyse.ts';
import type { Cut } from '../../log/cut.ts';
import { bandOf } from '../../log/readings.ts';
import { middle, type StopTime } from '../../log/stop-time.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { Choice } from '../../ui/Choice.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { coldAndHot, type Chosen, type Pair } from './pairs.ts';
import { seconds, speed, temperature } from './quantities.ts';
import { words } from './result-words.en.ts';
import { layOver, type Laid } from './two-traces.ts';

interface ColdHotProps {
  readonly log: LogRead;
  readonly cuts: readonly Cut[];
}

const fromTop = (values: readonly (number | null)[], least: number): number => {
  let high = least;
  for (const value of values) if (value !== null && value > high) high = value;
  // Round hundreds, so that the axis ends on a tick.
  return Math.ceil(high / 100) * 100;
};

/** The coolest and the warmest engagement of one range on one time axis. */
export function ColdHot({ log, cuts }: ColdHotProps) {
  const pairs = coldAndHot(log.engagements);
  const range = useSignal<string>(pairs[0]?.range ?? '');
  const pair = pairs.find((one) => one.range === range.value) ?? pairs[0];
  return (
    <section aria-labelledby="log-cold-hot-title" class="log-cold-hot">
      <h2 id="log-cold-hot-title">{words.coldHot}</h2>
      {pairs.length > 1 && (
        <div class="no-print">
          <Choice
            id="log-which"
            label={words.which}
            value={range}
            options={pairs.map((one) => ({ value: one.range, words: words.ranges[one.range] }))}
          />
        </div>
      )}
      {pair === undefined ? <p>{words.oneTemperature}</p> : <Charts pair={pair} cuts={cuts} />}
    </section>
  );
}

/** The stop is drawn up to here [s after selection]: a take-off that runs away would flatten it to a line. */
const STOP_DRAWN = 3.2;

function until({ x, a, b }: Laid, end: number): Laid {
  const beyond = x.findIndex((when) => when > end);
  const kept = beyond < 2 ? x.length : beyond;
  return { x: x.slice(0, kept), a: a.slice(0, kept), b: b.slice(0, kept) };
}

function lineOf({ read }: Chosen, isHot: boolean, system: UnitSystem): string {
  const tempC = read.tempC ?? 0;
  const temp = format(tempC, temperature, system);
  const band = bandOf(tempC);
  if (isHot) return band === 'hot' ? words.hotLine(temp) : words.warmerLine(temp);
  return band === 'cold' || band === 'frost' ? words.coldLine(temp) : words.coolerLine(temp);
}

const says = (stop: StopTime): string =>
  stop.kind === 'stopped'
    ? words.standsAfter({
        low: formatNumber(stop.after.low, seconds, 'si'),
        high: format(stop.after.high, seconds, 'si'),
      })
    : stop.kind === 'notStopped'
      ? words.standsNot
      : words.standsUnknown;

const markOf = (id: string, { read: { stop } }: Chosen): readonly Mark[] =>
  stop.kind === 'stopped'
    ? [
        {
          id,
          x: middle(stop.after),
          y: 0,
          words: words.markStands({
            low: formatNumber(stop.after.low, seconds, 'si'),
            high: format(stop.after.high, seconds, 'si'),
          }),
        },
      ]
    : [];

function Charts({ pair, cuts }: { readonly pair: Pair; readonly cuts: readonly Cut[] }) {
  const cursor = useSignal<number | null>(null);
  const system = useUnits();
  const [cold, hot] = [cuts[pair.cold.index], cuts[pair.hot.index]];
  if (cold === undefined || hot === undefined) return null;
  const turbine = until(
    layOver({ time: cold.time, values: cold.turbine }, { time: hot.time, values: hot.turbine }),
    STOP_DRAWN,
  );
  const slip =
    cold.slip && hot.slip
      ? layOver({ time: cold.time, values: cold.slip }, { time: hot.time, values: hot.slip })
      : null;
  const xAxis = (laid: Laid): Axis => ({
    label: words.sinceSelection,
    quantity: seconds,
    min: Math.min(0, laid.x[0] ?? 0),
    max: Math.max(1, laid.x.at(-1) ?? 1),
  });
  const series = ({ a, b }: Laid) => [
    { id: 'cold', kind: 'cold' as const, label: lineOf(pair.cold, false, system), y: a },
    { id: 'hot', kind: 'hot' as const, label: lineOf(pair.hot, true, system), y: b },
  ];
  const yAxis = (label: string, laid: Laid): Axis => ({
    label,
    quantity: speed,
    min: 0,
    max: fromTop([...laid.a, ...laid.b], 100),
  });
  const [a, b] = [pair.cold.read.slip, pair.hot.read.slip];
  return (
    <div class="wide">
      <LineChart
        id="log-turbine-chart"
        name={`${words.ranges[pair.range]}: ${words.turbineChart}`}
        takeaway={words.turbineTakeaway({
          cold: says(pair.cold.read.stop),
          hot: says(pair.hot.read.stop),
        })}
        xAxis={xAxis(turbine)}
        yAxis={yAxis(words.turbineAxis, turbine)}
        x={turbine.x}
        series={series(turbine)}
        marks={[...markOf('cold', pair.cold), ...markOf('hot', pair.hot)]}
        cursor={cursor}
      />
      {slip && (
        <LineChart
          id="log-slip-chart"
          name={`${words.ranges[pair.range]}: ${words.slipChart}`}
          takeaway={
            a.kind === 'measured' && b.kind === 'measured'
              ? words.slipTakeaway({
                  cold: format(a.peak, speed, system),
                  hot: format(b.peak, speed, system),
                })
              : words.slipTakeawayNone
          }
          xAxis={xAxis(slip)}
          yAxis={yAxis(words.slipAxis, slip)}
          x={slip.x}
          series={series(slip)}
          cursor={cursor}
          height="short"
        />
      )}
    </div>
  );
}
