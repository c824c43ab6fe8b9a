import type { LiveCar } from '../../car/live-cars.ts';
import { recordingOf } from '../../car/live-cars.ts';
import { recipes } from '../../car/recordings.ts';
import type { PlacedPlot } from '../../charts/line-data.ts';
import { linePath, round } from '../../charts/path.ts';
import { format } from '../../quantity/print.ts';
import { seconds } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import { ENGAGEMENT, type TrapModel } from './model.ts';
import { words } from './words.en.ts';

interface Props {
  readonly model: TrapModel;
  readonly plot: PlacedPlot;
  /** Whether what was between the rows may be seen. */
  readonly shown: boolean;
}

/** Points of a curve of the truth: finer than any list that a line can read. */
const FINE = 0.01;
/** As warm as this or warmer is drawn as hot [°C]. */
const HOT_FROM = 60;
const kindOf = (car: LiveCar) => (recipes[recordingOf(car)].tempC >= HOT_FROM ? 'hot' : 'cold');

function Curve({ model, plot, car, late, thin }: Props & Which) {
  const [from, to] = model.window.value;
  const selected = model.selectedFor(late);
  const x = Array.from({ length: Math.round((to - from) / FINE) + 1 }, (_, i) => from + i * FINE);
  const y = x.map((at) => model.turbineAt(car, at - selected));
  return (
    <path
      class={thin ? 'line healthy' : `line ${kindOf(car)}`}
      d={linePath(x, y, plot.x.place, plot.y.place)}
    />
  );
}
interface Which {
  readonly car: LiveCar;
  readonly late: number;
  /** Another car that fits the same rows. */
  readonly thin: boolean;
}

/** In which step of the log something happened: from one row to the next. */
function Step({ plot, from, to, name, row }: StepProps) {
  const [left, right] = [plot.x.place(from), plot.x.place(to)];
  const top = plot.y.place(1000);
  return (
    <>
      <rect
        class="doubt"
        x={round(left)}
        y={round(top)}
        width={round(Math.max(1, right - left))}
        height={round(plot.y.place(0) - top)}
      />
      <text class="band-name" x={round(left + 3)} y={round(plot.y.place(NAMES_AT[row]))}>
        {name}
      </text>
    </>
  );
}
interface StepProps {
  readonly plot: PlacedPlot;
  readonly from: number;
  readonly to: number;
  readonly name: string;
  readonly row: 0 | 1;
}
/** Above the turbine at idle [rpm], one name under the other. */
const NAMES_AT = [910, 790] as const;

/** At which height each length is drawn [rpm]: between idle and nothing, where only the fall passes. */
const LENGTHS_AT = [560, 350, 140] as const;

/** From selecting Drive until it stands: of this car, and of the quickest and the slowest that fit its rows as well. */
function Lengths({ model, plot }: Omit<Props, 'shown'>) {
  const { fits, givens, standsAfter, selectedFor } = model;
  const system = useUnits();
  const all = fits.value
    .flatMap(({ car, late }) => {
      const lasts = standsAfter(car);
      return lasts === null ? [] : [{ car, from: selectedFor(late), lasts }];
    })
    .sort((one, other) => one.lasts - other.lasts);
  return all
    .filter(({ car }, i) => car === givens.car.value || i === 0 || i === all.length - 1)
    .map(({ car, from, lasts }, i) => {
      const left = round(plot.x.place(from));
      const right = round(plot.x.place(from + lasts));
      const y = round(plot.y.place(LENGTHS_AT[i] ?? 0));
      return (
        <g key={car}>
          <path
            class="trap-length"
            d={`M${left} ${y - 5}v10M${left} ${y}H${right}M${right} ${y - 5}v10`}
          />
          <text class="mark-name" x={left + 4} y={y - 6}>
            {format(lasts, seconds, system)}
          </text>
        </g>
      );
    });
}

/** Nearer than this the rows run into a line [px]. */
const APART = 5;

/** Under the log's own line: the steps in which it began and ended, what was between the rows, and the rows themselves. */
export function Between({ model, plot, shown }: Props) {
  const { log, stop, fits, givens, times, window } = model;
  if (log.value === null) return null;
  const time = times.value;
  const read = stop.value;
  const engaged = window.value === ENGAGEMENT;
  const [here = 0, next = 0] = time.map(plot.x.place);
  const dot = round((plot.y.place(0) - plot.y.place(1000)) / 60 + 1);
  return (
    <>
      {engaged && read && (
        <Step
          plot={plot}
          from={time[read.selection.before] ?? 0}
          to={time[read.selection.first] ?? 0}
          name={words.chart.selected}
          row={0}
        />
      )}
      {engaged && read?.kind === 'stopped' && (
        <Step
          plot={plot}
          from={(time[read.selection.first] ?? 0) + read.after.low}
          to={read.at}
          name={words.chart.stopped}
          row={1}
        />
      )}
      {shown &&
        fits.value
          .filter(({ car }) => car !== givens.car.value)
          .map(({ car, late }) => <Curve key={car} {...{ model, plot, shown, car, late }} thin />)}
      {shown && (
        <Curve
          {...{ model, plot, shown }}
          car={givens.car.value}
          late={givens.late.value / 100}
          thin={false}
        />
      )}
      {shown && engaged && <Lengths {...{ model, plot }} />}
      {next - here >= APART &&
        time.map((at, row) => (
          <circle
            key={row}
            class="part full"
            cx={round(plot.x.place(at))}
            cy={round(plot.y.place(log.value?.turbine[row] ?? 0))}
            r={dot}
          />
        ))}
    </>
  );
}
